import type { Attribute, Dataset, Variable } from "../dataset.ts";
import type { Place, Problem } from "../problem.ts";
import { encodeText, isWellFormed } from "../text.ts";
import { isArrayOf } from "../types.ts";
import { type ClassicVersion, highestTypeCode, typeCodes } from "./format.ts";

/** Names are at most this long in the C library (NC_MAX_NAME), which refuses longer ones. */
const longestName = 256;
/** Longest dimension, attribute and record count of CDF-1 and CDF-2: NON_NEG less the room for padding. */
const longestCount = 2 ** 31 - 4;

/**
 * What a dataset holds that the format version can't say; sizes and offsets are judged by `planFile`.
 *
 * @source NetCDF Classic Format Specification, grammar, "Note on names" and "Note on padding"
 */
export function contentProblems(dataset: Dataset, version: ClassicVersion): Problem[] {
  return [
    ...dimensionProblems(dataset, version),
    ...duplicates("dimension", dataset.dimensions),
    ...attributeProblems(dataset.attributes, version, "the file", {}),
    ...duplicates("variable", dataset.variables),
    ...[...dataset.variables.values()].flatMap((variable) => [
      ...variableProblems(dataset, variable, version),
    ]),
  ];
}

/** A name as it is stored: in Unicode normal form C ("Note on names"). */
export const storedName = (name: string): string => (isAscii(name) ? name : name.normalize("NFC"));

// biome-ignore lint/suspicious/noControlCharactersInRegex: the range is that of ASCII
const isAscii = (text: string): boolean => /^[\u0000-\u007F]*$/.test(text);

function* dimensionProblems(dataset: Dataset, version: ClassicVersion): Generator<Problem> {
  const unlimited = [...dataset.dimensions.values()].filter((dimension) => dimension.unlimited);
  if (unlimited.length > 1)
    yield {
      code: "netcdf/record-dimensions",
      message: `${unlimited.map(({ name }) => name).join(", ")} are unlimited; a classic file has at most one unlimited dimension`,
      where: { dimension: unlimited[1]!.name },
      remedy: "Give all but one a fixed length.",
    };
  for (const dimension of dataset.dimensions.values()) {
    const { name, length } = dimension;
    const where = { dimension: name };
    yield* nameProblems(name, "dimension", where);
    if (length === 0 && !dimension.unlimited)
      yield {
        code: "netcdf/zero-length-dimension",
        message: `dimension ${name} has the fixed length 0; in a classic file length 0 marks the unlimited dimension`,
        where,
        remedy: "Leave out the dimension and its variables, or make it unlimited.",
      };
    if (length > longestCount && version !== 5) yield tooLong(`dimension ${name}`, length, version, where);
  }
}

function* variableProblems(
  dataset: Dataset,
  variable: Variable,
  version: ClassicVersion,
): Generator<Problem> {
  const { name, type } = variable;
  const where = { variable: name };
  yield* nameProblems(name, "variable", where);
  yield* typeProblems(type, `variable ${name}`, version, where);
  for (const [axis, dimension] of variable.dimensions.entries()) {
    if (axis > 0 && dataset.dimensions.get(dimension)?.unlimited)
      yield {
        code: "netcdf/record-position",
        message: `${name} has the unlimited dimension ${dimension} in place ${axis + 1}; in a classic file it may only come first`,
        where,
        remedy: "Put it first, or give it a fixed length.",
      };
  }
  yield* attributeProblems(variable.attributes, version, name, where);
}

