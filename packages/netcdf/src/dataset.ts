import type { Problem, Result } from "./problem.ts";

/** External types of the classic formats and netCDF-4. */
export type NcType =
  | "byte"
  | "char"
  | "short"
  | "int"
  | "float"
  | "double"
  | "ubyte"
  | "ushort"
  | "uint"
  | "int64"
  | "uint64"
  | "string";

/** A type's own typed array; char is bytes, string is text. */
export type DataArray =
  | Int8Array
  | Uint8Array
  | Int16Array
  | Uint16Array
  | Int32Array
  | Uint32Array
  | Float32Array
  | Float64Array
  | BigInt64Array
  | BigUint64Array
  | string[];

/** Random access to bytes. Reads inside 0..size always give `length` bytes. */
export interface Source {
  readonly size: number;
  read(offset: number, length: number): Uint8Array | Promise<Uint8Array>;
  /** Reads as many bytes as `out` has room for, where that saves a copy. */
  readInto?(offset: number, out: Uint8Array): void | Promise<void>;
}

export interface Dimension {
  readonly name: string;
  readonly length: number;
  readonly unlimited: boolean;
}

/** A char attribute is one text; a string attribute is a list of texts; anything else is numbers. */
export interface Attribute {
  readonly name: string;
  readonly type: NcType;
  /** Text for type char (without a trailing NUL), else an array; length 0 is allowed. */
  readonly value: string | DataArray;
  /** Bytes of a char attribute as stored, when they are not valid UTF-8; `value` then reads them as windows-1252. */
  readonly bytes?: Uint8Array;
}

export interface Variable {
  readonly name: string;
  readonly type: NcType;
  /** Names of dimensions, slowest first. */
  readonly dimensions: readonly string[];
  readonly shape: readonly number[];
  readonly attributes: ReadonlyMap<string, Attribute>;
}

export interface Slab {
  readonly start: readonly number[];
  readonly count: readonly number[];
}

/**
 * An open file, or a dataset made in memory. Maps keep the order of the file. Names in netCDF-4 groups are
 * prefixed with the group's path ("group/name"; the root group has no prefix).
 */
export interface Dataset {
  readonly kind:
    | "classic"
    | "64-bit offset"
    | "64-bit data"
    | "netCDF-4"
    | "netCDF-4 classic model"
    | "memory";
  readonly dimensions: ReadonlyMap<string, Dimension>;
  readonly attributes: ReadonlyMap<string, Attribute>;
  readonly variables: ReadonlyMap<string, Variable>;
  /**
   * What the file holds and this library can't say (compound types …), one per variable or attribute; and what
   * is missing from a file that was cut short.
   */
  readonly problems: readonly Problem[];
  /** Values in row-major order: no masking, no scaling. Without a slab the whole variable. */
  read(name: string, slab?: Slab): Promise<Result<DataArray>>;
  /** Frees what the dataset holds; reading afterwards is a problem. Only netCDF-4 files hold anything. */
  close?(): void;
}
