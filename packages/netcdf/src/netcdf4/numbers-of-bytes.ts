import type { DataArray } from "../dataset.ts";
import { type NumericType, newArray } from "../types.ts";

/** Bytes in the machine's order as the array of a type. */
export function numbersOfBytes(type: NumericType | "char", bytes: Uint8Array): Exclude<DataArray, string[]> {
  const one = newArray(type, 1) as Exclude<DataArray, string[]>;
  const array = newArray(type, Math.floor(bytes.length / one.BYTES_PER_ELEMENT)) as typeof one;
  new Uint8Array(array.buffer).set(bytes.subarray(0, array.byteLength));
  return array;
}

/** Pieces of a fixed length, each cut at its first NUL. */
export function fixedTexts(bytes: Uint8Array, length: number): Uint8Array[] {
  return Array.from({ length: Math.floor(bytes.length / length) }, (_, i) => {
    const text = bytes.subarray(i * length, (i + 1) * length);
    const end = text.indexOf(0);
    return end < 0 ? text : text.subarray(0, end);
  });
}
