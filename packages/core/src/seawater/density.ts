import { requireRows } from "./column.ts";
import { columnKernel } from "./column-kernel.ts";
import { polynomial6 } from "./polynomial.ts";
import { simdTwins } from "./simd-twins.generated.ts";
import { fillPressureSeries, PRESSURE_TERMS, PRESSURE_UNIT } from "./specific-volume.ts";
import type { ValidityRange } from "./validity-range.ts";

/** For p below 500 dbar; deeper the fitted range narrows to oceanic water. */
export const densityRange: ValidityRange = { SA: [0, 42], CT: [-2, 40], p: [0, 8_000] };
export const sigma0Range: ValidityRange = { SA: [0, 42], CT: [-2, 40] };

const series = new Float64Array(PRESSURE_TERMS);
const kernel = columnKernel(simdTwins.density);

/**
 * Density of sea water, TEOS-10, 75-term polynomial.
 *
 * @param SA Absolute Salinity, g kg-1, 0 to 42
 * @param CT Conservative Temperature, degree Celsius, from the freezing point on
 * @param p  sea pressure, dbar, 0 to 8000
 * @returns  density in place, kg m-3; computed beyond the range; NaN if an input is NaN. In water thinned by
 *           rivers it is typically too low by 0.02 to 0.3 (Pawlowicz 2015), as river salts conduct less.
 * @source   Roquet, Madec, McDougall and Barker (2015), Ocean Modelling 90, 29-43; check values from the TEOS-10
 *           library stand in the tests
 */
export function density(SA: number, CT: number, p: number): number {
  fillPressureSeries(SA, CT, series);
  return 1 / polynomial6(series, p / PRESSURE_UNIT);
}

/** Column twin of {@link density}: fills `out`. */
export function densityColumn(SA: Float64Array, CT: Float64Array, p: Float64Array, out: Float64Array): void {
  requireRows(out, SA, CT, p);
  if (kernel(SA, CT, p, out)) return;
  for (let i = 0; i < out.length; i++) out[i] = density(SA[i]!, CT[i]!, p[i]!);
}

/**
 * Potential density anomaly with the reference pressure 0 dbar, TEOS-10.
 *
 * @param SA Absolute Salinity, g kg-1, 0 to 42
 * @param CT Conservative Temperature, degree Celsius, from the freezing point on
 * @returns  density at 0 dbar less 1000 kg m-3; computed beyond the range; NaN if an input is NaN
 * @source   Roquet, Madec, McDougall and Barker (2015), Ocean Modelling 90, 29-43
 */
export function sigma0(SA: number, CT: number): number {
  return density(SA, CT, 0) - 1000;
}

/** Column twin of {@link sigma0}: fills `out`. */
export function sigma0Column(SA: Float64Array, CT: Float64Array, out: Float64Array): void {
  requireRows(out, SA, CT);
  for (let i = 0; i < out.length; i++) out[i] = sigma0(SA[i]!, CT[i]!);
}
