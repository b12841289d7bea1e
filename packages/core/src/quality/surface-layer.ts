import { Flag } from "./flag.ts";
import { flagsFor } from "./flags-of-test.ts";

/**
 * The layer under the surface that the hull stirs, where the sensors may take in air.
 *
 * @param pressure dbar, one per row
 * @param limit    dbar; shallower rows are in the layer
 * @returns 1; 3 in the layer; 2 where pressure is missing; 9 missing
 * @source Argo tests 21 and 22, near-surface unpumped and mixed air and water (doi 10.13155/33951), from memory
 */
export function surfaceLayer(values: Float64Array, pressure: Float64Array, limit: number): Uint8Array {
  const flags = flagsFor(values, Flag.notEvaluated);
  for (let k = 0; k < values.length; k++) {
    if (Number.isNaN(values[k]! + pressure[k]!)) continue;
    flags[k] = pressure[k]! < limit ? Flag.questionable : Flag.good;
  }
  return flags;
}
