import { requireRows } from "./column.ts";
import { depthFromPressure } from "./depth.ts";
import type { ValidityRange } from "./validity-range.ts";

export const depthUncertaintyRange: ValidityRange = { p: [0, 10_000], lat: [-90, 90] };

/**
 * Standard uncertainty of depth that comes from pressure, for the standard ocean of `depthFromPressure`.
 *
 * By the measured density of fresh water it is 3 % larger. How far the standard ocean itself is off (up to 3 % of
 * the depth in fresh water, which `depthFromDensityColumn` avoids) is not in it.
 *
 * @param p   sea pressure, dbar, 0 at the surface, 0 to 10 000
 * @param lat latitude, degrees north, -90 to 90
 * @param up  standard uncertainty of sea pressure, dbar, with that of the atmospheric offset
 * @returns   standard uncertainty, m; NaN if an input is NaN. Not for navigation or diving decisions
 * @source    JCGM 100:2008 (GUM), note to section 5.1.3; compared in the tests with random draws of the TEOS-10
 *            library
 */
export function depthUncertainty(p: number, lat: number, up: number): number {
  return Math.abs(depthFromPressure(p + up, lat) - depthFromPressure(p - up, lat)) / 2;
}

/** Column twin of {@link depthUncertainty}: fills `out`; latitude and the sensor's uncertainty hold for all rows. */
export function depthUncertaintyColumn(p: Float64Array, lat: number, up: number, out: Float64Array): void {
  requireRows(out, p);
  for (let i = 0; i < out.length; i++) out[i] = depthUncertainty(p[i]!, lat, up);
}
