import type { Attribute } from "../dataset.ts";
import type { Problem } from "../problem.ts";
import { decodeText } from "../text.ts";
import { newArray } from "../types.ts";
import { type Hdf5File, typeClass } from "./hdf5-file.ts";
import { Hdf5Error } from "./hdf5-library.ts";
import { fixedTexts, numbersOfBytes } from "./numbers-of-bytes.ts";
import { storedType } from "./stored-type.ts";

/** What is found on the way: what can't be said, and what is said in another way than it is stored. */
export interface Notes {
  readonly problems: Problem[];
  readonly warnings: Problem[];
}

/** Attributes in which netCDF-4 keeps its own books. */
const hidden: ReadonlySet<string> = new Set([
  "_NCProperties",
  "_Netcdf4Coordinates",
  "_Netcdf4Dimid",
  "_nc3_strict",
  "DIMENSION_LIST",
  "REFERENCE_LIST",
]);
const hiddenOfScales: ReadonlySet<string> = new Set(["CLASS", "NAME"]);

/** The attributes of a group or dataset in their order; names are given the prefix. */
export function readAttributes(
  file: Hdf5File,
  path: string,
  options: { readonly prefix: string; readonly variable?: string; readonly isScale?: boolean },
  notes: Notes,
): Map<string, Attribute> {
  const attributes = new Map<string, Attribute>();
  for (const own of file.attributeNames(path)) {
    if (hidden.has(own) || (options.isScale === true && hiddenOfScales.has(own))) continue;
    const name = options.prefix + own;
    const where = {
      attribute: name,
      ...(options.variable === undefined ? {} : { variable: options.variable }),
    };
    const of = options.variable === undefined ? "" : ` of ${options.variable}`;
    try {
      const attribute = readAttribute(file, path, own, name, (members) =>
        notes.warnings.push({
          code: "netcdf/enumeration",
          message: `attribute ${name}${of} is an enumeration (${members}); its numbers are read`,
          where,
        }),
      );
      if ("unsupported" in attribute)
        notes.problems.push({
          code: "netcdf/unsupported-type",
          message: `attribute ${name}${of} is of ${attribute.unsupported}, which is not read`,
          where,
          remedy: "The rest of the file is read; store the attribute as text or numbers if it matters.",
        });
      else attributes.set(name, attribute);
    } catch (error) {
      if (!(error instanceof Hdf5Error)) throw error;
      notes.problems.push({
        code: "netcdf/damaged-attribute",
        message: `attribute ${name}${of} can't be read: ${error.message}`,
        where,
      });
    }
  }
  return attributes;
}

function readAttribute(
  file: Hdf5File,
  path: string,
  own: string,
  name: string,
  noteEnumeration: (members: string) => void,
): Attribute | { readonly unsupported: string } {
  const description = file.describeAttribute(path, own);
  const isText = description.type === typeClass.string;
  // a single fixed-length string is char, however long; a list of them is a list of strings
  const isChar =
    isText && !description.vlen && (description.shape === null || description.shape.length === 0);
  const stored = isText
    ? { type: isChar ? ("char" as const) : ("string" as const) }
    : storedType(description);
  if ("unsupported" in stored) return stored;
  if ("members" in stored && stored.members) noteEnumeration(memberText(stored.members));
  const { type } = stored;
  if (description.shape === null) return { name, type, value: type === "char" ? "" : newArray(type, 0) };
  const raw = file.attributeValues(path, own, description);
  if (type === "string") {
    const texts = "texts" in raw ? raw.texts : fixedTexts(raw.bytes, description.size);
    return { name, type, value: texts.map((text) => decodeText(text).text) };
  }
  if ("texts" in raw) throw new Hdf5Error("it has texts where numbers were expected");
  if (type === "char") return charAttribute(name, raw.bytes);
  return { name, type, value: numbersOfBytes(type, raw.bytes) };
}

function charAttribute(name: string, bytes: Uint8Array): Attribute {
  let end = bytes.length;
  while (end > 0 && bytes[end - 1] === 0) end--;
  const { text, utf8 } = decodeText(bytes.subarray(0, end));
  return { name, type: "char", value: text, ...(utf8 ? {} : { bytes: bytes.slice() }) };
}

/** The names of an enumeration, the first few. */
export function memberText(members: Readonly<Record<string, number>>): string {
  const all = Object.entries(members).map(([name, value]) => `${value} ${name}`);
  return all.length > 8 ? `${all.slice(0, 8).join(", ")} …` : all.join(", ");
}
