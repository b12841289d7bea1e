import { Flag } from "./flag.ts";
import { flagsFor } from "./flags-of-test.ts";

/** How far two neighbouring profiles may differ in a range of pressure. */
export interface NeighbourLayer {
  /** dbar: from the first (included) to the second (not included). */
  readonly pressureRange: readonly [number, number];
  readonly largestDifference: number;
}

/**
 * Neighbour: a profile against an earlier one of the same place, at equal pressure (linear between its levels).
 *
 * @param former pressure in dbar, increasing, and values of the earlier profile; missing is NaN
 * @returns 1; 3; 2 where the earlier profile or the table does not reach; 9 missing
 * @source QARTOD glider test 12 (doi 10.25607/OBP-1465), never 4
 */
export function neighbour(
  values: Float64Array,
  pressure: Float64Array,
  former: { readonly pressure: Float64Array; readonly values: Float64Array },
  layers: readonly NeighbourLayer[],
): Uint8Array {
  const flags = flagsFor(values, Flag.notEvaluated);
  for (let k = 0; k < values.length; k++) {
    const p = pressure[k]!;
    const limit = layers.find(({ pressureRange: [low, high] }) => p >= low && p < high)?.largestDifference;
    const off = Math.abs(values[k]! - valueAt(former.pressure, former.values, p));
    if (limit === undefined || Number.isNaN(off)) continue;
    flags[k] = off > limit ? Flag.questionable : Flag.good;
  }
  return flags;
}

/** Linear between the levels on both sides; NaN outside and where one of them is missing. */
function valueAt(pressure: Float64Array, values: Float64Array, p: number): number {
  let low = 0;
  let high = pressure.length - 1;
  if (!(p >= pressure[low]! && p <= pressure[high]!)) return Number.NaN;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (pressure[middle]! <= p) low = middle;
    else high = middle;
  }
  const span = pressure[high]! - pressure[low]!;
  if (span === 0 || p === pressure[low]!) return values[low]!;
  return values[low]! + ((p - pressure[low]!) / span) * (values[high]! - values[low]!);
}
