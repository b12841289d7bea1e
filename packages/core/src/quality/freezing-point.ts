import { freezingTemperature } from "../seawater/freezing-temperature.ts";
import { referenceSalinity } from "../seawater/reference-salinity.ts";
import { Flag } from "./flag.ts";
import { flagsFor } from "./flags-of-test.ts";

/**
 * Water colder than its freezing point (air-saturated, Reference Salinity).
 *
 * @param temperature deg C ITS-90; salinity practical; pressure dbar; one per row
 * @param tolerance   deg C
 * @returns 1; 3; 2 where salinity or pressure is missing; 9 where temperature is missing
 * @source GTSPP test 2.6 (IOC Manuals and Guides 22); freezing by TEOS-10; tolerance: house
 */
export function freezingPoint(
  temperature: Float64Array,
  salinity: Float64Array,
  pressure: Float64Array,
  tolerance: number,
): Uint8Array {
  const flags = flagsFor(temperature, Flag.notEvaluated);
  for (let k = 0; k < temperature.length; k++) {
    const t = temperature[k]!;
    // no water freezes above 1 deg C: spares the polynomial for most rows
    if (t > 1 && salinity[k]! >= 0 && pressure[k]! >= 0) {
      flags[k] = Flag.good;
      continue;
    }
    const limit = freezingTemperature(referenceSalinity(salinity[k]!), pressure[k]!, 1) - tolerance;
    if (!Number.isNaN(t) && !Number.isNaN(limit)) flags[k] = t < limit ? Flag.questionable : Flag.good;
  }
  return flags;
}
