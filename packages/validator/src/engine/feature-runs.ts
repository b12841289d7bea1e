import type { DatasetView } from "./dataset-view.ts";
import type { VariableView } from "./variable-view.ts";

/** Indices of a coordinate's values, feature by feature. */
export async function featureRuns(dataset: DatasetView, variable: VariableView): Promise<number[][]> {
  const size = variable.shape.reduce((a, b) => a * b, 1);
  const last = variable.dimensions.at(-1) ?? "";
  const link = variable.dimensions.length === 1 ? dataset.link(last) : undefined;
  const values = link === undefined ? null : await dataset.data.numbers(link.variable);
  if (link === undefined || values === null) {
    const length = variable.shape.at(-1) ?? 1;
    const rows = length === 0 ? 0 : size / length;
    return Array.from({ length: rows }, (_, row) => Array.from({ length }, (_, i) => row * length + i));
  }
  if (link.kind === "count") {
    let start = 0;
    return [...values].map((count) => {
      const rows = Math.min(Math.max(0, count || 0), Math.max(0, size - start));
      const run = Array.from({ length: rows }, (_, i) => start + i);
      start += rows;
      return run;
    });
  }
  const runs = new Map<number, number[]>();
  values.forEach((feature, index) => {
    if (Number.isNaN(feature)) return;
    const run = runs.get(feature);
    if (run === undefined) runs.set(feature, [index]);
    else run.push(index);
  });
  return [...runs.values()];
}
