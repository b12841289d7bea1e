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
