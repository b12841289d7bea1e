import { requireRows } from "./column.ts";
import type { ValidityRange } from "./validity-range.ts";

// Saunders' factor, which TEOS-10 uses too
const RATIO = 1.00024;

export const temperatureScaleRange: ValidityRange = { t: [-2, 40] };

/**
 * Temperature on ITS-90 from a temperature on IPTS-68.
 *
 * @param t68 temperature, degree Celsius, IPTS-68; oceanographic range, -2 to 40
 * @returns   temperature, degree Celsius, ITS-90; computed outside the range too; NaN if the input is NaN
 * @source    Saunders (1990), WOCE Newsletter 10, t68 = 1.00024 t90; 20 on ITS-90 is 20.0048 on IPTS-68
 */
export function temperatureFrom68(t68: number): number {
  return t68 / RATIO;
}

/** Column twin of {@link temperatureFrom68}: fills `out`. */
export function temperatureFrom68Column(t68: Float64Array, out: Float64Array): void {
  requireRows(out, t68);
  for (let i = 0; i < out.length; i++) out[i] = temperatureFrom68(t68[i]!);
}

/**
 * Temperature on IPTS-68 from a temperature on ITS-90.
 *
 * @param t90 temperature, degree Celsius, ITS-90; oceanographic range, -2 to 40
 * @returns   temperature, degree Celsius, IPTS-68; computed outside the range too; NaN if the input is NaN
 * @source    Saunders (1990), WOCE Newsletter 10, t68 = 1.00024 t90; 20 on ITS-90 is 20.0048 on IPTS-68
 */
export function temperatureTo68(t90: number): number {
  return t90 * RATIO;
}

/** Column twin of {@link temperatureTo68}: fills `out`. */
export function temperatureTo68Column(t90: Float64Array, out: Float64Array): void {
  requireRows(out, t90);
  for (let i = 0; i < out.length; i++) out[i] = temperatureTo68(t90[i]!);
}
