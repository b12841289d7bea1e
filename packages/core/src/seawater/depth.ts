import { requireRows } from "./column.ts";
import { depthFromWork, gravityAtDepth, surfaceGravity } from "./gravity.ts";
import { polynomial6 } from "./polynomial.ts";
import { STANDARD_OCEAN_SALINITY } from "./reference-salinity.ts";
import { fillPressureSeries, PRESSURE_TERMS, PRESSURE_UNIT } from "./specific-volume.ts";
import type { ValidityRange } from "./validity-range.ts";

export const depthFromPressureRange: ValidityRange = { p: [0, 10_000], lat: [-90, 90] };
export const pressureFromDepthRange: ValidityRange = { depth: [0, 10_000], lat: [-90, 90] };

const volume = new Float64Array(PRESSURE_TERMS);
fillPressureSeries(STANDARD_OCEAN_SALINITY, 0, volume);
// its integral over pressure, over q; 1e8 Pa in the unit of pressure
const work = volume.map((w, k) => (w * 1e8) / (k + 1));
const workAt = (q: number): number => q * polynomial6(work, q);

/**
 * Depth from sea pressure, TEOS-10, for a standard ocean (SA = 35.16504 g kg-1, CT = 0).
 *
 * In brackish water the true depth is larger, by up to 3 % in fresh water: `depthFromDensityColumn` integrates
 * the measured density. Not for navigation or diving: local authority and licensed practice decide there.
 *
 * @param p   sea pressure, dbar, 0 at the surface, 0 to 10 000
 * @param lat latitude, degrees north, -90 to 90
 * @returns   depth, m, positive down; negative above the surface; computed beyond the range; NaN if an input is
 *            NaN
 * @source    IOC, SCOR and IAPSO (2010), TEOS-10 manual, section 3.32 and appendix D; check values from the
 *            TEOS-10 library stand in the tests
 */
export function depthFromPressure(p: number, lat: number): number {
  return depthFromWork(workAt(p / PRESSURE_UNIT), surfaceGravity(lat));
}

/** Column twin of {@link depthFromPressure}: fills `out`. */
export function depthFromPressureColumn(p: Float64Array, lat: number, out: Float64Array): void {
  requireRows(out, p);
  const gravity = surfaceGravity(lat);
  for (let i = 0; i < out.length; i++) {
    out[i] = depthFromWork(workAt(p[i]! / PRESSURE_UNIT), gravity);
  }
}

/**
 * Sea pressure from depth: the inverse of `depthFromPressure`.
 *
 * @param depth depth, m, positive down, 0 to 10 000
 * @param lat   latitude, degrees north, -90 to 90
 * @returns     sea pressure, dbar; computed beyond the range; NaN if an input is NaN
 * @source      inverse of `depthFromPressure`, by Newton's method
 */
export function pressureFromDepth(depth: number, lat: number): number {
  return pressureAt(depth, surfaceGravity(lat));
}

function pressureAt(depth: number, gravity: number): number {
  let p = depth;
  for (let step = 0; step < 5; step++) {
    const q = p / PRESSURE_UNIT;
    const z = depthFromWork(workAt(q), gravity);
    // hydrostatic slope dz/dp in m dbar-1
    p -= (z - depth) / ((1e4 * polynomial6(volume, q)) / gravityAtDepth(z, gravity));
  }
  return p;
}

/** Column twin of {@link pressureFromDepth}: fills `out`. */
export function pressureFromDepthColumn(depth: Float64Array, lat: number, out: Float64Array): void {
  requireRows(out, depth);
  const gravity = surfaceGravity(lat);
  for (let i = 0; i < out.length; i++) out[i] = pressureAt(depth[i]!, gravity);
}
