import { requireRows } from "./column.ts";
import { temperatureFrom68 } from "./temperature-scale.ts";
import type { ValidityRange } from "./validity-range.ts";

export const freezingTemperatureEos80Range: ValidityRange = { SP: [4, 40], p: [0, 500] };

/**
 * Temperature at which sea water saturated with air freezes, EOS-80: for comparison with older data.
 *
 * @param SP Practical Salinity, 4 to 40
 * @param p  sea pressure, dbar, 0 to 500
 * @returns  degrees C (ITS-90); computed beyond the range where SP is not negative; NaN if an input is NaN
 * @source   Millero (1978); Fofonoff and Millard (1983), UNESCO Technical Papers in Marine Science 44, page 29;
 *           check value -2.588567 degrees (IPTS-68) at S 40, 500 dbar
 */
export function freezingTemperatureEos80(SP: number, p: number): number {
  return temperatureFrom68(SP * (-0.0575 + 1.710523e-3 * Math.sqrt(SP) - 2.154996e-4 * SP) - 7.53e-4 * p);
}

/** Column twin of {@link freezingTemperatureEos80}: fills `out`. */
export function freezingTemperatureEos80Column(SP: Float64Array, p: Float64Array, out: Float64Array): void {
  requireRows(out, SP, p);
  for (let i = 0; i < out.length; i++) out[i] = freezingTemperatureEos80(SP[i]!, p[i]!);
}
