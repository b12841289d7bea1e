import type { Attribute, DataArray, Dataset } from "../src/dataset.ts";
import type { Problem, Result } from "../src/problem.ts";

/** The value of a result; throws with the problems of a failure. */
export function unwrap<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join("\n"));
  return result.value;
}

/** The codes of a failure, or none. */
export const codesOf = (result: Result<unknown>): string[] =>
  result.ok ? [] : result.problems.map(({ code }: Problem) => code);

const bits = (data: DataArray): unknown =>
  Array.isArray(data) ? data : Buffer.from(data.buffer, data.byteOffset, data.byteLength).toString("hex");

const plain = (attributes: ReadonlyMap<string, Attribute>) =>
  [...attributes.values()].map(({ name, type, value, bytes }) => ({
    name,
    type,
    value: typeof value === "string" ? value : bits(value),
    ...(bytes === undefined ? {} : { bytes: bits(bytes) }),
  }));

/** Everything a dataset says, in its order, with values bit by bit; two datasets are equal if this is. */
export async function contentOf(dataset: Dataset) {
  const variables = [];
  for (const { name, type, dimensions, shape, attributes } of dataset.variables.values())
    variables.push({
      name,
      type,
      dimensions: [...dimensions],
      shape: [...shape],
      attributes: plain(attributes),
      data: bits(unwrap(await dataset.read(name))),
    });
  return {
    dimensions: [...dataset.dimensions.values()],
    attributes: plain(dataset.attributes),
    variables,
  };
}
