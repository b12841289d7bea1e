import { requireRows } from "./column.ts";
import type { ValidityRange } from "./validity-range.ts";

export const depthFromPressureUnescoRange: ValidityRange = { p: [0, 10_000], lat: [-90, 90] };

/**
 * Depth from sea pressure for the EOS-80 standard ocean (S = 35, t = 0 degrees).
 *
 * For comparison with older data; `depthFromPressure` is the default. Not for navigation or diving: local
 * authority and licensed practice decide there.
 *
 * @param p   sea pressure, dbar, 0 at the surface, 0 to 10 000
 * @param lat latitude, degrees north, -90 to 90
 * @returns   depth, m, positive down; computed beyond the range; NaN if an input is NaN
 * @source    Fofonoff and Millard (1983), UNESCO Technical Papers in Marine Science 44, equation (25), page 26;
 *            check value 9712.653 m at 10 000 dbar, 30 degrees north
 */
export function depthFromPressureUnesco(p: number, lat: number): number {
  return depthAt(p, gravityOf1980(lat));
}

function gravityOf1980(lat: number): number {
  const s2 = Math.sin((lat * Math.PI) / 180) ** 2;
  return 9.780318 * (1 + (5.2788e-3 + 2.36e-5 * s2) * s2);
}

// the last term is the change of gravity over the water column itself
const depthAt = (p: number, gravity: number): number =>
  (p * (9.72659 + p * (-2.2512e-5 + p * (2.279e-10 + p * -1.82e-15)))) / (gravity + 1.092e-6 * p);

/** Column twin of {@link depthFromPressureUnesco}: fills `out`. */
export function depthFromPressureUnescoColumn(p: Float64Array, lat: number, out: Float64Array): void {
  requireRows(out, p);
  const gravity = gravityOf1980(lat);
  for (let i = 0; i < out.length; i++) out[i] = depthAt(p[i]!, gravity);
}
