import type { NcType } from "../dataset.ts";
import { type Hdf5Type, typeClass } from "./hdf5-file.ts";

const integers: readonly (readonly [size: number, signed: NcType, unsigned: NcType])[] = [
  [1, "byte", "ubyte"],
  [2, "short", "ushort"],
  [4, "int", "uint"],
  [8, "int64", "uint64"],
];

/** What an HDF5 type is in netCDF: a type of ours, with the names of an enumeration, or words for another. */
export type StoredType =
  | { readonly type: NcType; readonly members?: Readonly<Record<string, number>> }
  | { readonly unsupported: string };

const names: ReadonlyMap<number, string> = new Map([
  [typeClass.time, "a time type"],
  [typeClass.bitfield, "a bit field type"],
  [typeClass.opaque, "an opaque type"],
  [typeClass.compound, "a compound type"],
  [typeClass.reference, "a reference type"],
  [typeClass.vlen, "a variable-length type"],
  [typeClass.array, "an array type"],
]);

/** Strings of one byte are char, all others are string, as the netCDF library has it. */
export function storedType(stored: Hdf5Type): StoredType {
  const { type, size, signed } = stored;
  if (type === typeClass.string) return { type: stored.vlen || size !== 1 ? "string" : "char" };
  if (type === typeClass.float) {
    if (size === 4) return { type: "float" };
    if (size === 8) return { type: "double" };
    return { unsupported: `a floating-point type of ${8 * size} bits` };
  }
  if (
    type === typeClass.integer ||
    (type === typeClass.enum && stored.enum_type?.type === typeClass.integer)
  ) {
    const row = integers.find(([bytes]) => bytes === size);
    if (!row) return { unsupported: `a whole-number type of ${8 * size} bits` };
    const [, whenSigned, whenUnsigned] = row;
    return {
      type: signed ? whenSigned : whenUnsigned,
      ...(type === typeClass.enum ? { members: stored.enum_type?.members ?? {} } : {}),
    };
  }
  return { unsupported: names.get(type) ?? "an unknown type" };
}
