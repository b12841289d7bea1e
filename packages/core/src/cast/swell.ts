import type { SegmentationParameters } from "./descent.ts";
import { median, robustSd } from "./robust.ts";

/** Waves in a record: their period, s, and the amplitude of the speed they give, dbar/s. */
export interface Swell {
  readonly period: number;
  readonly speed: number;
}

/** Periods that waves at a small boat have, s; shorter ones are a hand, longer ones tide and drift. */
const PERIODS = [2, 15] as const;

/**
 * Waves between two rows, from where the speed crosses its own mean over 10 s.
 *
 * @param w rate of change of pressure, dbar/s
 * @returns null where fewer than three waves, or none of a plausible period, are there
 * @source house
 */
export function findSwell(w: Float64Array, seconds: Float64Array, from: number, to: number): Swell | null {
  const span = seconds[to]! - seconds[from]!;
  if (to - from < 20 || !(span > 3 * PERIODS[0])) return null;
  const own = new Float64Array(to - from + 1);
  let low = from;
  let high = from;
  let sum = 0;
  for (let k = from; k <= to; k++) {
    while (high <= to && seconds[high]! <= seconds[k]! + 5) sum += w[high++]!;
    while (seconds[low]! < seconds[k]! - 5) sum -= w[low++]!;
    own[k - from] = w[k]! - sum / (high - low);
  }
  const spread = robustSd(own);
  const gaps: number[] = [];
  let side = 0;
  let last = Number.NaN;
  for (let k = 0; k < own.length; k++) {
    // only a speed well off the mean changes sides: noise about zero does not
    const now = own[k]! > spread / 2 ? 1 : own[k]! < -spread / 2 ? -1 : side;
    if (now === 1 && side === -1) {
      const at = seconds[from + k]!;
      if (!Number.isNaN(last)) gaps.push(at - last);
      last = at;
    }
    side = now;
  }
  const period = median(Float64Array.from(gaps));
  if (gaps.length < 3 || !(period >= PERIODS[0] && period <= PERIODS[1])) return null;
  // the robust spread of a sine is 1.05 times its amplitude
  return { period, speed: spread };
}

/**
 * Start of a slow downcast in waves that halt or lift the package again and again: no gain over a few seconds tells
 * it then. Averaged over a period the waves vanish; the start is where that mean leaves its former level. Late by a
 * wave it would lose the shallow water, so it rather lies early.
 *
 * @param downFrom start by the gain over a few seconds, which waves make late
 * @returns null where the waves are too weak to matter
 * @source house
 */
export function startInSwell(
  s: Float64Array,
  w: Float64Array,
  seconds: Float64Array,
  wetFrom: number,
  downFrom: number,
  deepestRow: number,
  speed: number,
  { swellPart, startPart }: SegmentationParameters,
): number | null {
  const swell = findSwell(w, seconds, downFrom, deepestRow);
  if (swell === null || swell.speed < swellPart * speed) return null;
  const { period } = swell;
  const mean = meanOver(s, seconds, wetFrom, deepestRow, period);
  // back to where the mean gained too little over one period
  let ahead = deepestRow;
  let still = wetFrom;
  for (let k = downFrom; k >= wetFrom; k--) {
    while (ahead > k + 1 && seconds[ahead - 1]! >= seconds[k]! + period) ahead--;
    if (mean[ahead]! - mean[k]! < startPart * period * speed) {
      still = k;
      break;
    }
  }
  // a corner smoothed over a period has risen by an eighth of a period's way where it was
  const level = mean[still]! + (speed * period) / 12;
  let start = still;
  while (start < downFrom && mean[start]! < level) start++;
  return start;
}

/** Means over a time centred on each row between two rows; shorter at both ends. */
export function meanOver(
  s: Float64Array,
  seconds: Float64Array,
  from: number,
  to: number,
  span: number,
): Float64Array {
  const mean = s.slice();
  let low = from;
  let high = from;
  let sum = 0;
  for (let k = from; k <= to; k++) {
    const half = Math.min(span / 2, seconds[k]! - seconds[from]!, seconds[to]! - seconds[k]!);
    while (high <= to && seconds[high]! <= seconds[k]! + half) sum += s[high++]!;
    while (low < k && seconds[low]! < seconds[k]! - half) sum -= s[low++]!;
    mean[k] = sum / (high - low);
  }
  return mean;
}
