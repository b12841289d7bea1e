/** Value of c[0] + c[1] y + c[2] y^2 + ... */
export function polynomial(c: Float64Array, y: number): number {
  let value = 0;
  for (let j = c.length - 1; j >= 0; j--) value = value * y + c[j]!;
  return value;
}

/** Derivative of {@link polynomial} with respect to y. */
export function polynomialSlope(c: Float64Array, y: number): number {
  let value = 0;
  for (let j = c.length - 1; j >= 1; j--) value = value * y + j * c[j]!;
  return value;
}
