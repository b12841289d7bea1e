import type { Cast, Column, StepRecord } from "./cast.ts";

/** The cast with columns added or replaced under their names. */
export function withColumns(cast: Cast, ...columns: readonly Column[]): Cast {
  if (columns.length === 0) return cast;
  const map = new Map(cast.columns);
  for (const column of columns) {
    if (column.values.length !== cast.rows)
      throw new RangeError(`column ${column.name} has ${column.values.length} rows, the cast ${cast.rows}`);
    map.set(column.name, column);
  }
  return { ...cast, columns: map };
}

export const withStep = (cast: Cast, step: StepRecord): Cast => ({ ...cast, steps: [...cast.steps, step] });

/** The column with the result of a quality test, in place of a former result of the same test. */
export const withTest = (column: Column, test: string, result: Uint8Array): Column => ({
  ...column,
  tests: new Map(column.tests).set(test, result),
});

/** A step that was not taken, with the reason. */
export const skipped = (step: string, reason: string): StepRecord => ({
  step,
  parameters: { skipped: true, reason },
  counts: {},
  words: `${step} skipped: ${reason}`,
});

/** Values of a column; null if the cast has none of that name. */
export const valuesOf = (cast: Cast, name: string): Float64Array | null =>
  cast.columns.get(name)?.values ?? null;

/**
 * Smallest step of the printed values, in the unit of `values`; NaN if unknown (computed columns).
 *
 * The factor between printed and house unit is taken from the values themselves, so that it holds for every
 * unit that a reader can convert linearly.
 */
export function printedResolution(column: Column): number {
  const { source, values } = column;
  if (source === null) return Number.NaN;
  const step = 10 ** -source.decimals;
  let first = Number.NaN;
  let last = Number.NaN;
  for (let k = 0; k < values.length && Number.isNaN(first); k++) first = values[k]!;
  for (let k = values.length - 1; k >= 0 && Number.isNaN(last); k--) last = values[k]!;
  const slope = (last - first) / (source.last - source.first);
  if (Number.isFinite(slope) && slope !== 0) return Math.abs(slope) * step;
  const ratio = source.first === 0 ? Number.NaN : first / source.first;
  // an offset (pressure zeroed) makes the ratio meaningless; every other house unit is a plain multiple
  return Number.isFinite(ratio) && ratio > 0 && column.name !== "pressure" ? ratio * step : step;
}
