import { Flag } from "./flag.ts";
import { flagsFor, type Worst } from "./flags-of-test.ts";

export interface PressureIncreasingLimits {
  /** dbar that a row may lie above the deepest row so far; null for the published form (strictly increasing). */
  readonly tolerance: number | null;
  readonly worst?: Worst;
}

/**
 * Pressure must increase along a segment.
 *
 * Without a tolerance a row fails that does not exceed the largest earlier accepted pressure. With one, a row
 * fails that lies above the largest earlier pressure by more than the tolerance; equal pressures pass.
 *
 * @param pressure dbar, in the order in which the segment is judged
 * @returns 1, 4 (or `worst`), 9 missing
 * @source Argo test 8, QARTOD (doi 10.25607/OBP-1465) test 5; tolerance: house
 */
export function pressureIncreasing(
  pressure: Float64Array,
  { tolerance, worst = 4 }: PressureIncreasingLimits,
): Uint8Array {
  const flags = flagsFor(pressure, Flag.good);
  let largest = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < pressure.length; k++) {
    const p = pressure[k]!;
    if (Number.isNaN(p)) continue;
    if (tolerance === null ? p <= largest : p < largest - tolerance) flags[k] = worst;
    if (p > largest) largest = p;
  }
  return flags;
}
