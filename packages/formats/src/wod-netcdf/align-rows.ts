import { fail, type Problem, type Result, succeed } from "@wherry/core";
import {
  type Attribute,
  type Dataset,
  type MemoryVariable,
  memoryDataset,
  numberAttribute,
  textAttribute,
  type Variable,
} from "@wherry/netcdf";
import { textOf } from "../cf-dsg/attributes.ts";
import { MOST_CELLS, tooLarge } from "../cf-dsg/layout.ts";
import { cellsOf, isNumeric, missingValues, readRaw } from "../cf-dsg/stored-numbers.ts";

/** A name that the file does not use. */
function freeName(name: string, used: ReadonlyMap<string, unknown>): string {
  let free = name;
  while (used.has(free)) free += "_";
  return free;
}

/** No flag and no value of these files is this. */
const BYTE_FILL = -128;

/** The count of levels and those of the other variables, by the dimension of samples that each counts. */
export function countersOf(dataset: Dataset): ReadonlyMap<string, Variable> {
  const counters = [...dataset.variables.values()].filter(
    ({ attributes, dimensions }) => attributes.has("sample_dimension") && dimensions.length === 1,
  );
  return new Map(
    counters.map((variable) => [textOf(variable.attributes, "sample_dimension") ?? "", variable]),
  );
}

/** The variable of depths, whose rows the others are laid beside. */
export const levelsOf = (dataset: Dataset, counters: ReadonlyMap<string, Variable>): Variable | undefined =>
  [...dataset.variables.values()].find(
    ({ attributes, dimensions }) =>
      textOf(attributes, "standard_name") === "depth" &&
      dimensions.length === 1 &&
      counters.has(dimensions[0]!),
  );

/**
 * A dataset in which every variable has rows of its own, as a contiguous ragged array with the rows of the levels:
 * where a cast has as many values as levels they stand side by side; where it has none they are missing; anything
 * else can't be told and counts as missing, which is a warning.
 *
 * @returns problem wod-netcdf/counts if counts and dimensions do not fit
 */
export async function alignRows(dataset: Dataset, levels: Variable): Promise<Result<Dataset>> {
  const cells = [...dataset.variables.values()].reduce((sum, variable) => sum + cellsOf(variable), 0);
  if (cells > MOST_CELLS) return fail(tooLarge(cells));
  const along = freeName("rows_of_levels", dataset.dimensions);
  const counters = countersOf(dataset);
  const base = counters.get(levels.dimensions[0]!)!;
  const instances = base.dimensions[0]!;
  const counts = new Map<string, Float64Array>();
  for (const [samples, counter] of counters) {
    const read = await readRaw(dataset, counter);
    if (!read.ok) return read;
    const sum = read.value.reduce((all, count) => all + count, 0);
    const fits = counter.dimensions[0] === instances && sum === dataset.dimensions.get(samples)?.length;
    if (!fits || read.value.some((count) => count < 0))
      return fail({
        code: "wod-netcdf/counts",
        message: `${counter.name} counts ${sum} values of ${samples}, which has ${dataset.dimensions.get(samples)?.length ?? "no"} of them`,
        where: { variable: counter.name },
        remedy: "The file is damaged or was cut. Get it again.",
      });
    counts.set(samples, read.value);
  }
  const wanted = counts.get(levels.dimensions[0]!)!;
  const rows = wanted.reduce((all, count) => all + count, 0);
  const warnings: Problem[] = [];
  const variables: MemoryVariable[] = [
    rowSizes(freeName("row_size", dataset.variables), wanted, instances, along),
  ];
  for (const variable of dataset.variables.values()) {
    const [first, second] = variable.dimensions;
    const own = counts.get(first ?? "");
    if (own && second === undefined && isNumeric(variable) && !/_sigfigs$/.test(variable.name)) {
      const read = await readRaw(dataset, variable);
      if (!read.ok) return read;
      const laid = lay(read.value, own, wanted, rows);
      if (laid.unfit > 0) warnings.push(unfit(variable, laid.unfit));
      variables.push(rowVariable(variable, laid.values, along));
    } else if (
      (first === instances || first === undefined) &&
      !counters.has(first ?? "") &&
      variable !== base
    ) {
      if ([...counters.values()].includes(variable)) continue;
      const read = await dataset.read(variable.name);
      if (read.ok)
        variables.push({
          name: variable.name,
          type: variable.type,
          dimensions: variable.dimensions,
          attributes: [...variable.attributes.values()],
          data: read.value,
        });
    }
  }
  const used = new Set(variables.flatMap(({ dimensions }) => dimensions));
  const dimensions = [...dataset.dimensions.values()].filter(({ name }) => used.has(name));
  return succeed(
    memoryDataset({
      dimensions: [
        ...dimensions.map(({ name, length }) => ({ name, length })),
        { name: along, length: rows },
      ],
      attributes: [...dataset.attributes.values()],
      variables,
    }),
    warnings,
  );
}

const rowSizes = (name: string, wanted: Float64Array, instances: string, along: string): MemoryVariable => ({
  name,
  type: "int",
  dimensions: [instances],
  attributes: [textAttribute("sample_dimension", along)],
  data: Int32Array.from(wanted),
});

/** Values beside the levels, NaN where there are none. */
function lay(values: Float64Array, own: Float64Array, wanted: Float64Array, rows: number) {
  const laid = new Float64Array(rows).fill(Number.NaN);
  let [from, to, unfitCasts] = [0, 0, 0];
  for (const [cast, count] of own.entries()) {
    const levels = wanted[cast]!;
    if (count === levels) laid.set(values.subarray(from, from + count), to);
    else if (count > 0) unfitCasts++;
    from += count;
    to += levels;
  }
  return { values: laid, unfit: unfitCasts };
}

const unfit = ({ name }: Variable, casts: number): Problem => ({
  code: "wod-netcdf/unfit",
  message: `${casts} ${casts === 1 ? "cast has" : "casts have"} another number of values in ${name} than of levels, so that it is not told which belong together; they count as missing`,
  where: { variable: name },
  remedy: "They are in the original; get the casts in the native form of the database.",
});

function rowVariable(variable: Variable, values: Float64Array, along: string): MemoryVariable {
  const { name, type } = variable;
  const isByte = type === "byte";
  const [known] = missingValues(variable);
  const fill = isByte ? BYTE_FILL : (known ?? -1e10);
  const filled = values.map((value) => (Number.isNaN(value) ? fill : value));
  const attributes: Attribute[] = [...variable.attributes.values()].filter(
    (each) => each.name !== "_FillValue",
  );
  return {
    name,
    type: isByte ? "byte" : type === "float" ? "float" : "double",
    dimensions: [along],
    attributes: [
      ...attributes,
      numberAttribute("_FillValue", isByte ? "byte" : type === "float" ? "float" : "double", fill),
    ],
    data: isByte ? Int8Array.from(filled) : type === "float" ? Float32Array.from(filled) : filled,
  };
}
