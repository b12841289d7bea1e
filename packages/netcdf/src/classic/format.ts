import type { Dataset, NcType } from "../dataset.ts";
import { bytesPerValue, numbersAs } from "../types.ts";

/*
 * @source The NetCDF Classic Format Specification and The 64-bit Offset Format: NetCDF User's Guide,
 *         appendix "File Format Specifications"; CDF-5 file format specification: PnetCDF C Interface
 *         Guide, appendix E. Names of grammar symbols are used here as they stand there.
 */

export type ClassicVersion = 1 | 2 | 5;
export type ClassicType = Exclude<NcType, "string">;

/** nc_type of each type. CDF-1 and CDF-2 know the first six. */
export const typeCodes: Readonly<Record<ClassicType, number>> = {
  byte: 1,
  char: 2,
  short: 3,
  int: 4,
  float: 5,
  double: 6,
  ubyte: 7,
  ushort: 8,
  uint: 9,
  int64: 10,
  uint64: 11,
};

export const typeOfCode: ReadonlyMap<number, ClassicType> = new Map(
  Object.entries(typeCodes).map(([type, code]) => [code, type as ClassicType]),
);

export const highestTypeCode = (version: ClassicVersion): number => (version === 5 ? 11 : 6);

/** Tags of the header's lists. */
export const tags = { dimension: 10, variable: 11, attribute: 12 } as const;

/** Default fill values, FILL_… of the grammar, in the type's own array; char fills with NUL. */
export const defaultFill = (type: ClassicType) =>
  type === "char" ? new Uint8Array(1) : numbersAs(type, [fillValues[type]]);

const fillValues: Readonly<Record<Exclude<ClassicType, "char">, number | bigint>> = {
  byte: -127,
  short: -32767,
  int: -2147483647,
  float: 9.969209968386869e36,
  double: 9.969209968386869e36,
  ubyte: 255,
  ushort: 65535,
  uint: 4294967295,
  int64: -9223372036854775806n,
  uint64: 18446744073709551614n,
};

export const kindOfVersion: Readonly<Record<ClassicVersion, Dataset["kind"]>> = {
  1: "classic",
  2: "64-bit offset",
  5: "64-bit data",
};

/** Bytes of a count, length or dimension id (NON_NEG). */
export const countSize = (version: ClassicVersion): 4 | 8 => (version === 5 ? 8 : 4);

/** Bytes of a variable's begin (OFFSET). */
export const offsetSize = (version: ClassicVersion): 4 | 8 => (version === 1 ? 4 : 8);

/** The next multiple of 4. */
export const padded = (bytes: number): number => Math.ceil(bytes / 4) * 4;

/** Where a variable's values lie. */
export interface Placement {
  readonly record: boolean;
  /** Offset of the first value. */
  readonly begin: number;
  /** Bytes of the values of the variable, or of one record of it, without padding. */
  readonly bytes: number;
}

/** Bytes of a variable's values, or of one record of it; may be inexact above 2^53, or Infinity. */
export const valueBytes = (type: ClassicType, shape: readonly number[], record: boolean): number =>
  (record ? shape.slice(1) : shape).reduce((bytes, length) => bytes * length, bytesPerValue(type));

/**
 * Distance from one record to the next: the padded sizes of the record variables, but a single record variable
 * is not padded ("Note on padding"; only byte, char, short and their unsigned kin can tell).
 */
export function recordStride(recordVariables: readonly { readonly bytes: number }[]): number {
  const [first, ...others] = recordVariables;
  if (!first) return 0;
  if (others.length === 0) return first.bytes;
  return recordVariables.reduce((sum, { bytes }) => sum + padded(bytes), 0);
}
