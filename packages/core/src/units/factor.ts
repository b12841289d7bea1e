import { parseNumber } from "../text/number.ts";

/**
 * A conversion factor: numerator / denominator × 10^exponent. Kept in three parts so that decimal factors stay exact
 * (µS/cm to S/m divides by 10 000, it does not multiply by a rounded 1e-4).
 */
export interface Factor {
  readonly numerator: number;
  readonly denominator: number;
  readonly exponent: number;
}

export const ONE: Factor = { numerator: 1, denominator: 1, exponent: 0 };

function commonDivisor(a: number, b: number): number {
  while (b !== 0) [a, b] = [b, a % b];
  return Math.abs(a);
}

function factor(numerator: number, denominator: number, exponent: number): Factor {
  if (!Number.isSafeInteger(numerator) || !Number.isSafeInteger(denominator) || numerator === 0)
    return { numerator: numerator / denominator, denominator: 1, exponent };
  const divisor = commonDivisor(numerator, denominator);
  let n = numerator / divisor;
  let d = denominator / divisor;
  let e = exponent;
  while (n % 10 === 0) [n, e] = [n / 10, e + 1];
  while (d % 10 === 0) [d, e] = [d / 10, e - 1];
  return { numerator: n, denominator: d, exponent: e };
}

/** A factor from a printed decimal number ("1.5e-3"); the text must be one that a double can hold. */
export function decimalFactor(text: string): Factor {
  const [mantissa = "", exponentText = "0"] = text.toLowerCase().split("e");
  const [whole = "", fraction = ""] = mantissa.replace(/^[+-]/, "").split(".");
  const digits = (whole + fraction).replace(/^0+/, "");
  const exponent = parseNumber(exponentText) - fraction.length;
  const sign = mantissa.startsWith("-") ? -1 : 1;
  if (digits === "") return { numerator: 0, denominator: 1, exponent: 0 };
  if (digits.length <= 15) return factor(sign * parseNumber(digits), 1, exponent);
  const shift = digits.length - 1; // too many digits to be exact: the nearest double between 1 and 10
  return {
    numerator: sign * parseNumber(`${digits[0]}.${digits.slice(1)}`),
    denominator: 1,
    exponent: exponent + shift,
  };
}

export const multiplyFactors = (a: Factor, b: Factor): Factor =>
  factor(a.numerator * b.numerator, a.denominator * b.denominator, a.exponent + b.exponent);

export const invertFactor = (f: Factor): Factor =>
  f.numerator < 0
    ? factor(-f.denominator, -f.numerator, -f.exponent)
    : factor(f.denominator, f.numerator, -f.exponent);

export function raiseFactor(f: Factor, power: number): Factor {
  const base = power < 0 ? invertFactor(f) : f;
  let result = ONE;
  for (let i = 0; i < Math.abs(power); i++) result = multiplyFactors(result, base);
  return result;
}

/** Sum of two factors, exact as long as the parts are whole numbers below 2^53. */
export function addFactors(a: Factor, b: Factor): Factor {
  if (a.numerator === 0) return b;
  if (b.numerator === 0) return a;
  const exponent = Math.min(a.exponent, b.exponent);
  const n = (f: Factor) => f.numerator * powerOfTen(f.exponent - exponent);
  return factor(n(a) * b.denominator + n(b) * a.denominator, a.denominator * b.denominator, exponent);
}

/** The factor as one multiplication and one division: value × up / down. Whole numbers wherever that is exact. */
export function asFraction(f: Factor): { readonly up: number; readonly down: number } {
  return f.exponent >= 0
    ? { up: f.numerator * powerOfTen(f.exponent), down: f.denominator }
    : { up: f.numerator, down: f.denominator * powerOfTen(-f.exponent) };
}

export function factorValue(f: Factor): number {
  const { up, down } = asFraction(f);
  return up / down;
}

/** Exact up to 1e22, the nearest double above, NaN beyond what a double holds. */
const powerOfTen = (exponent: number): number => parseNumber(`1e${exponent}`);
