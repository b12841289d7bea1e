import { requireRows } from "./column.ts";
import { depthFromWork, surfaceGravity } from "./gravity.ts";
import type { ValidityRange } from "./validity-range.ts";

export const depthFromDensityRange: ValidityRange = { p: [0, 10_000], lat: [-90, 90] };

/** Pascal per dbar. */
const PASCAL = 1e4;

/**
 * Depth from sea pressure by the measured density, for brackish water.
 *
 * Integrates dz = dp / (rho g) from the surface down over the rows in order of pressure, by the trapezoidal rule
 * in specific volume; gravity grows with depth. Rows of both directions may be given: the depth at a pressure
 * then follows all water measured about it. The water above the shallowest row with a density is taken to be
 * like that row, the water below the deepest like the deepest. Not for navigation or diving: local authority and
 * licensed practice decide there.
 *
 * @param p   sea pressure, dbar, 0 at the surface, in any order
 * @param rho density in place, kg m-3; NaN where it must not count (air, bad rows): the row still gets a depth
 * @param lat latitude, degrees north, -90 to 90
 * @param out filled with the depth, m, positive down, negative above the surface; NaN where p is NaN, and
 *            everywhere if no row has both numbers or lat is NaN
 * @source    hydrostatic equation with the gravity of the TEOS-10 manual (2010), appendix D; with the density of
 *            the standard ocean it equals `depthFromPressure`
 */
export function depthFromDensityColumn(
  p: Float64Array,
  rho: Float64Array,
  lat: number,
  out: Float64Array,
): void {
  requireRows(out, p, rho);
  out.fill(Number.NaN);
  const rows: number[] = [];
  for (let row = 0; row < p.length; row++) if (!Number.isNaN(p[row]!)) rows.push(row);
  // a plain array is sorted by its runs, of which a cast has two; equal pressures stay in order
  rows.sort((a, b) => p[a]! - p[b]!);
  const first = rows.find((row) => !Number.isNaN(rho[row]!));
  if (first === undefined) return;
  const gravity = surfaceGravity(lat);

  // `level` is the deepest row with a density so far, `h` the work from the surface to it
  let level = first;
  let h = (PASCAL * p[first]!) / rho[first]!;
  let above = 0;
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i]!;
    if (Number.isNaN(rho[row]!)) continue;
    const step = (PASCAL * (p[row]! - p[level]!) * (1 / rho[level]! + 1 / rho[row]!)) / 2;
    // rows without a density in between lie on the straight line from level to level
    for (; above < i; above++) {
      const between = rows[above]!;
      out[between] = depthFromWork(h + partOfStep(p, between, level, row, rho, step), gravity);
    }
    h += step;
    level = row;
    out[row] = depthFromWork(h, gravity);
    above = i + 1;
  }
  for (; above < rows.length; above++) {
    const row = rows[above]!;
    out[row] = depthFromWork(h + (PASCAL * (p[row]! - p[level]!)) / rho[level]!, gravity);
  }
}

/** Work from `level` to a row between it and `next`, or above the first level. */
function partOfStep(
  p: Float64Array,
  row: number,
  level: number,
  next: number,
  rho: Float64Array,
  step: number,
): number {
  const gap = p[next]! - p[level]!;
  const part = p[row]! - p[level]!;
  return gap > 0 ? (step * part) / gap : (PASCAL * part) / rho[level]!;
}
