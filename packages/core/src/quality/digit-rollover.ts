import { Flag } from "./flag.ts";
import { flagsFor, type Worst } from "./flags-of-test.ts";

/**
 * Digit rollover: a step from the value before that only a counter which began again can make.
 *
 * @param limit in the unit of the values
 * @returns 1; 4 (or `worst`); 2 for the first row and after a missing value; 9 missing
 * @source Argo test 12 (doi 10.13155/33951)
 */
export function digitRollover(values: Float64Array, limit: number, worst: Worst = 4): Uint8Array {
  const flags = flagsFor(values, Flag.notEvaluated);
  for (let k = 1; k < values.length; k++) {
    const step = Math.abs(values[k]! - values[k - 1]!);
    if (!Number.isNaN(step)) flags[k] = step > limit ? worst : Flag.good;
  }
  return flags;
}
