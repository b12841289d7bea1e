import { conservativeTemperature } from "../seawater/conservative-temperature.ts";
import { sigma0 } from "../seawater/density.ts";
import { referenceSalinity } from "../seawater/reference-salinity.ts";
import { Flag } from "./flag.ts";
import type { Worst } from "./flags-of-test.ts";

/** Potential density anomaly at 0 dbar from Practical Salinity, without a position; kg m-3. */
export function potentialDensity(temperature: number, salinity: number, pressure: number): number {
  const SA = referenceSalinity(salinity);
  return sigma0(SA, conservativeTemperature(SA, temperature, pressure));
}

/**
 * Density inversion between consecutive levels: the deeper one lighter by more than the tolerance.
 *
 * @param temperature deg C ITS-90; salinity practical; pressure dbar; one per level, surface first
 * @param tolerance   kg m-3
 * @returns 1; 4 (or `worst`) on both levels of an inverted pair; 2 where an input is missing or no second level
 * @source QARTOD test 13, GTSPP test 2.10, Argo test 14, in Argo's sense
 */
export function densityInversion(
  temperature: Float64Array,
  salinity: Float64Array,
  pressure: Float64Array,
  tolerance: number,
  worst: Worst = 4,
): Uint8Array {
  const flags = new Uint8Array(temperature.length).fill(Flag.notEvaluated);
  let upper = -1;
  let upperDensity = Number.NaN;
  for (let k = 0; k < temperature.length; k++) {
    const density = potentialDensity(temperature[k]!, salinity[k]!, pressure[k]!);
    if (Number.isNaN(density)) continue;
    if (upper >= 0) {
      const inverted = upperDensity - density > tolerance;
      if (inverted || flags[upper] === Flag.notEvaluated) flags[upper] = inverted ? worst : Flag.good;
      flags[k] = inverted ? worst : Flag.good;
    }
    upper = k;
    upperDensity = density;
  }
  return flags;
}
