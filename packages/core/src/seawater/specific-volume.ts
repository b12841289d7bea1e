/*
 * Specific volume of sea water by the 75-term polynomial of Roquet, Madec, McDougall and Barker (2015), Ocean
 * Modelling 90, 29-43, as a series in pressure. Density, sound speed and depth are made from it.
 */

import { SALINITY_FACTOR } from "./entropy.ts";

/** The polynomial's unit of pressure, dbar. */
export const PRESSURE_UNIT = 10_000;

/** Number of coefficients of the series in pressure. */
export const PRESSURE_TERMS = 7;

/**
 * Coefficients w of the specific volume v = w[0] + w[1] q + w[2] q^2 + ..., m3 kg-1, q = p / 10 000 dbar.
 *
 * @param SA Absolute Salinity, g kg-1; NaN coefficients below -24
 * @param CT Conservative Temperature, degree Celsius
 * @param w  filled; 7 elements
 */
export function fillPressureSeries(SA: number, CT: number, w: Float64Array): void {
  const s = Math.sqrt(SALINITY_FACTOR * (SA + 24));
  const tau = CT / 40;
  w[0] =
    1.0769995862e-3 +
    s *
      (-3.1038981976e-4 +
        s *
          (6.6928067038e-4 +
            s * (-8.5047933937e-4 + s * (5.8086069943e-4 + s * (-2.1092370507e-4 + s * 3.1932457305e-5))))) +
    tau *
      (-1.5649734675e-5 +
        s *
          (3.5009599764e-5 +
            s * (-4.3592678561e-5 + s * (3.4532461828e-5 + s * (-1.1959409788e-5 + s * 1.3864594581e-6)))) +
        tau *
          (2.7762106484e-5 +
            s * (-3.7435842344e-5 + s * (3.590782276e-5 + s * (-1.8698584187e-5 + s * 3.8595339244e-6))) +
            tau *
              (-1.6521159259e-5 +
                s * (2.4141479483e-5 + s * (-1.4353633048e-5 + s * 2.2863324556e-6)) +
                tau *
                  (6.9111322702e-6 +
                    s * (-8.7595873154e-6 + s * 4.3703680598e-6) +
                    tau * (-8.053961554e-7 + s * -3.30527589e-7 + tau * 2.0543094268e-7)))));
  w[1] =
    -6.0799143809e-5 +
    s *
      (2.4262468747e-5 +
        s * (-3.4792460974e-5 + s * (3.7470777305e-5 + s * (-1.7322218612e-5 + s * 3.0927427253e-6)))) +
    tau *
      (1.8505765429e-5 +
        s * (-9.5677088156e-6 + s * (1.1100834765e-5 + s * (-9.8447117844e-6 + s * 2.590922526e-6))) +
        tau *
          (-1.1716606853e-5 +
            s * (-2.3678308361e-7 + s * (2.9283346295e-6 + s * -4.88261392e-7)) +
            tau *
              (7.9279656173e-6 +
                s * (-3.4558773655e-6 + s * 3.1655306078e-7) +
                tau * (-3.4102187482e-6 + s * 1.2956717783e-6 + tau * 5.0736766814e-7))));
  w[2] =
    9.9856169219e-6 +
    s * (-5.8484432984e-7 + s * (-4.8122251597e-6 + s * (4.9263106998e-6 + s * -1.7811974727e-6))) +
    tau *
      (-1.1736386731e-6 +
        s * (-5.5699154557e-6 + s * (5.4620748834e-6 + s * -1.3544185627e-6)) +
        tau *
          (2.130502874e-6 +
            s * (3.913738708e-7 + s * -6.5731104067e-7) +
            tau * (-4.6132540037e-7 + s * 7.7618888092e-9 + tau * -6.3352916514e-8)));
  w[3] =
    -1.1309361437e-6 +
    s * (3.6310188515e-7 + s * 1.674630378e-8) +
    tau * (-3.6527006553e-7 + s * -2.7295696237e-7 + tau * 2.8695905159e-7);
  w[4] = 1.053115308e-7 + s * -1.1147125423e-7 + tau * 3.1454099902e-7;
  w[5] = -1.2647261286e-8;
  w[6] = 1.961350393e-9;
}
