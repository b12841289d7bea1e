import { Flag } from "./flag.ts";
import { flagsFor } from "./flags-of-test.ts";

/**
 * Pressure beyond what the instrument is rated for: 3. It is not passed on to computed quantities and keeps no
 * row out of a layer mean: the water was sampled, the pressure reading is less certain.
 *
 * @param pressure      sea pressure, dbar
 * @param ratedPressure dbar
 * @returns 1, 3, 9 missing
 * @source Argo test 19 in intent; the flag and the missing margin: house
 */
export function ratedPressureTest(pressure: Float64Array, ratedPressure: number): Uint8Array {
  const flags = flagsFor(pressure, Flag.good);
  for (let k = 0; k < pressure.length; k++) if (pressure[k]! > ratedPressure) flags[k] = Flag.questionable;
  return flags;
}
