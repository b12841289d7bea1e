import type { Attribute, DataArray, Dataset, Dimension, NcType, Variable } from "./dataset.ts";
import { fail, type Problem, succeed } from "./problem.ts";
import { checkSlab, sizeOf, takeSlab } from "./slab.ts";
import { isArrayOf, type NumericType, numbersAs } from "./types.ts";

export interface MemoryDimension {
  readonly name: string;
  readonly length: number;
  /** False unless stated. */
  readonly unlimited?: boolean;
}

export interface MemoryVariable {
  readonly name: string;
  readonly type: NcType;
  /** Names of dimensions, slowest first; none for a scalar. */
  readonly dimensions: readonly string[];
  readonly attributes?: readonly Attribute[];
  /** Row-major values in the type's own array, as many as the dimensions say. */
  readonly data: DataArray;
}

export interface MemoryContent {
  readonly dimensions?: readonly MemoryDimension[];
  readonly attributes?: readonly Attribute[];
  readonly variables?: readonly MemoryVariable[];
  readonly problems?: readonly Problem[];
}

/** A char attribute. NULs at the end of the text are dropped, as in reading. */
export const textAttribute = (name: string, text: string): Attribute => ({
  name,
  type: "char",
  value: text.replace(/\0+$/, ""),
});

/**
 * An attribute of one or more numbers.
 *
 * @throws RangeError if a number is not a value of the type (float rounds, integers must be whole and fit)
 */
export const numberAttribute = (
  name: string,
  type: NumericType,
  values: number | bigint | ArrayLike<number | bigint>,
): Attribute => ({
  name,
  type,
  value: numbersAs(type, typeof values === "number" || typeof values === "bigint" ? [values] : values),
});

/**
 * A dataset of arrays in memory. The arrays are kept, not copied; `read` gives copies.
 *
 * @throws RangeError for a name given twice, an unknown dimension or a length that differs from the
 *         dimensions; TypeError for an array that is not of the variable's type
 */
export function memoryDataset(content: MemoryContent): Dataset {
  const dimensions = byName(
    "dimension",
    (content.dimensions ?? []).map(({ name, length, unlimited = false }): Dimension => {
      if (!Number.isSafeInteger(length) || length < 0)
        throw new RangeError(`dimension ${name}: length must be a whole number from 0, got ${length}`);
      return { name, length, unlimited };
    }),
  );
  const data = new Map<string, DataArray>();
  const variables = byName(
    "variable",
    (content.variables ?? []).map((given): Variable => {
      const { name, type } = given;
      const shape = given.dimensions.map((dimension) => {
        const known = dimensions.get(dimension);
        if (!known) throw new RangeError(`variable ${name}: there is no dimension ${dimension}`);
        return known.length;
      });
      if (!isArrayOf(type, given.data))
        throw new TypeError(`variable ${name}: the array is not one of type ${type}`);
      if (given.data.length !== sizeOf(shape))
        throw new RangeError(
          `variable ${name}: ${given.data.length} values given, its dimensions (${given.dimensions.join(", ")}) hold ${sizeOf(shape)}`,
        );
      data.set(name, given.data);
      const attributes = checkedAttributes(given.attributes ?? [], `variable ${name}: `);
      return { name, type, dimensions: [...given.dimensions], shape, attributes };
    }),
  );
  return {
    kind: "memory",
    dimensions,
    variables,
    attributes: checkedAttributes(content.attributes ?? [], ""),
    problems: content.problems ?? [],
    async read(name, slab) {
      const variable = variables.get(name);
      const values = data.get(name);
      if (!variable || !values) return noVariable(name);
      const inside = checkSlab(variable, slab);
      return inside.ok ? succeed(takeSlab(variable.type, values, variable.shape, inside.value)) : inside;
    },
  };
}

/** The failure of reading a variable that a dataset doesn't have. */
export const noVariable = (name: string) =>
  fail({
    code: "netcdf/no-variable",
    message: `there is no variable ${name}`,
    where: { variable: name },
    remedy: "Ask for one of the names in `variables`.",
  });

function checkedAttributes(attributes: readonly Attribute[], owner: string): ReadonlyMap<string, Attribute> {
  for (const { name, type, value } of attributes) {
    const right = type === "char" ? typeof value === "string" : isArrayOf(type, value);
    if (!right) throw new TypeError(`${owner}attribute ${name}: the value is not one of type ${type}`);
  }
  return byName(`${owner}attribute`, attributes);
}

function byName<T extends { readonly name: string }>(what: string, items: readonly T[]): Map<string, T> {
  const map = new Map<string, T>();
  for (const item of items) {
    if (map.has(item.name)) throw new RangeError(`${what} ${item.name} is given twice`);
    map.set(item.name, item);
  }
  return map;
}
