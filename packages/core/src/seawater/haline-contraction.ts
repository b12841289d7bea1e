import { requireRows } from "./column.ts";
import { SALINITY_FACTOR } from "./entropy.ts";
import { polynomial6 } from "./polynomial.ts";
import { fillPressureSeries, PRESSURE_TERMS, PRESSURE_UNIT } from "./specific-volume.ts";
import type { ValidityRange } from "./validity-range.ts";

/** For p below 500 dbar; deeper the fitted range narrows to oceanic water. */
export const halineContractionRange: ValidityRange = { SA: [0, 42], CT: [-2, 40], p: [0, 8_000] };

const volume = new Float64Array(PRESSURE_TERMS);
const bySalt = new Float64Array(PRESSURE_TERMS);

/**
 * Haline contraction coefficient at constant Conservative Temperature, TEOS-10.
 *
 * @param SA Absolute Salinity, g kg-1, 0 to 42
 * @param CT Conservative Temperature, degree Celsius, from the freezing point on
 * @param p  sea pressure, dbar, 0 to 8000
 * @returns  relative change of density, kg g-1; computed beyond the range; NaN if an input is NaN
 * @source   Roquet, Madec, McDougall and Barker (2015), Ocean Modelling 90, 29-43; check values from the TEOS-10
 *           library stand in the tests
 */
export function halineContraction(SA: number, CT: number, p: number): number {
  fillPressureSeries(SA, CT, volume);
  fillBySalt(SA, CT);
  const q = p / PRESSURE_UNIT;
  const s = Math.sqrt(SALINITY_FACTOR * (SA + 24));
  return (-polynomial6(bySalt, q) * SALINITY_FACTOR) / (2 * s * polynomial6(volume, q));
}

/** Derivative of `fillPressureSeries` with respect to s, the root of the normalised salinity, term by term. */
function fillBySalt(SA: number, CT: number): void {
  const s = Math.sqrt(SALINITY_FACTOR * (SA + 24));
  const tau = CT / 40;
  bySalt[0] =
    -3.1038981976e-4 +
    s *
      (2 * 6.6928067038e-4 +
        s *
          (3 * -8.5047933937e-4 +
            s * (4 * 5.8086069943e-4 + s * (5 * -2.1092370507e-4 + s * 6 * 3.1932457305e-5)))) +
    tau *
      (3.5009599764e-5 +
        s *
          (2 * -4.3592678561e-5 +
            s * (3 * 3.4532461828e-5 + s * (4 * -1.1959409788e-5 + s * 5 * 1.3864594581e-6))) +
        tau *
          (-3.7435842344e-5 +
            s * (2 * 3.590782276e-5 + s * (3 * -1.8698584187e-5 + s * 4 * 3.8595339244e-6)) +
            tau *
              (2.4141479483e-5 +
                s * (2 * -1.4353633048e-5 + s * 3 * 2.2863324556e-6) +
                tau * (-8.7595873154e-6 + s * 2 * 4.3703680598e-6 + tau * -3.30527589e-7))));
  bySalt[1] =
    2.4262468747e-5 +
    s *
      (2 * -3.4792460974e-5 +
        s * (3 * 3.7470777305e-5 + s * (4 * -1.7322218612e-5 + s * 5 * 3.0927427253e-6))) +
    tau *
      (-9.5677088156e-6 +
        s * (2 * 1.1100834765e-5 + s * (3 * -9.8447117844e-6 + s * 4 * 2.590922526e-6)) +
        tau *
          (-2.3678308361e-7 +
            s * (2 * 2.9283346295e-6 + s * 3 * -4.88261392e-7) +
            tau * (-3.4558773655e-6 + s * 2 * 3.1655306078e-7 + tau * 1.2956717783e-6)));
  bySalt[2] =
    -5.8484432984e-7 +
    s * (2 * -4.8122251597e-6 + s * (3 * 4.9263106998e-6 + s * 4 * -1.7811974727e-6)) +
    tau *
      (-5.5699154557e-6 +
        s * (2 * 5.4620748834e-6 + s * 3 * -1.3544185627e-6) +
        tau * (3.913738708e-7 + s * 2 * -6.5731104067e-7 + tau * 7.7618888092e-9));
  bySalt[3] = 3.6310188515e-7 + s * 2 * 1.674630378e-8 + tau * -2.7295696237e-7;
  bySalt[4] = -1.1147125423e-7;
  bySalt[5] = 0;
  bySalt[6] = 0;
}

/** Column twin of {@link halineContraction}: fills `out`. */
export function halineContractionColumn(
  SA: Float64Array,
  CT: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  requireRows(out, SA, CT, p);
  for (let i = 0; i < out.length; i++) out[i] = halineContraction(SA[i]!, CT[i]!, p[i]!);
}
