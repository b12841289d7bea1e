import { requireRows } from "./column.ts";
import { SALINITY_FACTOR } from "./entropy.ts";
import { polynomial6 } from "./polynomial.ts";
import { fillPressureSeries, PRESSURE_TERMS, PRESSURE_UNIT } from "./specific-volume.ts";
import type { ValidityRange } from "./validity-range.ts";

/** For p below 500 dbar; deeper the fitted range narrows to oceanic water. */
export const thermalExpansionRange: ValidityRange = { SA: [0, 42], CT: [-2, 40], p: [0, 8_000] };

const volume = new Float64Array(PRESSURE_TERMS);
const byHeat = new Float64Array(PRESSURE_TERMS);

/**
 * Thermal expansion coefficient with respect to Conservative Temperature, TEOS-10.
 *
 * @param SA Absolute Salinity, g kg-1, 0 to 42
 * @param CT Conservative Temperature, degree Celsius, from the freezing point on
 * @param p  sea pressure, dbar, 0 to 8000
 * @returns  relative change of volume, K-1; negative in cold fresh water; computed beyond the range; NaN if an
 *           input is NaN
 * @source   Roquet, Madec, McDougall and Barker (2015), Ocean Modelling 90, 29-43; check values from the TEOS-10
 *           library stand in the tests
 */
export function thermalExpansion(SA: number, CT: number, p: number): number {
  fillPressureSeries(SA, CT, volume);
  fillByHeat(SA, CT);
  const q = p / PRESSURE_UNIT;
  return polynomial6(byHeat, q) / (40 * polynomial6(volume, q));
}

/** Derivative of `fillPressureSeries` with respect to tau, the normalised temperature, term by term. */
function fillByHeat(SA: number, CT: number): void {
  const s = Math.sqrt(SALINITY_FACTOR * (SA + 24));
  const tau = CT / 40;
  byHeat[0] =
    -1.5649734675e-5 +
    s *
      (3.5009599764e-5 +
        s * (-4.3592678561e-5 + s * (3.4532461828e-5 + s * (-1.1959409788e-5 + s * 1.3864594581e-6)))) +
    tau *
      (2 * 2.7762106484e-5 +
        s *
          (2 * -3.7435842344e-5 +
            s * (2 * 3.590782276e-5 + s * (2 * -1.8698584187e-5 + s * 2 * 3.8595339244e-6))) +
        tau *
          (3 * -1.6521159259e-5 +
            s * (3 * 2.4141479483e-5 + s * (3 * -1.4353633048e-5 + s * 3 * 2.2863324556e-6)) +
            tau *
              (4 * 6.9111322702e-6 +
                s * (4 * -8.7595873154e-6 + s * 4 * 4.3703680598e-6) +
                tau * (5 * -8.053961554e-7 + s * 5 * -3.30527589e-7 + tau * (6 * 2.0543094268e-7)))));
  byHeat[1] =
    1.8505765429e-5 +
    s * (-9.5677088156e-6 + s * (1.1100834765e-5 + s * (-9.8447117844e-6 + s * 2.590922526e-6))) +
    tau *
      (2 * -1.1716606853e-5 +
        s * (2 * -2.3678308361e-7 + s * (2 * 2.9283346295e-6 + s * 2 * -4.88261392e-7)) +
        tau *
          (3 * 7.9279656173e-6 +
            s * (3 * -3.4558773655e-6 + s * 3 * 3.1655306078e-7) +
            tau * (4 * -3.4102187482e-6 + s * 4 * 1.2956717783e-6 + tau * (5 * 5.0736766814e-7))));
  byHeat[2] =
    -1.1736386731e-6 +
    s * (-5.5699154557e-6 + s * (5.4620748834e-6 + s * -1.3544185627e-6)) +
    tau *
      (2 * 2.130502874e-6 +
        s * (2 * 3.913738708e-7 + s * 2 * -6.5731104067e-7) +
        tau * (3 * -4.6132540037e-7 + s * 3 * 7.7618888092e-9 + tau * (4 * -6.3352916514e-8)));
  byHeat[3] = -3.6527006553e-7 + s * -2.7295696237e-7 + tau * (2 * 2.8695905159e-7);
  byHeat[4] = 3.1454099902e-7;
  byHeat[5] = 0;
  byHeat[6] = 0;
}

/** Column twin of {@link thermalExpansion}: fills `out`. */
export function thermalExpansionColumn(
  SA: Float64Array,
  CT: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  requireRows(out, SA, CT, p);
  for (let i = 0; i < out.length; i++) out[i] = thermalExpansion(SA[i]!, CT[i]!, p[i]!);
}
