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

/** Swaps as where the host has nothing to do it by. */
function swapAlone(data: Parameters<typeof swapToBigEndian>[0]): void {
  const { Buffer } = globalThis;
  Reflect.deleteProperty(globalThis, "Buffer");
  try {
    swapToBigEndian(data);
  } finally {
    globalThis.Buffer = Buffer;
  }
}

const ways = [
  ["by the host", swapToBigEndian],
  ["alone", swapAlone],
] as const;

test.each(
  Object.entries(setters).flatMap(([type, set]) => ways.map(([way, swap]) => ({ type, set, way, swap }))),
)("$type in big-endian order, any count, $way", ({ type, set, swap }) => {
  for (const length of [0, 1, 2, 3, 4, 5, 6, 5000]) {
    const data = newArray(type as keyof typeof setters, length) as Float64Array;
    const view = new DataView(new ArrayBuffer(data.byteLength));
    for (let i = 0; i < length; i++) {
      data[i] = 1.1 * (i + 1) * 2 ** (4 * data.BYTES_PER_ELEMENT - 3);
      view[set](i * data.BYTES_PER_ELEMENT, data[i]!);
    }
    swap(data);
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
