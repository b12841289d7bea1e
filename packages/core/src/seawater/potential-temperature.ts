import { requireRows } from "./column.ts";
import { fillEntropyCoefficients } from "./entropy.ts";
import { polynomial6, polynomialSlope6 } from "./polynomial.ts";
import type { ValidityRange } from "./validity-range.ts";

export const potentialTemperature0Range: ValidityRange = { SA: [0, 42], t: [-2, 40], p: [0, 10_000] };

/** Newton's steps are over when one changes t / 40 by less: the error left is the square of it. */
const SMALL = 1e-6;

const atSurface = new Float64Array(7);
const byPressure = new Float64Array(7);

/**
 * Potential temperature with the reference pressure 0 dbar.
 *
 * @param SA Absolute Salinity, g kg-1, 0 to 42
 * @param t  temperature in place, degree Celsius, ITS-90, freezing point to 40
 * @param p  sea pressure, dbar, 0 to 10 000
 * @returns  potential temperature, degree Celsius, ITS-90; computed beyond the range; NaN if SA is negative or an
 *           input is NaN
 * @source   IOC, SCOR and IAPSO (2010), TEOS-10 manual, section 3.1 and appendix H (equal entropy); solved by
 *           Newton's method. Check value of the TEOS-10 toolbox:
 *           SA 34.537494144, t 27.774, p 50 gives 27.762302528
 */
export function potentialTemperature0(SA: number, t: number, p: number): number {
  const z = p / 10_000;
  fillEntropyCoefficients(SA, z, atSurface, byPressure);
  let y = t / 40;
  const entropy = polynomial6(atSurface, y) + z * polynomial6(byPressure, y);
  // within the range two or three steps are enough
  for (let step = 0; step < 5; step++) {
    const change = (polynomial6(atSurface, y) - entropy) / polynomialSlope6(atSurface, y);
    y -= change;
    if (Math.abs(change) < SMALL) break;
  }
  return y * 40;
}

/** Temperature in place from potential temperature: the inverse of {@link potentialTemperature0}. */
export function temperatureFromPotential0(SA: number, pt0: number, p: number): number {
  const z = p / 10_000;
  fillEntropyCoefficients(SA, z, atSurface, byPressure);
  let y = pt0 / 40;
  const entropy = polynomial6(atSurface, y);
  for (let step = 0; step < 5; step++) {
    const change =
      (polynomial6(atSurface, y) + z * polynomial6(byPressure, y) - entropy) /
      (polynomialSlope6(atSurface, y) + z * polynomialSlope6(byPressure, y));
    y -= change;
    if (Math.abs(change) < SMALL) break;
  }
  return y * 40;
}

/** Column twin of {@link potentialTemperature0}: fills `out`. */
export function potentialTemperature0Column(
  SA: Float64Array,
  t: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  requireRows(out, SA, t, p);
  for (let i = 0; i < out.length; i++) out[i] = potentialTemperature0(SA[i]!, t[i]!, p[i]!);
}