function* attributeProblems(
  attributes: ReadonlyMap<string, Attribute>,
  version: ClassicVersion,
  owner: string,
  ownerPlace: Place,
): Generator<Problem> {
  yield* duplicates("attribute", attributes, ownerPlace);
  for (const attribute of attributes.values()) {
    if (isPlain(attribute, version)) continue;
    const { name, type, value, bytes } = attribute;
    const where = { ...ownerPlace, attribute: name };
    const what = `attribute ${name} of ${owner}`;
    yield* nameProblems(name, "attribute", where);
    yield* typeProblems(type, what, version, where);
    if (type === "char" ? typeof value !== "string" : !isArrayOf(type, value))
      throw new TypeError(`${what}: the value is not one of type ${type}`);
    if (typeof value === "string" && bytes === undefined && !isWellFormed(value))
      yield {
        code: "netcdf/text",
        message: `${what} has half a character (a lone surrogate), which has no UTF-8 form`,
        where,
        remedy: "Remove it; such a character comes from cutting a text in the middle of one.",
      };
    if (value.length > longestCount && version !== 5) yield tooLong(what, value.length, version, where);
  }
}

/** Nearly every attribute has nothing that could be told about it. */
const isPlain = ({ name, type, value }: Attribute, version: ClassicVersion): boolean =>
  nameFault(name) === null &&
  type !== "string" &&
  typeCodes[type] <= highestTypeCode(version) &&
  (type === "char" ? typeof value === "string" && isWellFormed(value) : isArrayOf(type, value)) &&
  value.length <= longestCount;

const tooLong = (what: string, length: number, version: ClassicVersion, where: Place): Problem => ({
  code: "netcdf/size-limit",
  message: `${what} has length ${length}; CDF-${version} holds at most ${longestCount}`,
  where,
  remedy: "Write version 5.",
});

function* typeProblems(
  type: Variable["type"],
  what: string,
  version: ClassicVersion,
  where: Place,
): Generator<Problem> {
  if (type !== "string" && typeCodes[type] <= highestTypeCode(version)) return;
  yield {
    code: "netcdf/type",
    message: `${what} is of type ${type}, which CDF-${version} doesn't have`,
    where,
    remedy:
      type === "string"
        ? "Store the text as char, with a dimension for its length."
        : "Write version 5, or use a type of the classic model that holds the values.",
  };
}

/** Names that netCDF doesn't allow. */
export function* nameProblems(name: string, what: string, where: Place): Generator<Problem> {
  const fault = nameFault(name);
  if (fault !== null)
    yield {
      code: "netcdf/name",
      message: `${what} name ${JSON.stringify(name)} ${fault}`,
      where,
      remedy: "Start with a letter, a digit or _, without / or control characters, and no blank at the end.",
    };
}

/** Good names of ASCII that were met: files of one kind have the same. */
const goodNames = new Set<string>();
const MOST_KEPT = 1000;

function nameFault(name: string): string | null {
  if (goodNames.has(name)) return null;
  const fault = findFault(name);
  if (fault === null && isAscii(name) && goodNames.size < MOST_KEPT) goodNames.add(name);
  return fault;
}

function findFault(name: string): string | null {
  if (name === "") return "is empty";
  if (!isWellFormed(name)) return "has half a character (a lone surrogate)";
  if (!/^[A-Za-z0-9_\u0080-\u{10FFFF}]/u.test(name)) return "starts with a character that may not come first";
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  if (/[\u0000-\u001F/\u007F]/.test(name)) return "contains / or a control character";
  if (name.endsWith(" ")) return "ends with a blank";
  const { length } = encodeText(storedName(name));
  return length > longestName
    ? `takes ${length} bytes, more than the ${longestName} that readers allow`
    : null;
}

/** Different names that become one in normal form C. */
export function* duplicates(
  what: string,
  named: ReadonlyMap<string, { readonly name: string }>,
  place: Place = {},
): Generator<Problem> {
  // names of ASCII are their own normal form, and the map holds each of them once
  if ([...named].every(([key, { name }]) => key === name && isAscii(name))) return;
  const seen = new Set<string>();
  for (const { name } of named.values()) {
    if (seen.has(storedName(name)))
      yield {
        code: "netcdf/duplicate-name",
        message: `two ${what}s are called ${storedName(name)} once written in Unicode normal form C`,
        where: { [what]: name, ...place },
        remedy: "Rename one of them.",
      };
    seen.add(storedName(name));
  }
}
