import type { DatasetView } from "../engine/dataset-view.ts";
import type { VariableView } from "../engine/variable-view.ts";
import type { Quantity } from "./quantity.ts";

type Indices = Int32Array;

const kept = new WeakMap<DatasetView, Map<string, Promise<ReadonlyMap<string, Indices>>>>();

/** For each element of the sample dimension, the feature that it belongs to; -1 for none. */
async function featureOf(dataset: DatasetView, link: { kind: string; variable: string }, samples: number) {
  const values = await dataset.data.numbers(link.variable);
  const feature = new Int32Array(samples).fill(-1);
  if (values === null) return feature;
  if (link.kind === "index") {
    for (let i = 0; i < samples; i += 1) feature[i] = Number.isNaN(values[i]!) ? -1 : values[i]!;
    return feature;
  }
  let start = 0;
  values.forEach((count, index) => {
    const end = Math.min(samples, start + Math.max(0, count || 0));
    feature.fill(index, start, end);
    start = end;
  });
  return feature;
}

/** Index along each reachable dimension for each row of a variable, row-major. */
async function indicesOf(dataset: DatasetView, variable: VariableView): Promise<Map<string, Indices>> {
  const { dimensions, shape } = variable;
  const size = shape.reduce((a, b) => a * b, 1);
  const found = new Map<string, Indices>();
  let stride = size;
  dimensions.forEach((dimension, d) => {
    const length = shape[d] ?? 1;
    stride = length === 0 ? 0 : stride / length;
    const indices = new Int32Array(size);
    if (dimensions.length === 1) for (let i = 0; i < size; i += 1) indices[i] = i;
    else for (let i = 0; i < size; i += 1) indices[i] = Math.floor(i / stride) % length;
    found.set(dimension, indices);
  });
  for (let before = -1; before < found.size; ) {
    before = found.size;
    for (const link of dataset.layout.links) {
      const from = found.get(link.from);
      if (from === undefined || found.has(link.to)) continue;
      const feature = await featureOf(dataset, link, dataset.dimensions.get(link.from)?.length ?? 0);
      found.set(
        link.to,
        from.map((sample) => feature[sample] ?? -1),
      );
    }
  }
  return found;
}

/** Index along each reachable dimension for each row of a variable, kept for all variables on its dimensions. */
export function rowIndices(
  dataset: DatasetView,
  variable: VariableView,
): Promise<ReadonlyMap<string, Indices>> {
  let known = kept.get(dataset);
  if (known === undefined) {
    known = new Map();
    kept.set(dataset, known);
  }
  const key = variable.dimensions.join();
  let indices = known.get(key);
  if (indices === undefined) {
    indices = indicesOf(dataset, variable);
    known.set(key, indices);
  }
  return indices;
}

/**
 * Values of a quantity laid onto the rows of another variable: repeated along dimensions that it lacks, found through
 * counts or indices in ragged arrays.
 *
 * @returns  one value per row of `target`; null if the quantity has a dimension that the target does not reach
 */
export async function onto(
  dataset: DatasetView,
  { variable, values }: Quantity,
  target: VariableView,
): Promise<Float64Array | null> {
  if (variable.dimensions.join() === target.dimensions.join()) return values;
  const size = target.shape.reduce((a, b) => a * b, 1);
  if (variable.dimensions.length === 0) return new Float64Array(size).fill(values[0] ?? Number.NaN);
  const reachable = await rowIndices(dataset, target);
  const along = variable.dimensions.map((dimension) => reachable.get(dimension));
  const out = new Float64Array(size);
  const [first] = along;
  if (along.length === 1 && first !== undefined) {
    for (let i = 0; i < size; i += 1) out[i] = values[first[i]!] ?? Number.NaN;
    return out;
  }
  if (along.some((indices) => indices === undefined)) return null;
  for (let i = 0; i < size; i += 1) {
    let at = 0;
    for (let d = 0; d < along.length; d += 1) {
      const index = along[d]![i]!;
      at = index < 0 ? Number.NaN : at * (variable.shape[d] ?? 1) + index;
    }
    out[i] = values[at] ?? Number.NaN;
  }
  return out;
}
