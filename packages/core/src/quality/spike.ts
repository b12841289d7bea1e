import { Flag } from "./flag.ts";
import { flagsFor } from "./flags-of-test.ts";

export interface SpikeLimits {
  /** In the unit of the values. */
  readonly questionableAbove: number;
  /** Null for never. */
  readonly badAbove: number | null;
}

/**
 * Three-point spike test: the distance of a value from the mean of both neighbours. It sees curvature: half of a
 * spike's height lands on its neighbours, and the shoulders of a sharp layer are caught too.
 *
 * @returns 1, 3, 4; 2 at both ends and beside missing values; 9 missing
 * @source QARTOD test 6 (doi 10.25923/x02m-m555)
 */
export function spike(values: Float64Array, { questionableAbove, badAbove }: SpikeLimits): Uint8Array {
  const flags = flagsFor(values, Flag.notEvaluated);
  for (let k = 1; k + 1 < values.length; k++) {
    const off = Math.abs(values[k]! - (values[k - 1]! + values[k + 1]!) / 2);
    if (Number.isNaN(off)) continue;
    flags[k] =
      badAbove !== null && off > badAbove
        ? Flag.bad
        : off > questionableAbove
          ? Flag.questionable
          : Flag.good;
  }
  return flags;
}
