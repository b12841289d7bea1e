import { requireRows } from "./column.ts";
import { SALINITY_FACTOR } from "./entropy.ts";
import { polynomial7, polynomialSlope7 } from "./polynomial.ts";
import { potentialTemperature0, temperatureFromPotential0 } from "./potential-temperature.ts";
import type { ValidityRange } from "./validity-range.ts";

/** The heat capacity that defines Conservative Temperature, J kg-1 K-1. */
const CP0 = 3991.86795711963;

/** Newton's steps are over when one changes pt0 / 40 by less: the error left is the square of it. */
const SMALL = 1e-6;

export const conservativeTemperatureRange: ValidityRange = { SA: [0, 42], t: [-2, 40], p: [0, 10_000] };
export const temperatureFromConservativeRange: ValidityRange = { SA: [0, 42], CT: [-2, 40], p: [0, 10_000] };

const enthalpy = new Float64Array(8);

/**
 * Conservative Temperature from the temperature in place.
 *
 * @param SA Absolute Salinity, g kg-1, 0 to 42
 * @param t  temperature in place, degree Celsius, ITS-90, freezing point to 40
 * @param p  sea pressure, dbar, 0 to 10 000
 * @returns  Conservative Temperature, degree Celsius; computed beyond the range; NaN if SA is negative or an
 *           input is NaN
 * @source   IOC, SCOR and IAPSO (2010), TEOS-10 manual, section 3.3: potential enthalpy over cp0 =
 *           3991.86795711963 J kg-1 K-1. By that definition SA 35.16504 at 0 degrees and 0 dbar gives 0 to 1e-7
 */
export function conservativeTemperature(SA: number, t: number, p: number): number {
  const pt0 = potentialTemperature0(SA, t, p);
  fillEnthalpyCoefficients(SA);
  return polynomial7(enthalpy, pt0 / 40) / CP0;
}

/**
 * Temperature in place from Conservative Temperature.
 *
 * @param SA Absolute Salinity, g kg-1, 0 to 42
 * @param CT Conservative Temperature, degree Celsius
 * @param p  sea pressure, dbar, 0 to 10 000
 * @returns  temperature in place, degree Celsius, ITS-90; computed beyond the range; NaN if SA is negative or an
 *           input is NaN
 * @source   inverse of `conservativeTemperature`, by Newton's method
 */
export function temperatureFromConservative(SA: number, CT: number, p: number): number {
  fillEnthalpyCoefficients(SA);
  const target = CT * CP0;
  let y = CT / 40;
  for (let step = 0; step < 5; step++) {
    const change = (polynomial7(enthalpy, y) - target) / polynomialSlope7(enthalpy, y);
    y -= change;
    if (Math.abs(change) < SMALL) break;
  }
  return temperatureFromPotential0(SA, y * 40, p);
}

/** Potential enthalpy, J kg-1, as a polynomial in pt0 / 40 for one salinity. */
function fillEnthalpyCoefficients(SA: number): void {
  const c = enthalpy;
  const x2 = SALINITY_FACTOR * SA;
  const x = Math.sqrt(x2);
  c[0] =
    61.013624206810711 +
    x2 *
      (268.55202658450708 +
        x *
          (937.20991106207066 +
            x *
              (-1687.9143741874491 +
                x * (246.95988887813769 + x * (123.59576582457964 + x * -48.589106902540898)))));
  c[1] = 168776.46138048015 + x2 * (-12019.028203559312 + x * (588.18028121701082 + x * 936.32065444603359));
  c[2] = -2735.2785605119625 + x2 * (3734.858026725145 + x * (248.39476522971285 + x * -942.78273045444394));
  c[3] = 2574.2164453821433 + x2 * (-2046.7671145057618 + x * (-3.8715579049363331 + x * 369.43894375090019));
  c[4] =
    -1536.6644434977543 + x2 * (465.28655623826234 + x * (-2.6268019854268356 + x * -33.836649478952481));
  c[5] = 545.73404979316285 + x2 * (-0.63708203023763588 + x2 * -9.9878803827803218);
  c[6] = -50.910917284743313 + x2 * -10.650848542359153;
  c[7] = -18.30489878927802;
}

/** Column twin of {@link conservativeTemperature}: fills `out`. */
export function conservativeTemperatureColumn(
  SA: Float64Array,
  t: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  requireRows(out, SA, t, p);
  for (let i = 0; i < out.length; i++) out[i] = conservativeTemperature(SA[i]!, t[i]!, p[i]!);
}

/** Column twin of {@link temperatureFromConservative}: fills `out`. */
export function temperatureFromConservativeColumn(
  SA: Float64Array,
  CT: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  requireRows(out, SA, CT, p);
  for (let i = 0; i < out.length; i++) out[i] = temperatureFromConservative(SA[i]!, CT[i]!, p[i]!);
}
