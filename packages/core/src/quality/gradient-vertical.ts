import { Flag } from "./flag.ts";
import { flagsFor } from "./flags-of-test.ts";
import type { SpikeVerticalLimits } from "./spike-vertical.ts";

/**
 * Gradient test over three levels: |V2 - (V3+V1)/2| above the limit.
 *
 * @param pressure dbar, one per row
 * @returns 1, 4 (or `worst`), 2 at both ends and beside missing values, 9 missing
 * @source GTSPP test 2.9 (IOC Manuals and Guides 22); Argo test 11, obsolete since 2020
 */
export function gradientVertical(
  values: Float64Array,
  pressure: Float64Array,
  { shallowLimit, deepLimit, worst = 4 }: SpikeVerticalLimits,
): Uint8Array {
  const flags = flagsFor(values, Flag.notEvaluated);
  for (let k = 1; k + 1 < values.length; k++) {
    const off = Math.abs(values[k]! - (values[k - 1]! + values[k + 1]!) / 2);
    if (Number.isNaN(off)) continue;
    flags[k] = off > (pressure[k]! < 500 ? shallowLimit : deepLimit) ? worst : Flag.good;
  }
  return flags;
}
