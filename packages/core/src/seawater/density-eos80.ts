import { requireRows } from "./column.ts";
import { temperatureTo68 } from "./temperature-scale.ts";
import type { ValidityRange } from "./validity-range.ts";

export const densityEos80Range: ValidityRange = { SP: [0, 42], t: [-2, 40], p: [0, 10_000] };

/**
 * Density of sea water, EOS-80. For comparison with older data; `density` (TEOS-10) is the default.
 *
 * @param SP Practical Salinity, unit 1, 0 to 42
 * @param t  temperature, degree Celsius, ITS-90, -2 to 40; converted to IPTS-68, in which the equation is written
 * @param p  sea pressure, dbar, 0 to 10 000
 * @returns  density in place, kg m-3; computed beyond the range; NaN if SP is negative or an input is NaN
 * @source   Fofonoff and Millard (1983), UNESCO Technical Papers in Marine Science 44, equations (7) and (13) to
 *           (19), pages 15 to 19; check value S 35, t68 = 25, p = 10 000 gives 1062.53817. The report's 8.50935e-5
 *           is printed 8.50035e-5 in some copies; only the former gives its check values
 */
export function densityEos80(SP: number, t: number, p: number): number {
  const t68 = temperatureTo68(t);
  // bar
  const P = p / 10;
  return atmospheric(SP, t68) / (1 - P / secantBulkModulus(SP, t68, P));
}

/** Density at 0 dbar, kg m-3. */
function atmospheric(S: number, t: number): number {
  const water =
    999.842594 +
    t * (6.793952e-2 + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
  return (
    water +
    S * (8.24493e-1 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)))) +
    S * Math.sqrt(S) * (-5.72466e-3 + t * (1.0227e-4 + t * -1.6546e-6)) +
    S * S * 4.8314e-4
  );
}

/** Secant bulk modulus, bar. */
function secantBulkModulus(S: number, t: number, P: number): number {
  const root = S * Math.sqrt(S);
  const K0 =
    19652.21 +
    t * (148.4206 + t * (-2.327105 + t * (1.360477e-2 + t * -5.155288e-5))) +
    S * (54.6746 + t * (-0.603459 + t * (1.09987e-2 + t * -6.167e-5))) +
    root * (7.944e-2 + t * (1.6483e-2 + t * -5.3009e-4));
  const A =
    3.239908 +
    t * (1.43713e-3 + t * (1.16092e-4 + t * -5.77905e-7)) +
    S * (2.2838e-3 + t * (-1.0981e-5 + t * -1.6078e-6)) +
    root * 1.91075e-4;
  const B =
    8.50935e-5 + t * (-6.12293e-6 + t * 5.2787e-8) + S * (-9.9348e-7 + t * (2.0816e-8 + t * 9.1697e-10));
  return K0 + P * (A + P * B);
}

/** Column twin of {@link densityEos80}: fills `out`. */
export function densityEos80Column(
  SP: Float64Array,
  t: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  requireRows(out, SP, t, p);
  for (let i = 0; i < out.length; i++) out[i] = densityEos80(SP[i]!, t[i]!, p[i]!);
}
