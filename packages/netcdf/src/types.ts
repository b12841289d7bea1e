import type { DataArray, NcType } from "./dataset.ts";

export type NumericType = Exclude<NcType, "char" | "string">;

const constructors = {
  byte: Int8Array,
  char: Uint8Array,
  short: Int16Array,
  int: Int32Array,
  float: Float32Array,
  double: Float64Array,
  ubyte: Uint8Array,
  ushort: Uint16Array,
  uint: Uint32Array,
  int64: BigInt64Array,
  uint64: BigUint64Array,
} as const;

const bounds: Partial<Record<NcType, readonly [bigint, bigint]>> = {
  byte: [-128n, 127n],
  ubyte: [0n, 255n],
  short: [-32768n, 32767n],
  ushort: [0n, 65535n],
  int: [-(2n ** 31n), 2n ** 31n - 1n],
  uint: [0n, 2n ** 32n - 1n],
  int64: [-(2n ** 63n), 2n ** 63n - 1n],
  uint64: [0n, 2n ** 64n - 1n],
};

/** Bytes of one value as stored; 0 for string, whose length varies. */
export const bytesPerValue = (type: NcType): number =>
  type === "string" ? 0 : constructors[type].BYTES_PER_ELEMENT;

/** The typed array (or list of texts) that holds values of a type, filled with zeros (or empty texts). */
export const newArray = (type: NcType, length: number): DataArray =>
  type === "string" ? new Array<string>(length).fill("") : new constructors[type](length);

/** Whether an array is the one that `type` is held in. */
export const isArrayOf = (type: NcType, data: unknown): data is DataArray =>
  type === "string"
    ? Array.isArray(data) && data.every((text) => typeof text === "string")
    : data instanceof constructors[type];

/**
 * Numbers as the array of a numeric type.
 *
 * Float rounds to single precision as any float does; no other change of value is allowed.
 *
 * @throws RangeError if a number is not a value of the type
 */
export function numbersAs(type: NumericType, values: ArrayLike<number | bigint>): DataArray {
  if (isArrayOf(type, values)) {
    const copy = newArray(type, values.length) as Float64Array;
    copy.set(values as Float64Array); // both are of this type; `slice` of a Node buffer would not copy
    return copy;
  }
  const limits = bounds[type];
  const checked = Array.from(values, (value) => {
    if (limits === undefined) {
      const number = Number(value);
      const lost = typeof value === "bigint" && BigInt(number) !== value;
      const overflow = type === "float" && Number.isFinite(number) && !Number.isFinite(Math.fround(number));
      if (lost || overflow) throw new RangeError(`${value} is not a value of type ${type}`);
      return number;
    }
    if (typeof value === "number" && !Number.isInteger(value))
      throw new RangeError(`${value} is not a value of type ${type}`);
    const whole = BigInt(value);
    if (whole < limits[0] || whole > limits[1])
      throw new RangeError(`${value} is not a value of type ${type} (${limits[0]} to ${limits[1]})`);
    return type === "int64" || type === "uint64" ? whole : Number(whole);
  });
  if (type === "int64") return BigInt64Array.from(checked as bigint[]);
  if (type === "uint64") return BigUint64Array.from(checked as bigint[]);
  return constructors[type].from(checked as number[]);
}
