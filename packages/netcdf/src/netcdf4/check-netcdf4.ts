import { duplicates, nameProblems, storedName } from "../classic/check-content.ts";
import type { Attribute, Dataset, NcType, Variable } from "../dataset.ts";
import type { Place, Problem } from "../problem.ts";
import { isWellFormed } from "../text.ts";
import { isArrayOf } from "../types.ts";
import { groupOf, ownName } from "./group-path.ts";

/** What a file may hold: all of netCDF-4, or only what classic files can hold. */
export type Netcdf4Model = "netCDF-4" | "classic";

/** Attributes in which netCDF-4 keeps its own books. */
const reserved: ReadonlySet<string> = new Set([
  "_NCProperties",
  "_Netcdf4Coordinates",
  "_Netcdf4Dimid",
  "_nc3_strict",
  "DIMENSION_LIST",
  "REFERENCE_LIST",
]);
const reservedOnScales: ReadonlySet<string> = new Set(["CLASS", "NAME"]);
const RESERVED_PREFIX = "_nc4_non_coord_";

const classicTypes: ReadonlySet<NcType> = new Set(["byte", "char", "short", "int", "float", "double"]);

/**
 * What a dataset holds that a netCDF-4 file can't say.
 *
 * @source Unidata netCDF documentation, "NetCDF-4 Format" (appendix File Format Specifications): names that the
 *         library reserves, "Groups and scoping"; NetCDF User's Guide, "The Classic Model"
 */
export function netcdf4Problems(dataset: Dataset, model: Netcdf4Model): Problem[] {
  return [
    ...dimensionProblems(dataset),
    ...duplicates("dimension", dataset.dimensions),
    ...attributeProblems(dataset.attributes, "the file", {}, () => false),
    ...duplicates("variable", dataset.variables),
    ...groupProblems(dataset),
    ...[...dataset.variables.values()].flatMap((variable) => [...variableProblems(dataset, variable)]),
    ...(model === "classic" ? classicProblems(dataset) : []),
  ];
}

/** What is written, but not quite as given or not read by all as given. */
export const netcdf4Warnings = (dataset: Dataset): Problem[] => [
  ...renamings(dataset),
  ...unusedLengths(dataset),
];

/** The netCDF library takes the length of an unlimited dimension from the variables along it. */
function unusedLengths(dataset: Dataset): Problem[] {
  const used = new Set([...dataset.variables.values()].flatMap(({ dimensions }) => dimensions));
  return [...dataset.dimensions.values()]
    .filter(({ name, length, unlimited }) => unlimited && length > 0 && !used.has(name))
    .map(({ name, length }) => ({
      code: "netcdf/unlimited-unused",
      message: `no variable has the unlimited dimension ${name}; its length ${length} is kept, but other programs will read 0`,
      where: { dimension: name },
      remedy: "Give it a fixed length, or leave it out.",
    }));
}

function renamings(dataset: Dataset): Problem[] {
  const names = new Set([...dataset.dimensions.keys(), ...dataset.variables.keys()]);
  return [...names]
    .filter((name) => storedName(name) !== name)
    .map((name) => ({
      code: "netcdf/name-form",
      message: `the name ${name} was written in Unicode normal form C, as the format asks`,
      where: { variable: name },
    }));
}

/** Each step of a path is a name of its own. */
function* pathProblems(name: string, what: string, where: Place): Generator<Problem> {
  for (const step of name.split("/")) yield* nameProblems(step, what, where);
}

function* dimensionProblems(dataset: Dataset): Generator<Problem> {
  for (const { name } of dataset.dimensions.values())
    yield* pathProblems(name, "dimension", { dimension: name });
}

function* variableProblems(dataset: Dataset, variable: Variable): Generator<Problem> {
  const { name, dimensions, shape } = variable;
  const where = { variable: name };
  yield* pathProblems(name, "variable", where);
  if (ownName(name).startsWith(RESERVED_PREFIX))
    yield {
      code: "netcdf/reserved-name",
      message: `variable ${name} begins with ${RESERVED_PREFIX}, by which netCDF-4 marks names of its own`,
      where,
      remedy: "Rename it.",
    };
  for (const dimension of dimensions)
    if (!groupOf(name).startsWith(groupOf(dimension)))
      yield {
        code: "netcdf/dimension-scope",
        message: `${name} uses the dimension ${dimension}, which stands in a group that doesn't hold it`,
        where: { variable: name, dimension },
        remedy: "Put the dimension into the group of the variable or one around it.",
      };
  const grows = dimensions.some((dimension) => dataset.dimensions.get(dimension)?.unlimited);
  const fixedZero = dimensions.findIndex(
    (dimension, axis) => shape[axis] === 0 && !dataset.dimensions.get(dimension)?.unlimited,
  );
  if (grows && fixedZero >= 0)
    yield {
      code: "netcdf/zero-length-dimension",
      message: `${name} has an unlimited dimension and ${dimensions[fixedZero]} of the fixed length 0, which HDF5 can't store`,
      where: { variable: name, dimension: dimensions[fixedZero]! },
      remedy: "Leave out the variable, or make the dimension unlimited.",
    };
  const isScale = dimensions[0] === name;
  yield* attributeProblems(
    variable.attributes,
    name,
    where,
    (attribute) => isScale && reservedOnScales.has(attribute),
  );
}

