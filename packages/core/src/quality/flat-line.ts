import { Flag } from "./flag.ts";
import { flagsFor, type Worst } from "./flags-of-test.ts";

export interface FlatLineLimits {
  /** Repeats after which a value is bad; null for never. */
  readonly badAfter: number | null;
  /** Repeats after which a value is questionable. */
  readonly questionableAfter: number;
  /** Differences smaller than this count as a repeat. */
  readonly tolerance: number;
  readonly worst?: Worst;
}

/**
 * Flat line test: a value that does not differ from the last `questionableAfter` (or `badAfter`) values.
 *
 * @returns 1; 3 or 4; 2 for the first `questionableAfter` rows; 9 missing
 * @source QARTOD test 8 (doi 10.25923/x02m-m555)
 */
export function flatLine(
  values: Float64Array,
  { badAfter, questionableAfter, tolerance, worst = 4 }: FlatLineLimits,
): Uint8Array {
  const flags = flagsFor(values, Flag.notEvaluated);
  const farthest = Math.max(questionableAfter, badAfter ?? 0);
  for (let k = 0; k < values.length; k++) {
    if (flags[k] === Flag.missing) continue;
    let repeats = 0;
    // a missing value fails the comparison, as it must: it ends the run
    while (repeats < farthest && Math.abs(values[k]! - values[k - repeats - 1]!) < tolerance) repeats++;
    if (badAfter !== null && repeats >= badAfter) flags[k] = worst;
    else if (repeats >= questionableAfter) flags[k] = Flag.questionable;
    else if (k >= questionableAfter) flags[k] = Flag.good;
  }
  return flags;
}
