import { requireRows } from "./column.ts";
import { temperatureTo68 } from "./temperature-scale.ts";
import type { ValidityRange } from "./validity-range.ts";

export const soundSpeedChenMilleroRange: ValidityRange = { SP: [0, 40], t: [0, 40], p: [0, 10_000] };

/**
 * Speed of sound in sea water after Chen and Millero (1977), the equation of UNESCO 44.
 *
 * Not for navigation or diving: the hydrographic authority and licensed practice decide there.
 *
 * @param SP Practical Salinity, unit 1, 0 to 40
 * @param t  temperature, degree Celsius, ITS-90, 0 to 40; converted to IPTS-68, in which the equation is written
 *           (the coefficients that Wong and Zhu re-fitted in 1995 for ITS-90 differ by at most 0.01 m s-1)
 * @param p  sea pressure, dbar, 0 to 10 000
 * @returns  speed of sound, m s-1; computed beyond the range; NaN if SP is negative or an input is NaN
 * @source   Fofonoff and Millard (1983), UNESCO Technical Papers in Marine Science 44, equations (33) to (37),
 *           pages 46 to 48; check value S 40, t68 = 40, p = 10 000 gives 1731.995
 */
export function soundSpeedChenMillero(SP: number, t: number, p: number): number {
  const T = temperatureTo68(t);
  // bar
  const P = p / 10;
  const Cw =
    1402.388 +
    T * (5.03711 + T * (-5.80852e-2 + T * (3.342e-4 + T * (-1.478e-6 + T * 3.1464e-9)))) +
    P *
      (0.153563 +
        T * (6.8982e-4 + T * (-8.1788e-6 + T * (1.3621e-7 + T * -6.1185e-10))) +
        P *
          (3.126e-5 +
            T * (-1.7107e-6 + T * (2.5974e-8 + T * (-2.5335e-10 + T * 1.0405e-12))) +
            P * (-9.7729e-9 + T * (3.8504e-10 + T * -2.3643e-12))));
  const A =
    1.389 +
    T * (-1.262e-2 + T * (7.164e-5 + T * (2.006e-6 + T * -3.21e-8))) +
    P *
      (9.4742e-5 +
        T * (-1.258e-5 + T * (-6.4885e-8 + T * (1.0507e-8 + T * -2.0122e-10))) +
        P *
          (-3.9064e-7 +
            T * (9.1041e-9 + T * (-1.6002e-10 + T * 7.988e-12)) +
            P * (1.1e-10 + T * (6.649e-12 + T * -3.389e-13))));
  const B = -1.922e-2 + T * -4.42e-5 + P * (7.3637e-5 + T * 1.7945e-7);
  const D = 1.727e-3 + P * -7.9836e-6;
  return Cw + SP * (A + Math.sqrt(SP) * B + SP * D);
}

/** Column twin of {@link soundSpeedChenMillero}: fills `out`. */
export function soundSpeedChenMilleroColumn(
  SP: Float64Array,
  t: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  requireRows(out, SP, t, p);
  for (let i = 0; i < out.length; i++) out[i] = soundSpeedChenMillero(SP[i]!, t[i]!, p[i]!);
}
