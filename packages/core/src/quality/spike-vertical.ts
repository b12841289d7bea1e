import { Flag } from "./flag.ts";
import { flagsFor, type Worst } from "./flags-of-test.ts";

export interface SpikeVerticalLimits {
  /** Limit above 500 dbar, in the unit of the values. */
  readonly shallowLimit: number;
  /** Limit from 500 dbar down. */
  readonly deepLimit: number;
  readonly worst?: Worst;
}

/**
 * Gradient-corrected spike test over three levels: |V2 - (V3+V1)/2| - |(V3-V1)/2| above the limit.
 *
 * @param pressure dbar, one per row
 * @returns 1, 4 (or `worst`), 2 at both ends and beside missing values, 9 missing
 * @source GTSPP test 2.7 (IOC Manuals and Guides 22), Argo test 9
 */
export function spikeVertical(
  values: Float64Array,
  pressure: Float64Array,
  { shallowLimit, deepLimit, worst = 4 }: SpikeVerticalLimits,
): Uint8Array {
  const flags = flagsFor(values, Flag.notEvaluated);
  for (let k = 1; k + 1 < values.length; k++) {
    const above = values[k - 1]!;
    const own = values[k]!;
    const below = values[k + 1]!;
    const bend = Math.abs(own - (below + above) / 2) - Math.abs((below - above) / 2);
    if (Number.isNaN(bend)) continue;
    flags[k] = bend > (pressure[k]! < 500 ? shallowLimit : deepLimit) ? worst : Flag.good;
  }
  return flags;
}
