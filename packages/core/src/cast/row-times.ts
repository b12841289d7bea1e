import { median } from "./robust.ts";

/** Times of rows that can be differentiated. */
export interface RowTimes {
  /** Seconds, strictly increasing, one per row. */
  readonly seconds: Float64Array;
  /** Median interval between rows, s. */
  readonly interval: number;
  /** Rows whose own time repeats, goes back or is missing, and was placed between its neighbours. */
  readonly placed: number;
}

/**
 * Times for slopes and intervals: where the clock of the export is coarser than the rows (several rows with the
 * same second), runs back or has holes, the rows are spread evenly up to the next later time.
 *
 * @param elapsed seconds since the first row; NaN where missing
 * @returns null if fewer than two different times are known
 */
export function rowTimes(elapsed: Float64Array | null): RowTimes | null {
  if (elapsed === null) return null;
  if (latest?.elapsed !== elapsed) latest = { elapsed, times: spread(elapsed) };
  return latest.times;
}

/** Every step of a cast asks for the times of the same array, which nobody changes. */
let latest: { readonly elapsed: Float64Array; readonly times: RowTimes | null } | null = null;

function spread(elapsed: Float64Array): RowTimes | null {
  const rows = elapsed.length;
  const seconds = new Float64Array(rows);
  const anchors = new Int32Array(rows);
  let count = 0;
  for (let k = 0; k < rows; k++) {
    const time = elapsed[k]!;
    if (Number.isNaN(time) || (count > 0 && time <= elapsed[anchors[count - 1]!]!)) continue;
    anchors[count++] = k;
  }
  if (count < 2) return null;
  const perRow = new Float64Array(count - 1);
  for (let a = 0; a + 1 < count; a++) {
    const from = anchors[a]!;
    const to = anchors[a + 1]!;
    perRow[a] = (elapsed[to]! - elapsed[from]!) / (to - from);
    for (let k = from; k < to; k++) seconds[k] = elapsed[from]! + (k - from) * perRow[a]!;
  }
  const interval = median(perRow);
  const first = anchors[0]!;
  const last = anchors[count - 1]!;
  for (let k = last; k < rows; k++) seconds[k] = elapsed[last]! + (k - last) * interval;
  for (let k = first - 1; k >= 0; k--) seconds[k] = seconds[k + 1]! - interval;
  return { seconds, interval, placed: rows - count };
}
