import { Flag } from "../quality/flag.ts";
import { keptOut, layerTests } from "../quality/inherited-flags.ts";
import type { Column } from "./cast.ts";

/** Means of one quantity. Arrays have one element per layer or burst; missing is NaN. */
export interface MeanColumn {
  readonly name: string;
  readonly mean: Float64Array;
  /** Standard deviation, divisor n - 1; NaN below two rows. */
  readonly sd: Float64Array;
  readonly count: Int32Array;
  readonly flags: Uint8Array;
}

/**
 * Means and counts, with the rows that took part and the group of each.
 *
 * @param rows    rows of the cast
 * @param groupOf layer or burst of each of the rows; -1 for none
 * @param groups  number of layers or bursts
 */
export function meansOf(column: Column, rows: Int32Array, groupOf: Int32Array, groups: number) {
  const { values } = column;
  const out = keptOut(column);
  const mean = new Float64Array(groups);
  const count = new Int32Array(groups);
  const taken = new Int32Array(rows.length);
  const into = new Int32Array(rows.length);
  let used = 0;
  for (let r = 0; r < rows.length; r++) {
    const k = rows[r]!;
    const group = groupOf[r]!;
    if (group < 0 || out[k] === 1 || Number.isNaN(values[k]!)) continue;
    taken[used] = k;
    into[used++] = group;
    mean[group]! += values[k]!;
    count[group]! += 1;
  }
  for (let group = 0; group < groups; group++) mean[group]! /= count[group]!;
  return { mean, count, taken: taken.subarray(0, used), into };
}

/**
 * Means of a column over groups of rows. Rows take part whose own flag is 1 or 2, and those whose 3 comes from layer
 * tests alone. Flags: 9 if no row was left, 3 if at least half carry a 3 from those tests, else 1 if at least half
 * are 1, else 2.
 */
export function averaged(column: Column, rows: Int32Array, groupOf: Int32Array, groups: number): MeanColumn {
  const { name, values, flags } = column;
  const { mean, count, taken, into } = meansOf(column, rows, groupOf, groups);
  const squares = new Float64Array(groups);
  const good = new Int32Array(groups);
  const doubted = new Int32Array(groups);
  const doubts = doubtedRows(column);
  for (let r = 0; r < taken.length; r++) {
    const k = taken[r]!;
    const group = into[r]!;
    squares[group]! += (values[k]! - mean[group]!) ** 2;
    if (flags[k] === Flag.good) good[group]! += 1;
    if (doubts !== null && doubts[k] === 1) doubted[group]! += 1;
  }
  const sd = squares.map((sum, group) =>
    count[group]! < 2 ? Number.NaN : Math.sqrt(sum / (count[group]! - 1)),
  );
  const groupFlags = Uint8Array.from(count, (n, group) => {
    if (n === 0) return Flag.missing;
    if (2 * doubted[group]! >= n) return Flag.questionable;
    return 2 * good[group]! >= n ? Flag.good : Flag.notEvaluated;
  });
  return { name, mean, sd, count, flags: groupFlags };
}

/** 1 for rows that a layer test doubts; null where none ran. */
function doubtedRows({ tests, values }: Column): Uint8Array | null {
  const results = layerTests.flatMap((test) => tests.get(test) ?? []);
  if (results.length === 0) return null;
  const doubted = new Uint8Array(values.length);
  for (const result of results)
    for (let k = 0; k < doubted.length; k++) if (result[k] === Flag.questionable) doubted[k] = 1;
  return doubted;
}
