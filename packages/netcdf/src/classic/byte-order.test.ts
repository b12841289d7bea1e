import { expect, test } from "vitest";
import { newArray } from "../types.ts";
import { bytesOf, swapToBigEndian } from "./byte-order.ts";
import { type ClassicType, typeCodes } from "./format.ts";

// DataView is the platform's own big-endian reader
const setters = {
  short: "setInt16",
  ushort: "setUint16",
  int: "setInt32",
  uint: "setUint32",
  float: "setFloat32",
  double: "setFloat64",
} as const;

test.each(Object.entries(setters))("%s in big-endian order, any count", (type, set) => {
  for (let length = 0; length < 7; length++) {
    const data = newArray(type as keyof typeof setters, length) as Float64Array;
    const view = new DataView(new ArrayBuffer(data.byteLength));
    for (let i = 0; i < length; i++) {
      data[i] = 1.1 * (i + 1) * 2 ** (4 * data.BYTES_PER_ELEMENT - 3);
      view[set](i * data.BYTES_PER_ELEMENT, data[i]!);
    }
    swapToBigEndian(data);
    expect([...bytesOf(data)]).toEqual([...new Uint8Array(view.buffer)]);
  }
});

test("64-bit integers in big-endian order", () => {
  const data = BigInt64Array.of(1n, -2n, 2n ** 62n + 3n);
  const view = new DataView(new ArrayBuffer(24));
  for (const [i, value] of data.entries()) view.setBigInt64(8 * i, value);
  swapToBigEndian(data);
  expect([...bytesOf(data)]).toEqual([...new Uint8Array(view.buffer)]);
});

test.each(Object.keys(typeCodes) as ClassicType[])("swapping %s twice changes nothing", (type) => {
  const data = newArray(type, 5) as Exclude<ReturnType<typeof newArray>, string[]>;
  bytesOf(data).set(bytesOf(data).map((_, i) => 7 * i + 1));
  const before = [...bytesOf(data)];
  swapToBigEndian(data);
  swapToBigEndian(data);
  expect([...bytesOf(data)]).toEqual(before);
});
