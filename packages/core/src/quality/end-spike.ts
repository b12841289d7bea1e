import { Flag } from "./flag.ts";
import { flagsFor, type Worst } from "./flags-of-test.ts";

/**
 * Spike at the top or the bottom: the first and the last value against their only neighbour.
 *
 * @param limit in the unit of the values
 * @returns 1 or 4 (or `worst`) for the first and the last row; 2 for all others and beside a missing value; 9 missing
 * @source GTSPP test 2.8 (IOC Manuals and Guides 22); Argo test 10, obsolete
 */
export function endSpike(values: Float64Array, limit: number, worst: Worst = 4): Uint8Array {
  const flags = flagsFor(values, Flag.notEvaluated);
  const judge = (own: number, neighbour: number) => {
    const off = Math.abs(values[own]! - values[neighbour]!);
    if (!Number.isNaN(off)) flags[own] = off > limit ? worst : Flag.good;
  };
  if (values.length > 1) {
    judge(0, 1);
    judge(values.length - 1, values.length - 2);
  }
  return flags;
}
