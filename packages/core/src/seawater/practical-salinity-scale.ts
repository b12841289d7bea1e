/*
 * Parts of the Practical Salinity Scale 1978 that the equation and its inverse share. Fofonoff and Millard
 * (1983), UNESCO Technical Papers in Marine Science 44, equations (1) to (5), pages 6 to 9. Temperatures here
 * are on IPTS-68; `x` is the square root of Rt.
 */

/** Conductivity of sea water of SP 35 at t68 = 15 and p = 0, mS cm-1 (Culkin and Smith 1980). */
export const STANDARD_CONDUCTIVITY = 42.914;

/** Temperature term (t - 15) / (1 + k (t - 15)). */
export const temperatureTerm = (t68: number): number => (t68 - 15) / (1 + 0.0162 * (t68 - 15));

/** rt: conductivity of standard sea water at t68 over that at 15. */
export const temperatureRatio = (t68: number): number =>
  0.6766097 + t68 * (2.00564e-2 + t68 * (1.104259e-4 + t68 * (-6.9698e-7 + t68 * 1.0031e-9)));

/** Numerator of Rp - 1. */
export const pressureNumerator = (p: number): number => p * (2.07e-5 + p * (-6.37e-10 + p * 3.989e-15));

/** Denominator of Rp - 1, as the part without R and the factor of R. */
export const pressureDenominator = (t68: number): number => 1 + t68 * (3.426e-2 + t68 * 4.464e-4);
export const pressureDenominatorSlope = (t68: number): number => 4.215e-1 - 3.107e-3 * t68;

/** SP of the scale itself. */
export const scaleSalinity = (x: number, f: number): number =>
  0.008 +
  x * (-0.1692 + x * (25.3851 + x * (14.0941 + x * (-7.0261 + x * 2.7081)))) +
  f * (0.0005 + x * (-0.0056 + x * (-0.0066 + x * (-0.0375 + x * (0.0636 + x * -0.0144)))));

/** Derivative of {@link scaleSalinity} with respect to x. */
export const scaleSlope = (x: number, f: number): number =>
  -0.1692 +
  x * (2 * 25.3851 + x * (3 * 14.0941 + x * (4 * -7.0261 + x * 5 * 2.7081))) +
  f * (-0.0056 + x * (2 * -0.0066 + x * (3 * -0.0375 + x * (4 * 0.0636 + x * 5 * -0.0144))));

/** What Hill, Dauphinee and Woods (1986) take off the scale at low salinity. */
export function lowSalinityTerm(x: number, f: number): number {
  const u = 400 * x * x;
  const v = 10 * x;
  return 0.008 / (1 + u * (1.5 + u)) + (0.0005 * f) / (1 + v * (1 + v * (1 + v)));
}

/** Derivative of {@link lowSalinityTerm} with respect to x. */
export function lowSalinitySlope(x: number, f: number): number {
  const u = 400 * x * x;
  const v = 10 * x;
  const first = 1 + u * (1.5 + u);
  const second = 1 + v * (1 + v * (1 + v));
  return (
    (-0.008 * (1.5 + 2 * u) * 800 * x) / (first * first) -
    (0.0005 * f * 10 * (1 + v * (2 + 3 * v))) / (second * second)
  );
}

/** Factor that makes the low-salinity form meet the scale at SP 2, as TEOS-10 has it. */
export function lowSalinityRatio(f: number): number {
  // within 1e-4, from where two steps reach the last digit at any temperature
  let x = 0.26645 + 1.175e-4 * f;
  for (let step = 0; step < 2; step++) x -= (scaleSalinity(x, f) - 2) / scaleSlope(x, f);
  return 2 / (2 - lowSalinityTerm(x, f));
}
