import { requireRows } from "./column.ts";
import { conductivityFromSalinity } from "./conductivity-from-salinity.ts";
import { practicalSalinity } from "./practical-salinity.ts";
import type { ValidityRange } from "./validity-range.ts";

export const specificConductance25Range: ValidityRange = { t: [0, 40] };
export const specificConductance25Pss78Range: ValidityRange = { SP: [0, 42], t: [-2, 35], p: [0, 10_000] };

/**
 * Specific conductance at 25 degrees by the linear rule of field practice, C / (1 + 0.0191 (t - 25)).
 *
 * Right within a few parts in a thousand for dilute water; in sea water up to 2 % off, where
 * `specificConductance25Pss78` is the better choice. The rule used belongs beside the number.
 *
 * @param C conductivity in place, mS cm-1
 * @param t temperature, degree Celsius, ITS-90, 0 to 40
 * @returns conductivity at 25 degrees, mS cm-1; computed beyond the range; NaN if an input is NaN
 * @source  common practice for natural water; measured coefficients in Hayashi (2004), Environ. Monit. Assess.
 *          96, 119-128: 0.0175 to 0.0198. At 25 degrees it is C by definition
 */
export function specificConductance25(C: number, t: number): number {
  return C / (1 + 0.0191 * (t - 25));
}

/** Column twin of {@link specificConductance25}: fills `out`. */
export function specificConductance25Column(C: Float64Array, t: Float64Array, out: Float64Array): void {
  requireRows(out, C, t);
  for (let i = 0; i < out.length; i++) out[i] = specificConductance25(C[i]!, t[i]!);
}

/**
 * Specific conductance at 25 degrees and 0 dbar by way of Practical Salinity: exact for diluted sea water.
 *
 * @param C conductivity in place, mS cm-1
 * @param t temperature, degree Celsius, ITS-90, -2 to 35
 * @param p sea pressure, dbar, 0 at the surface
 * @returns conductivity of the same water at 25 degrees and 0 dbar, mS cm-1; NaN where the salinity is negative
 *          or an input is NaN
 * @source  Fofonoff and Millard (1983), UNESCO Technical Papers in Marine Science 44, with the low-salinity form
 *          of `practicalSalinity`
 */
export function specificConductance25Pss78(C: number, t: number, p: number): number {
  return conductivityFromSalinity(practicalSalinity(C, t, p), 25, 0);
}

/** Column twin of {@link specificConductance25Pss78}: fills `out`. */
export function specificConductance25Pss78Column(
  C: Float64Array,
  t: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  requireRows(out, C, t, p);
  for (let i = 0; i < out.length; i++) out[i] = specificConductance25Pss78(C[i]!, t[i]!, p[i]!);
}
