import { Flag } from "./flag.ts";
import { flagsFor, type Worst } from "./flags-of-test.ts";

/**
 * Gaps and backward steps of time.
 *
 * @param time       seconds, one per row
 * @param longestGap seconds that may pass between two rows
 * @returns 1; 4 (or `worst`) where time does not advance or jumps; 2 for the first row and after a missing time;
 *          9 missing
 * @source QARTOD test 1 (doi 10.25607/OBP-1465)
 */
export function gap(time: Float64Array, longestGap: number, worst: Worst = 4): Uint8Array {
  const flags = flagsFor(time, Flag.notEvaluated);
  for (let k = 1; k < time.length; k++) {
    const passed = time[k]! - time[k - 1]!;
    if (!Number.isNaN(passed)) flags[k] = passed <= 0 || passed > longestGap ? worst : Flag.good;
  }
  return flags;
}
