import { requireRows } from "./column.ts";
import { columnKernel } from "./column-kernel.ts";
import { polynomial6, polynomialSlope6 } from "./polynomial.ts";
import { simdTwins } from "./simd-twins.generated.ts";
import { fillPressureSeries, PRESSURE_TERMS, PRESSURE_UNIT } from "./specific-volume.ts";
import type { ValidityRange } from "./validity-range.ts";

/** For p below 500 dbar; deeper the fitted range narrows to oceanic water. */
export const soundSpeedRange: ValidityRange = { SA: [0, 42], CT: [-2, 40], p: [0, 8_000] };

const series = new Float64Array(PRESSURE_TERMS);
const kernel = columnKernel(simdTwins.soundSpeed);

/**
 * Speed of sound in sea water, TEOS-10, from the 75-term polynomial of specific volume.
 *
 * Not for navigation or diving: the hydrographic authority and licensed practice decide there.
 *
 * @param SA Absolute Salinity, g kg-1, 0 to 42
 * @param CT Conservative Temperature, degree Celsius, from the freezing point on
 * @param p  sea pressure, dbar, 0 to 8000
 * @returns  speed of sound, m s-1; computed beyond the range; NaN if an input is NaN. Within 0.16 m s-1 of the
 *           exact Gibbs function for -1 to 35 degrees and p up to 500 dbar.
 * @source   Roquet, Madec, McDougall and Barker (2015), Ocean Modelling 90, 29-43; check values from the TEOS-10
 *           library stand in the tests
 */
export function soundSpeed(SA: number, CT: number, p: number): number {
  fillPressureSeries(SA, CT, series);
  const q = p / PRESSURE_UNIT;
  const v = polynomial6(series, q);
  // 10 000 is the root of the pressure unit in pascal, 1e8
  return PRESSURE_UNIT * Math.sqrt((-v * v) / polynomialSlope6(series, q));
}

/** Column twin of {@link soundSpeed}: fills `out`. */
export function soundSpeedColumn(
  SA: Float64Array,
  CT: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  requireRows(out, SA, CT, p);
  if (kernel(SA, CT, p, out)) return;
  for (let i = 0; i < out.length; i++) out[i] = soundSpeed(SA[i]!, CT[i]!, p[i]!);
}
