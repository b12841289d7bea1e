import { Flag } from "./flag.ts";
import { flagsFor } from "./flags-of-test.ts";

export interface SpikeReturnLimits {
  /** Height that noise explains, in the unit of the values. */
  readonly floor: number;
  /** Multiple of the local gradient that water explains. */
  readonly gradientFactor: number;
  /** Smallest spacing of rows that counts, in the unit of the coordinate. */
  readonly spacingFloor: number;
  /** Pairs of rows on either side from which the gradient is taken. */
  readonly windowRows: number;
  /** Most rows that a spike may have. */
  readonly longest: number;
  /** Height above which a spike is bad (4) and not only questionable (3); null for never. */
  readonly badAbove: number | null;
}

/**
 * Spikes that leave and come back: up to `longest` rows that lie beyond both the row before and the row after,
 * on the same side, by more than the water explains (local gradient times spacing, times a factor, plus a floor).
 * A monotone layer, however sharp, is never a spike.
 *
 * @param values     one per row, any unit; missing is NaN
 * @param coordinate pressure or time of each row
 * @returns 1 judged and no spike, 2 not judged (ends, missing neighbours), 3 or 4 spike, 9 missing
 * @source  house
 */
export function spikeReturn(
  values: Float64Array,
  coordinate: Float64Array,
  limits: SpikeReturnLimits,
): Uint8Array {
  const { floor, gradientFactor, spacingFloor, windowRows, longest } = limits;
  const badAbove = limits.badAbove ?? Number.POSITIVE_INFINITY;
  if (!(windowRows >= 1 && windowRows <= sorted.length))
    throw new RangeError(`windowRows must be 1 to ${sorted.length}, got ${windowRows}`);
  const rows = values.length;
  const flags = flagsFor(values, Flag.notEvaluated);
  if (rows < 3) return flags;
  const present = presentRows(values, coordinate);
  const counted = present.includes(0) ? runningCount(present) : null;
  const slopes = { values, coordinate, present, spacingFloor };
  const flaggedByShorter = new Uint8Array(rows);

  for (let length = 1; length <= longest; length++) {
    for (let i = 1; i + length < rows; i++) {
      const before = i - 1;
      const after = i + length;
      if (present[after] === 0) {
        i = after; // no window that contains this row can be judged
        continue;
      }
      const left = values[before]!;
      const right = values[after]!;
      const low = Math.min(left, right);
      const high = Math.max(left, right);
      const above = values[i]! > high;
      const leaves = above || values[i]! < low;
      // most rows lie between their neighbours; single rows are still counted as judged below
      if (length > 1 && !leaves) continue;
      if (length === 1 ? present[i] === 0 || present[before] === 0 : !allPresent(present, before, after))
        continue;
      if (flaggedByShorter[before] === 1 || flaggedByShorter[after] === 1) continue;
      const lead = Math.max(0, before - windowRows);
      const trail = Math.min(rows - 1, after + windowRows);
      const slopesBefore = counted === null ? before - lead : counted[before]! - counted[lead]!;
      const slopesAfter = counted === null ? trail - after : counted[trail]! - counted[after]!;
      if (slopesBefore + slopesAfter < 2) continue;
      if (length === 1 && flags[i] === Flag.notEvaluated) flags[i] = Flag.good;

      if (!leaves) continue;
      let sameSide = true;
      for (let j = i + 1; j < after; j++)
        if (above ? !(values[j]! > high) : !(values[j]! < low)) sameSide = false;
      if (!sameSide) continue;
      // the height allowed is never below the floor: medians are taken for the few rows that exceed it
      if (!anyHigher(values, i, after, left, right, floor)) continue;

      let spacing = spacingFloor;
      for (let j = i; j <= after; j++)
        spacing = Math.max(spacing, Math.abs(coordinate[j]! - coordinate[j - 1]!));
      const gradient = Math.max(
        slopesBefore === 0 ? 0 : medianOf(slopes, lead, before),
        slopesAfter === 0 ? 0 : medianOf(slopes, after, trail),
      );
      const allowed = floor + gradientFactor * gradient * spacing;
      for (let j = i; j < after; j++) {
        const height = heightOf(values[j]!, left, right);
        if (!(height > allowed)) continue;
        const flag = height > badAbove ? Flag.bad : Flag.questionable;
        if (flags[j]! < flag) flags[j] = flag;
      }
    }
    for (let k = 0; k < rows; k++)
      flaggedByShorter[k] = flags[k] === Flag.questionable || flags[k] === Flag.bad ? 1 : 0;
  }
  return flags;
}

/** 1 for rows whose value and coordinate are known. */
function presentRows(values: Float64Array, coordinate: Float64Array): Uint8Array {
  const present = new Uint8Array(values.length).fill(1);
  for (let k = 0; k < present.length; k++)
    if (Number.isNaN(values[k]!) || Number.isNaN(coordinate[k]!)) present[k] = 0;
  return present;
}

/** Running count of the pairs (k, k + 1) of which both rows are known: one element per row. */
function runningCount(present: Uint8Array): Int32Array {
  const counted = new Int32Array(present.length);
  for (let k = 0; k + 1 < present.length; k++) counted[k + 1] = counted[k]! + (present[k]! & present[k + 1]!);
  return counted;
}

const heightOf = (value: number, left: number, right: number): number =>
  Math.min(Math.abs(value - left), Math.abs(value - right));

function anyHigher(
  values: Float64Array,
  from: number,
  to: number,
  left: number,
  right: number,
  limit: number,
): boolean {
  for (let j = from; j < to; j++) if (heightOf(values[j]!, left, right) > limit) return true;
  return false;
}

/** Scratch of `medianOf`, so that the loop over rows allocates nothing. */
const sorted = new Float64Array(64);

interface Slopes {
  readonly values: Float64Array;
  readonly coordinate: Float64Array;
  readonly present: Uint8Array;
  readonly spacingFloor: number;
}

/** Median slope of the pairs (k, k + 1), k = from to to - 1 (at most 64), of which both rows are known; 0 if none. */
function medianOf({ values, coordinate, present, spacingFloor }: Slopes, from: number, to: number): number {
  let count = 0;
  for (let k = from; k < to; k++) {
    if (present[k] === 0 || present[k + 1] === 0) continue;
    const spacing = Math.max(Math.abs(coordinate[k + 1]! - coordinate[k]!), spacingFloor);
    const slope = Math.abs(values[k + 1]! - values[k]!) / spacing;
    let place = count++;
    while (place > 0 && sorted[place - 1]! > slope) {
      sorted[place] = sorted[place - 1]!;
      place--;
    }
    sorted[place] = slope;
  }
  if (count === 0) return 0;
  const half = count >> 1;
  return count % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

function allPresent(present: Uint8Array, from: number, to: number): boolean {
  for (let k = from; k <= to; k++) if (present[k] === 0) return false;
  return true;
}
