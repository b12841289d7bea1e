import { requireRows } from "./column.ts";
import { temperatureFrom68, temperatureTo68 } from "./temperature-scale.ts";
import type { ValidityRange } from "./validity-range.ts";

export const potentialTemperatureEos80Range: ValidityRange = { SP: [30, 40], t: [-2, 30], p: [0, 10_000] };

export const adiabaticLapseRateEos80Range: ValidityRange = potentialTemperatureEos80Range;

/** Degrees of IPTS-68 per dbar. */
function lapseRate68(S: number, t68: number, p: number): number {
  const s = S - 35;
  const a = 3.5803e-5 + t68 * (8.5258e-6 + t68 * (-6.836e-8 + t68 * 6.6228e-10));
  const b = 1.8932e-6 + t68 * -4.2393e-8;
  const c = 1.8741e-8 + t68 * (-6.7795e-10 + t68 * (8.733e-12 + t68 * -5.4481e-14));
  const d = -1.1351e-10 + t68 * 2.7759e-12;
  const e = -4.6206e-13 + t68 * (1.8676e-14 + t68 * -2.1687e-16);
  return a + b * s + p * (c + d * s + p * e);
}

/**
 * Change of temperature with pressure of water that exchanges neither heat nor salt, EOS-80.
 *
 * @param SP Practical Salinity, 30 to 40
 * @param t  in-situ temperature, degrees C (ITS-90), -2 to 30
 * @param p  sea pressure, dbar, 0 to 10 000
 * @returns  degrees C (ITS-90) per dbar; computed beyond the range; NaN if an input is NaN
 * @source   Bryden (1973); Fofonoff and Millard (1983), UNESCO Technical Papers in Marine Science 44, equation (31);
 *           check value 3.255976e-4 degrees (IPTS-68) per dbar at S 40, 40 degrees (IPTS-68), 10 000 dbar
 */
export function adiabaticLapseRateEos80(SP: number, t: number, p: number): number {
  return temperatureFrom68(lapseRate68(SP, temperatureTo68(t), p));
}

/** Column twin of {@link adiabaticLapseRateEos80}: fills `out`. */
export function adiabaticLapseRateEos80Column(
  SP: Float64Array,
  t: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  requireRows(out, SP, t, p);
  for (let i = 0; i < out.length; i++) out[i] = adiabaticLapseRateEos80(SP[i]!, t[i]!, p[i]!);
}

const ROOT = Math.SQRT1_2;

/**
 * Potential temperature referred to the surface, EOS-80: for comparison with older data, `potentialTemperature0` is
 * the one of TEOS-10.
 *
 * @param SP Practical Salinity, 30 to 40
 * @param t  in-situ temperature, degrees C (ITS-90), -2 to 30
 * @param p  sea pressure, dbar, 0 to 10 000
 * @returns  degrees C (ITS-90); computed beyond the range; NaN if an input is NaN
 * @source   Fofonoff (1977); Fofonoff and Millard (1983), UNESCO Technical Papers in Marine Science 44, equation
 *           (32), one step of Runge-Kutta-Gill; check value 36.89073 degrees (IPTS-68) at S 40, 40 degrees
 *           (IPTS-68), 10 000 dbar
 */
export function potentialTemperatureEos80(SP: number, t: number, p: number): number {
  const h = -p;
  let theta = temperatureTo68(t);
  let k = h * lapseRate68(SP, theta, p);
  theta += 0.5 * k;
  let q = k;
  k = h * lapseRate68(SP, theta, p + 0.5 * h);
  theta += (1 - ROOT) * (k - q);
  q = (2 - 2 * ROOT) * k + (3 * ROOT - 2) * q;
  k = h * lapseRate68(SP, theta, p + 0.5 * h);
  theta += (1 + ROOT) * (k - q);
  q = (2 + 2 * ROOT) * k - (2 + 3 * ROOT) * q;
  k = h * lapseRate68(SP, theta, p + h);
  return temperatureFrom68(theta + (k - 2 * q) / 6);
}

/** Column twin of {@link potentialTemperatureEos80}: fills `out`. */
export function potentialTemperatureEos80Column(
  SP: Float64Array,
  t: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  requireRows(out, SP, t, p);
  for (let i = 0; i < out.length; i++) out[i] = potentialTemperatureEos80(SP[i]!, t[i]!, p[i]!);
}
