import { Flag } from "./flag.ts";
import { flagsFor } from "./flags-of-test.ts";
import { windowDeviation } from "./rate-of-change.ts";

export interface MultivariateLimits {
  /** Multiple of its standard deviation by which the judged quantity steps … */
  readonly deviations: number;
  /** … while the other one steps by less than this multiple of its own. */
  readonly otherDeviations: number;
  /** Rows before the judged one from which the standard deviations are taken. */
  readonly windowRows: number;
}

/**
 * Multivariate: a step of one quantity that another, which should follow, does not share.
 *
 * @param values the judged quantity
 * @param other  the quantity that should step with it
 * @returns 1; 3; 2 for the first row, beside missing values and with fewer than 3 in a window; 9 missing
 * @source QARTOD test 9 (doi 10.25923/x02m-m555), never 4
 */
export function multivariate(
  values: Float64Array,
  other: Float64Array,
  { deviations, otherDeviations, windowRows }: MultivariateLimits,
): Uint8Array {
  const flags = flagsFor(values, Flag.notEvaluated);
  const own = windowDeviation(values, windowRows);
  const others = windowDeviation(other, windowRows);
  for (let k = 1; k < values.length; k++) {
    const step = Math.abs(values[k]! - values[k - 1]!);
    const otherStep = Math.abs(other[k]! - other[k - 1]!);
    if (Number.isNaN(step + otherStep + own[k]! + others[k]!)) continue;
    const alone = step > deviations * own[k]! && otherStep < otherDeviations * others[k]!;
    flags[k] = alone ? Flag.questionable : Flag.good;
  }
  return flags;
}
