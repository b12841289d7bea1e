import { Flag } from "./flag.ts";
import { flagsFor, type Worst } from "./flags-of-test.ts";

/**
 * All values of a profile equal.
 *
 * @returns 4 (or `worst`) for all rows, else 1; 2 with fewer than two values; 9 missing
 * @source Argo test 13, GTSPP test 2.5 (IOC Manuals and Guides 22)
 */
export function stuckValue(values: Float64Array, worst: Worst = 4): Uint8Array {
  let count = 0;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (Number.isNaN(value)) continue;
    count++;
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return flagsFor(values, count < 2 ? Flag.notEvaluated : low === high ? worst : Flag.good);
}
