import { requireRows } from "./column.ts";
import type { ValidityRange } from "./validity-range.ts";

export const pressureFromDepthSaundersRange: ValidityRange = { depth: [0, 7500], lat: [-90, 90] };

/**
 * Sea pressure from depth by Saunders' short formula, as older data used it; `pressureFromDepth` is the default. Not
 * for navigation or diving: local authority and licensed practice decide there.
 *
 * @param depth m, positive down, 0 to 7500
 * @param lat   latitude, degrees north, -90 to 90
 * @returns     sea pressure, dbar; computed beyond the range where the root exists; NaN if an input is NaN
 * @source      Saunders (1981), Journal of Physical Oceanography 11, 573-574; check value 7500 dbar at 7321.45 m, 30
 *              degrees north
 */
export function pressureFromDepthSaunders(depth: number, lat: number): number {
  const one = 1 - (5.92 + 5.25 * Math.sin((lat * Math.PI) / 180) ** 2) * 1e-3;
  return (one - Math.sqrt(one ** 2 - 8.84e-6 * depth)) / 4.42e-6;
}

/** Column twin of {@link pressureFromDepthSaunders}: fills `out`. */
export function pressureFromDepthSaundersColumn(depth: Float64Array, lat: number, out: Float64Array): void {
  requireRows(out, depth);
  for (let i = 0; i < out.length; i++) out[i] = pressureFromDepthSaunders(depth[i]!, lat);
}
