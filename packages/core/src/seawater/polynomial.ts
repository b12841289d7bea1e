/*
 * Polynomials of a fixed degree, written out: a loop over the coefficients takes longer.
 */

/** c[0] + c[1] y + ... + c[6] y^6. */
export const polynomial6 = (c: Float64Array, y: number): number =>
  c[0]! + y * (c[1]! + y * (c[2]! + y * (c[3]! + y * (c[4]! + y * (c[5]! + y * c[6]!)))));

/** Derivative of {@link polynomial6} with respect to y. */
export const polynomialSlope6 = (c: Float64Array, y: number): number =>
  c[1]! + y * (2 * c[2]! + y * (3 * c[3]! + y * (4 * c[4]! + y * (5 * c[5]! + y * (6 * c[6]!)))));

/** c[0] + c[1] y + ... + c[7] y^7. */
export const polynomial7 = (c: Float64Array, y: number): number =>
  c[0]! + y * (c[1]! + y * (c[2]! + y * (c[3]! + y * (c[4]! + y * (c[5]! + y * (c[6]! + y * c[7]!))))));

/** Derivative of {@link polynomial7} with respect to y. */
export const polynomialSlope7 = (c: Float64Array, y: number): number =>
  c[1]! +
  y * (2 * c[2]! + y * (3 * c[3]! + y * (4 * c[4]! + y * (5 * c[5]! + y * (6 * c[6]! + y * (7 * c[7]!))))));
