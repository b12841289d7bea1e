import { requireRows } from "./column.ts";
import { temperatureTo68 } from "./temperature-scale.ts";
import type { ValidityRange } from "./validity-range.ts";

/** Oceanic water only: outside it the number is an extrapolation, up to 1.5 m s-1 off in brackish water. */
export const soundSpeedDelGrossoRange: ValidityRange = { SP: [30, 40], t: [0, 30], p: [0, 9_800] };

/**
 * Speed of sound in sea water after Del Grosso (1974).
 *
 * Never the choice in an estuary, see the range. Not for navigation or diving: the hydrographic authority and
 * licensed practice decide there.
 *
 * @param SP Practical Salinity, unit 1, 30 to 40
 * @param t  temperature, degree Celsius, ITS-90, 0 to 30; converted to IPTS-68, in which the equation is written
 * @param p  sea pressure, dbar, 0 to 9800
 * @returns  speed of sound, m s-1; computed beyond the range; NaN if an input is NaN
 * @source   Del Grosso (1974), J. Acoust. Soc. Am. 56, 1084-1091, compared with the coefficients that Wong and Zhu
 *           (1995), ibid. 97, 1732-1736, re-fitted for ITS-90: within 0.001 m s-1 over the range. No published
 *           check value is known to us
 */
export function soundSpeedDelGrosso(SP: number, t: number, p: number): number {
  const T = temperatureTo68(t);
  // kgf cm-2
  const P = p / 9.80665;
  const S = SP;
  const byTemperature = T * (5.01109398873 + T * (-5.50946843172e-2 + T * 2.2153596924e-4));
  const bySalinity = S * (1.32952290781 + S * 1.28955756844e-4);
  const byPressure = P * (0.156059257041 + P * (2.44998688441e-5 + P * -8.83392332513e-9));
  const together =
    T * P * 6.35191613389e-3 +
    T * P * P * -1.59349479045e-6 +
    T * T * P * P * 2.65484716608e-8 +
    T * P * P * P * 5.22116437235e-10 +
    T * T * T * P * -4.38031096213e-7 +
    S * T * -1.27562783426e-2 +
    S * T * T * 9.6840315641e-5 +
    S * T * P * -3.40597039004e-4 +
    S * S * T * P * 4.85639620015e-6 +
    S * S * P * P * -1.61674495909e-9;
  return 1402.392 + byTemperature + bySalinity + byPressure + together;
}

/** Column twin of {@link soundSpeedDelGrosso}: fills `out`. */
export function soundSpeedDelGrossoColumn(
  SP: Float64Array,
  t: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  requireRows(out, SP, t, p);
  for (let i = 0; i < out.length; i++) out[i] = soundSpeedDelGrosso(SP[i]!, t[i]!, p[i]!);
}
