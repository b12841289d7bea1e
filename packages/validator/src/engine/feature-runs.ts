import type { DatasetView } from "./dataset-view.ts";
import type { VariableView } from "./variable-view.ts";

/** Indices of a coordinate's values, feature by feature. */
export async function featureRuns(dataset: DatasetView, variable: VariableView): Promise<Int32Array[]> {
  const size = variable.shape.reduce((a, b) => a * b, 1);
  const last = variable.dimensions.at(-1) ?? "";
  const link = variable.dimensions.length === 1 ? dataset.link(last) : undefined;
  const values = link === undefined ? null : await dataset.data.numbers(link.variable);
  if (link === undefined || values === null) {
    const length = variable.shape.at(-1) ?? 1;
    const rows = length === 0 ? 0 : size / length;
    return cut(size, new Float64Array(rows).fill(length));
  }
  return link.kind === "count" ? cut(size, values) : gathered(values);
}

/** The indices from 0 to `size` cut into runs of these lengths; what is more than there is counts no further. */
function cut(size: number, lengths: Float64Array): Int32Array[] {
  const indices = new Int32Array(size);
  for (let i = 0; i < size; i += 1) indices[i] = i;
  let start = 0;
  return Array.from(lengths, (length) => {
    const end = Math.min(size, start + Math.max(0, length || 0));
    const run = indices.subarray(start, end);
    start = end;
    return run;
  });
}

/** The indices of each feature, features in the order in which they come up. */
function gathered(features: Float64Array): Int32Array[] {
  const runs = new Map<number, number[]>();
  for (let i = 0; i < features.length; i += 1) {
    const feature = features[i]!;
    if (Number.isNaN(feature)) continue;
    const run = runs.get(feature);
    if (run === undefined) runs.set(feature, [i]);
    else run.push(i);
  }
  return [...runs.values()].map((run) => Int32Array.from(run));
}