function* attributeProblems(
  attributes: ReadonlyMap<string, Attribute>,
  owner: string,
  ownerPlace: Place,
  isTaken: (name: string) => boolean,
): Generator<Problem> {
  yield* duplicates("attribute", attributes, ownerPlace);
  for (const { name, type, value, bytes } of attributes.values()) {
    const where = { ...ownerPlace, attribute: name };
    const what = `attribute ${name} of ${owner}`;
    if (ownerPlace.variable === undefined) yield* pathProblems(name, "attribute", where);
    else yield* nameProblems(name, "attribute", where);
    if (reserved.has(ownName(name)) || isTaken(name))
      yield {
        code: "netcdf/reserved-name",
        message: `${what} has a name under which netCDF-4 keeps its own books`,
        where,
        remedy: "Rename it.",
      };
    if (type === "char" ? typeof value !== "string" : !isArrayOf(type, value))
      throw new TypeError(`${what}: the value is not one of type ${type}`);
    const texts =
      typeof value === "string" ? (bytes === undefined ? [value] : []) : Array.isArray(value) ? value : [];
    yield* textProblems(texts, what, where, type);
  }
}

/** Texts that have no form in the file: half characters, and a NUL inside a string, which ends it. */
export function* textProblems(
  texts: readonly string[],
  what: string,
  where: Place,
  type: NcType,
): Generator<Problem> {
  const half = texts.findIndex((text) => !isWellFormed(text));
  if (half >= 0)
    yield {
      code: "netcdf/text",
      message: `${what} has half a character (a lone surrogate), which has no UTF-8 form`,
      where: type === "string" ? { ...where, index: half } : where,
      remedy: "Remove it; such a character comes from cutting a text in the middle of one.",
    };
  const ended = type === "string" ? texts.findIndex((text) => text.includes("\0")) : -1;
  if (ended >= 0)
    yield {
      code: "netcdf/text",
      message: `${what} has a NUL inside a text, which would end it there`,
      where: { ...where, index: ended },
      remedy: "Remove it.",
    };
}

/** A group can't have the name of a variable or dimension beside it. */
function* groupProblems(dataset: Dataset): Generator<Problem> {
  const groups = new Set<string>();
  for (const named of [dataset.variables, dataset.dimensions, dataset.attributes])
    for (const name of named.keys())
      for (let cut = name.indexOf("/"); cut > 0; cut = name.indexOf("/", cut + 1))
        groups.add(storedName(name.slice(0, cut)));
  for (const name of new Set([...dataset.variables.keys(), ...dataset.dimensions.keys()]))
    if (groups.has(storedName(name)))
      yield {
        code: "netcdf/duplicate-name",
        message: `${name} is the name of a group and of a variable or dimension`,
        where: { variable: name },
        remedy: "Rename one of them.",
      };
}

function* classicProblems(dataset: Dataset): Generator<Problem> {
  const remedy = "Write the file without the mark of the classic model.";
  const unlimited = [...dataset.dimensions.values()].filter((dimension) => dimension.unlimited);
  if (unlimited.length > 1)
    yield {
      code: "netcdf/record-dimensions",
      message: `${unlimited.map(({ name }) => name).join(", ")} are unlimited; the classic model has at most one unlimited dimension`,
      where: { dimension: unlimited[1]!.name },
      remedy,
    };
  const wrongType = (type: NcType, what: string, where: Place): Problem[] =>
    classicTypes.has(type)
      ? []
      : [
          {
            code: "netcdf/type",
            message: `${what} is of type ${type}, which the classic model doesn't have`,
            where,
            remedy,
          },
        ];
  for (const { name, type } of dataset.attributes.values())
    yield* wrongType(type, `attribute ${name} of the file`, { attribute: name });
  for (const { name, type, dimensions, attributes } of dataset.variables.values()) {
    yield* wrongType(type, `variable ${name}`, { variable: name });
    for (const attribute of attributes.values())
      yield* wrongType(attribute.type, `attribute ${attribute.name} of ${name}`, {
        variable: name,
        attribute: attribute.name,
      });
    for (const [axis, dimension] of dimensions.entries())
      if (axis > 0 && dataset.dimensions.get(dimension)?.unlimited)
        yield {
          code: "netcdf/record-position",
          message: `${name} has the unlimited dimension ${dimension} in place ${axis + 1}; in the classic model it may only come first`,
          where: { variable: name },
          remedy,
        };
  }
  for (const named of [dataset.dimensions, dataset.variables, dataset.attributes])
    for (const name of named.keys())
      if (name.includes("/"))
        yield {
          code: "netcdf/groups",
          message: `${name} stands in a group, which the classic model doesn't have`,
          where: { variable: name },
          remedy,
        };
}
