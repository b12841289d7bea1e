import { requireRows } from "./column.ts";
import { fillEntropyCoefficients } from "./entropy.ts";
import { polynomial, polynomialSlope } from "./polynomial.ts";
import type { ValidityRange } from "./validity-range.ts";

export const potentialTemperature0Range: ValidityRange = { SA: [0, 42], t: [-2, 40], p: [0, 10_000] };

const inPlace = new Float64Array(7);
const atTarget = new Float64Array(7);

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
  return temperatureOfEqualEntropy(SA, t, p, 0);
}

/** Temperature that the water of (SA, t, p) takes on when moved to pressure `target` without exchange. */
export function temperatureOfEqualEntropy(SA: number, t: number, p: number, target: number): number {
  fillEntropyCoefficients(SA, p, inPlace);
  fillEntropyCoefficients(SA, target, atTarget);
  const entropy = polynomial(inPlace, t / 40);
  let y = t / 40;
  // three steps reach the last digit over the whole range; the fourth is for water far outside it
  for (let step = 0; step < 4; step++) {
    y -= (polynomial(atTarget, y) - entropy) / polynomialSlope(atTarget, y);
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
