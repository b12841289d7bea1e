import { requireRows } from "./column.ts";
import { temperatureTo68 } from "./temperature-scale.ts";
import type { ValidityRange } from "./validity-range.ts";

export const oxygenSolubilityRange: ValidityRange = { SP: [0, 42], pt: [-2, 40] };

/**
 * Oxygen in sea water that is in equilibrium with moist air at one standard atmosphere (101 325 Pa).
 *
 * @param SP Practical Salinity, unit 1, 0 to 42
 * @param pt potential temperature with the reference pressure 0 dbar, degree Celsius, ITS-90, freezing point to 40;
 *           converted to IPTS-68, in which the equation is written
 * @returns  concentration per mass of sea water, umol kg-1; computed beyond the range; NaN if an input is NaN
 * @source   Garcia and Gordon (1992), Limnol. Oceanogr. 37, 1307-1312, coefficients after Benson and Krause; the
 *           paper's check value, SP 35 and t68 = 10 gives 274.610, is from memory, the TEOS-10 library gives 274.6098
 */
export function oxygenSolubility(SP: number, pt: number): number {
  const t68 = temperatureTo68(pt);
  const Ts = Math.log((298.15 - t68) / (273.15 + t68));
  return Math.exp(
    5.80871 +
      Ts * (3.20291 + Ts * (4.17887 + Ts * (5.10006 + Ts * (-9.86643e-2 + Ts * 3.80369)))) +
      SP * (-7.01577e-3 + Ts * (-7.70028e-3 + Ts * (-1.13864e-2 + Ts * -9.51519e-3))) +
      SP * SP * -2.75915e-7,
  );
}

/** Column twin of {@link oxygenSolubility}: fills `out`. */
export function oxygenSolubilityColumn(SP: Float64Array, pt: Float64Array, out: Float64Array): void {
  requireRows(out, SP, pt);
  for (let i = 0; i < out.length; i++) out[i] = oxygenSolubility(SP[i]!, pt[i]!);
}
