/** Decimal places that are tried. */
const MOST = 15;

/**
 * The fewest decimal places that give every value back, and the digits that the largest then has: what a person would
 * have to print. Values of single precision are compared as such.
 */
export function printedAs(
  values: Float64Array,
  single: boolean,
): { readonly decimals: number; readonly significantDigits: number } {
  let decimals = 0;
  let largest = 0;
  for (const value of values) {
    if (Number.isNaN(value)) continue;
    const size = Math.abs(value);
    if (size > largest) largest = size;
    while (decimals < MOST && size * 10 ** decimals < 2 ** 53) {
      const rounded = Math.round(value * 10 ** decimals) / 10 ** decimals;
      if ((single ? Math.fround(rounded) : rounded) === value) break;
      decimals++;
    }
  }
  const whole = largest >= 1 ? Math.floor(Math.log10(largest)) + 1 : 0;
  return { decimals, significantDigits: Math.max(whole + decimals, 1) };
}
