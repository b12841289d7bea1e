import { requireRows } from "./column.ts";
import { temperatureFromConservative } from "./conservative-temperature.ts";
import { STANDARD_OCEAN_SALINITY } from "./reference-salinity.ts";
import type { ValidityRange } from "./validity-range.ts";

export const freezingTemperatureRange: ValidityRange = {
  SA: [0, 120],
  p: [0, 10_000],
  airSaturation: [0, 1],
};

/**
 * Temperature in place at which sea water freezes, TEOS-10, by the polynomial for Conservative Temperature.
 *
 * @param SA            Absolute Salinity, g kg-1, 0 to 120
 * @param p             sea pressure, dbar, 0 to 10 000
 * @param airSaturation share of saturation with dissolved air, 0 (none) to 1
 * @returns             temperature, degree Celsius, ITS-90; within 3e-4 of the exact form down to 6000 dbar;
 *                      computed beyond the range; NaN if SA is negative or an input is NaN
 * @source              IOC, SCOR and IAPSO (2010), TEOS-10 manual, section 3.33; coefficients of the TEOS-10
 *                      toolbox; check values from the TEOS-10 library stand in the tests
 */
export function freezingTemperature(SA: number, p: number, airSaturation: number): number {
  return temperatureFromConservative(SA, freezingConservativeTemperature(SA, p, airSaturation), p);
}

/** Conservative Temperature at the freezing point, degree Celsius; parameters as {@link freezingTemperature}. */
export function freezingConservativeTemperature(SA: number, p: number, airSaturation: number): number {
  const s = SA / 100;
  const x = Math.sqrt(s);
  const q = p / 10_000;
  const atSurface =
    0.017947064327968738 +
    s *
      (-6.076099099929818 +
        x *
          (4.883198653547851 +
            x *
              (-11.88081601230542 +
                x * (13.34658511480257 + x * (-8.722761043208607 + x * 2.082038908808201)))));
  const pressure = q * (-7.389420998107497 + q * (-2.110913185058476 + q * 0.2295491578006229));
  const both =
    s *
    q *
    (-0.9891538123307282 +
      q * (0.3831132432071728 + q * (-0.7997496801694032 + s * 0.1338002171109174)) +
      s * (1.054318231187074 - q * 2.078616693017569 - s * 2.079022768390933) +
      x *
        (-0.08987150128406496 +
          q * (1.065556599652796 + q * 0.8756340772729538) +
          s * (0.3850133554097069 + q * 1.596435439942262 + s * 1.242891021876471)));
  const air =
    airSaturation *
    1e-3 *
    (2.4 - 0.014289763856964 * SA) *
    (1 + 0.05700064989972 * (1 - SA / STANDARD_OCEAN_SALINITY));
  return atSurface + pressure + both - air;
}

/** Column twin of {@link freezingTemperature}: fills `out`; the share of saturation is one for all rows. */
export function freezingTemperatureColumn(
  SA: Float64Array,
  p: Float64Array,
  airSaturation: number,
  out: Float64Array,
): void {
  requireRows(out, SA, p);
  for (let i = 0; i < out.length; i++) out[i] = freezingTemperature(SA[i]!, p[i]!, airSaturation);
}
