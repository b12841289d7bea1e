import type { NcType } from "../dataset.ts";

/** Words that open a section when a colon follows at once. */
export const sectionWords: ReadonlySet<string> = new Set(["types", "dimensions", "variables", "data"]);

const types: Readonly<Record<string, NcType>> = {
  byte: "byte",
  char: "char",
  short: "short",
  int: "int",
  long: "int",
  integer: "int",
  float: "float",
  real: "float",
  double: "double",
  ubyte: "ubyte",
  ushort: "ushort",
  uint: "uint",
  int64: "int64",
  uint64: "uint64",
  string: "string",
};

/** The type that a word names, or null. */
export const typeOfWord = (word: string): NcType | null =>
  Object.hasOwn(types, word) ? (types[word] ?? null) : null;

const globalSpecials = new Set(["_Format", "_NCProperties", "_IsNetcdf4", "_SuperblockVersion"]);
const variableSpecials = new Set([
  "_ChunkSizes",
  "_Checksum",
  "_Codecs",
  "_DeflateLevel",
  "_Endianness",
  "_Filter",
  "_Fletcher32",
  "_NoFill",
  "_NOFILL",
  "_Shuffle",
  "_Storage",
]);

/** Attributes of CDL that say how a file is stored; they are not attributes of the dataset. */
export const isSpecialAttribute = (name: string, ofVariable: boolean): boolean =>
  (ofVariable ? variableSpecials : globalSpecials).has(name);

/** Words that a name can't be without an escape. */
export const reservedWords: ReadonlySet<string> = new Set([
  ...Object.keys(types),
  "netcdf",
  "group",
  "unlimited",
  "UNLIMITED",
  "NIL",
  "_",
]);
