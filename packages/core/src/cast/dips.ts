import type { Cast } from "./cast.ts";
import { valuesOf } from "./change.ts";
import { type SegmentationParameters, segmentationDefaults } from "./descent.ts";
import { median } from "./robust.ts";
import { type RowTimes, rowTimes } from "./row-times.ts";
import { smoothPressure } from "./smooth-pressure.ts";

/** Rows firstRow to lastRow (both included) of one dip, with what came before and after it. */
export interface Dip {
  readonly firstRow: number;
  readonly lastRow: number;
}

/** A dip reaches at least this part of the deepest one. */
const LEAST_PART = 0.6;
/** From this part on it is a dip even if it stays there for long; a soak does not go so deep. */
const SURELY = 0.9;
/** Range of pressure below which nothing is divided, dbar. */
const LEAST_RANGE = 3;
const FEWEST_ROWS = 10;
/** Intervals without a row that are a pause of the record. */
const PAUSE = 5;

/**
 * The dips of a record that was left running between them: each comes near the surface before the next. A soak
 * before a cast is no dip: it is shallower, and spends its time at its depth.
 *
 * @returns one entry, the whole record, where there is nothing to divide
 * @source house
 */
export function findDips(
  cast: Cast,
  parameters: SegmentationParameters = segmentationDefaults,
): readonly Dip[] {
  const whole = [{ firstRow: 0, lastRow: cast.rows - 1 }];
  const pressure = valuesOf(cast, "pressure") ?? valuesOf(cast, "depth");
  const times = rowTimes(cast.elapsed);
  if (cast.kind !== "profile" || cast.state.processing === "averaged" || pressure === null || times === null)
    return whole;
  if (cast.rows < 2 * FEWEST_ROWS || pressure.every(Number.isNaN)) return whole;
  const { s } = smoothPressure(pressure, times, new Uint8Array(cast.rows));
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const x of s) {
    least = Math.min(least, x);
    most = Math.max(most, x);
  }
  const range = most - least;
  if (!(range >= LEAST_RANGE)) return whole;
  const [atLeast, atMost] = parameters.shallowLimits;
  const shallow = Math.min(atMost, Math.max(parameters.shallowPart * range, Math.min(atLeast, range / 2)));
  const dips = runsDeeper(s, least + shallow).filter((run) => isDip(s, times, run, least, range));
  if (dips.length < 2) return whole;
  const cuts = dips
    .slice(1)
    .map((next, i) => cutBetween(cast, s, times, dips[i]!.lastRow + 1, next.firstRow - 1));
  return dips.map((_, i) => ({
    firstRow: i === 0 ? 0 : cuts[i - 1]!,
    lastRow: i === dips.length - 1 ? cast.rows - 1 : cuts[i]! - 1,
  }));
}

function runsDeeper(s: Float64Array, limit: number): Dip[] {
  const runs: Dip[] = [];
  let from = -1;
  for (let k = 0; k <= s.length; k++) {
    const deeper = k < s.length && s[k]! > limit;
    if (deeper && from < 0) from = k;
    if (!deeper && from >= 0) {
      runs.push({ firstRow: from, lastRow: k - 1 });
      from = -1;
    }
  }
  return runs;
}

function isDip(
  s: Float64Array,
  { seconds }: RowTimes,
  { firstRow, lastRow }: Dip,
  least: number,
  range: number,
): boolean {
  if (lastRow - firstRow + 1 < FEWEST_ROWS) return false;
  let deepest = Number.NEGATIVE_INFINITY;
  for (let k = firstRow; k <= lastRow; k++) deepest = Math.max(deepest, s[k]!);
  const part = (deepest - least) / range;
  if (part >= SURELY || part < LEAST_PART) return part >= SURELY;
  let near = 0;
  for (let k = firstRow + 1; k <= lastRow; k++)
    if (s[k]! > deepest - 0.5) near += seconds[k]! - seconds[k - 1]!;
  return near < (seconds[lastRow]! - seconds[firstRow]!) / 2;
}

/**
 * First row of the later dip: after a pause of the record, else the middle of the rows in air between both, else where
 * the package came highest.
 */
function cutBetween(
  cast: Cast,
  s: Float64Array,
  { seconds, interval }: RowTimes,
  from: number,
  to: number,
): number {
  const C = valuesOf(cast, "conductivity");
  const usual = C === null ? Number.NaN : median(C);
  const air: number[] = [];
  let top = from;
  let pause = from;
  for (let k = from; k <= to; k++) {
    if (C !== null && C[k]! < Math.min(0.2, 0.1 * usual)) air.push(k);
    if (s[k]! < s[top]!) top = k;
    if (seconds[k]! - seconds[k - 1]! > seconds[pause]! - seconds[pause - 1]!) pause = k;
  }
  if (seconds[pause]! - seconds[pause - 1]! > PAUSE * interval) return pause;
  return air.length >= 2 ? air[air.length >> 1]! : top;
}
