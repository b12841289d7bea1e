import type { Dataset, Variable } from "@wherry/netcdf";

/** The rows of a product, cast by cast, whatever the arrangement of the arrays. */
export interface ProductRows {
  readonly rows: number;
  /** Index of the cast of a row. */
  castOf(row: number): number;
  /** Place of a row within its cast, from 0. */
  rowOf(row: number): number;
  /** Where a row stands in a variable (in texts or pairs, in units of one); null for one value per cast or file. */
  placeIn(variable: Variable): ((row: number) => number) | null;
}

/** Dimensions that number casts or series in products of ours. */
const INSTANCES: readonly string[] = ["profile", "timeSeries"];

/**
 * @param dataset a product of ours: profiles in a contiguous ragged array, in orthogonal or incomplete arrays, or a
 *                single one; or a series with or without a dimension for series
 */
export async function productRows(dataset: Dataset): Promise<ProductRows> {
  const counter = [...dataset.variables.values()].find(({ attributes }) =>
    attributes.has("sample_dimension"),
  );
  if (counter) {
    const counts = (await values(dataset, counter.name)) as Int32Array;
    const dimension = String(counter.attributes.get("sample_dimension")?.value);
    const { castOf, rowOf, rows } = numbered([...counts]);
    return {
      rows,
      castOf,
      rowOf,
      placeIn: ({ dimensions }) => (dimensions[0] === dimension ? (row) => row : null),
    };
  }
  const instance = INSTANCES.find((name) => dataset.dimensions.has(name));
  const element = elementDimension(dataset, instance);
  const length = dataset.dimensions.get(element)?.length ?? 0;
  const casts = instance === undefined ? 1 : (dataset.dimensions.get(instance)?.length ?? 0);
  const counts =
    instance === undefined ? [length] : await countsOf(dataset, instance, element, casts, length);
  const { castOf, rowOf, rows } = numbered(counts);
  return {
    rows,
    castOf,
    rowOf,
    placeIn: ({ dimensions: [first, second] }) => {
      if (first === element) return rowOf;
      return first === instance && second === element && second !== undefined
        ? (row) => castOf(row) * length + rowOf(row)
        : null;
    },
  };
}

function numbered(counts: readonly number[]) {
  const rows = counts.reduce((sum, count) => sum + count, 0);
  const cast = new Uint32Array(rows);
  const within = new Uint32Array(rows);
  let row = 0;
  for (const [index, count] of counts.entries())
    for (let k = 0; k < count; k++) {
      cast[row] = index;
      within[row++] = k;
    }
  return { rows, castOf: (at: number) => cast[at]!, rowOf: (at: number) => within[at]! };
}

/** The dimension along which the rows of a cast lie: that of its flags. */
function elementDimension(dataset: Dataset, instance: string | undefined): string {
  const depth = instance === undefined ? 0 : 1;
  for (const { name, dimensions } of dataset.variables.values()) {
    const own = dimensions[depth];
    if (name.endsWith("_qc") && own !== undefined && dimensions[0] === (instance ?? own)) return own;
  }
  throw new RangeError("a product has flags for the quantities of its rows");
}

/** Rows of each cast up to the last that is no padding in every variable. */
async function countsOf(
  dataset: Dataset,
  instance: string,
  element: string,
  casts: number,
  length: number,
): Promise<number[]> {
  const counts = new Array<number>(casts).fill(0);
  for (const { name, type, dimensions, attributes } of dataset.variables.values()) {
    if (dimensions[0] !== instance || dimensions[1] !== element || dimensions.length !== 2) continue;
    if (type === "char") continue;
    const fill = attributes.get("_FillValue")?.value;
    const padding = typeof fill === "object" ? Number(fill[0]) : Number.NaN;
    const data = (await values(dataset, name)) as Float64Array;
    for (let cast = 0; cast < casts; cast++)
      for (let k = length - 1; k >= counts[cast]!; k--)
        if (data[cast * length + k] !== padding) counts[cast] = k + 1;
  }
  return counts;
}

async function values(dataset: Dataset, name: string) {
  const read = await dataset.read(name);
  if (!read.ok) throw new RangeError(read.problems[0].message);
  return read.value;
}
