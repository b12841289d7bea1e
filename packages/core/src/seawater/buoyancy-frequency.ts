import { requireRows } from "./column.ts";
import { density } from "./density.ts";
import { depthFromPressure } from "./depth.ts";
import { gravityAtDepth, surfaceGravity } from "./gravity.ts";
import { halineContraction } from "./haline-contraction.ts";
import { thermalExpansion } from "./thermal-expansion.ts";
import type { ValidityRange } from "./validity-range.ts";

export const buoyancyFrequencySquaredRange: ValidityRange = {
  SA: [0, 42],
  CT: [-2, 40],
  p: [0, 8_000],
  lat: [-90, 90],
};

/**
 * Square of the buoyancy (Brunt-Vaisala) frequency between neighbouring levels, TEOS-10.
 *
 * Meant for levels already averaged: in raw rows it is noise. Negative values are data, not errors.
 *
 * @param SA  Absolute Salinity, g kg-1, one per level
 * @param CT  Conservative Temperature, degree Celsius, one per level
 * @param p   sea pressure, dbar, one per level, growing
 * @param lat latitude, degrees north, -90 to 90
 * @returns   n2, s-2, and pMid, dbar, the pressure halfway; both one shorter than the inputs (empty for fewer than
 *            two levels). n2 is NaN where pressure does not grow or an input is NaN
 * @source    IOC, SCOR and IAPSO (2010), TEOS-10 manual, section 3.10: coefficients at the mean of both levels,
 *            gravity the mean of both levels' (a constant 9.7963 m s-2 elsewhere differs by 0.2 %)
 */
export function buoyancyFrequencySquared(
  SA: Float64Array,
  CT: Float64Array,
  p: Float64Array,
  lat: number,
): { n2: Float64Array; pMid: Float64Array } {
  const length = Math.max(0, SA.length - 1);
  const n2 = new Float64Array(length);
  const pMid = new Float64Array(length);
  buoyancyFrequencySquaredColumn(SA, CT, p, lat, n2, pMid);
  return { n2, pMid };
}

/** Fills `n2` and `pMid`, each one shorter than the inputs, as {@link buoyancyFrequencySquared} has it. */
export function buoyancyFrequencySquaredColumn(
  SA: Float64Array,
  CT: Float64Array,
  p: Float64Array,
  lat: number,
  n2: Float64Array,
  pMid: Float64Array,
): void {
  requireRows(SA, CT, p);
  if (n2.length !== Math.max(0, SA.length - 1) || pMid.length !== n2.length) {
    throw new RangeError(`n2 and pMid have ${n2.length} and ${pMid.length} rows, for ${SA.length} levels`);
  }
  const atSurface = surfaceGravity(lat);
  const gravity = (pressure: number) => gravityAtDepth(depthFromPressure(pressure, lat), atSurface);
  for (let i = 0; i < n2.length; i++) {
    const dp = p[i + 1]! - p[i]!;
    const salinity = (SA[i]! + SA[i + 1]!) / 2;
    const temperature = (CT[i]! + CT[i + 1]!) / 2;
    const pressure = (p[i]! + p[i + 1]!) / 2;
    const g = (gravity(p[i]!) + gravity(p[i + 1]!)) / 2;
    const change =
      halineContraction(salinity, temperature, pressure) * (SA[i + 1]! - SA[i]!) -
      thermalExpansion(salinity, temperature, pressure) * (CT[i + 1]! - CT[i]!);
    pMid[i] = pressure;
    n2[i] = dp > 0 ? (g * g * density(salinity, temperature, pressure) * change) / (1e4 * dp) : Number.NaN;
  }
}
