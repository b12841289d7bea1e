const FULL_NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;

/**
 * A decimal number written in full.
 *
 * @param text digits with optional sign, decimal point and exponent; nothing else, no blanks around
 * @returns    the nearest double; NaN for anything else, so also for "", "0x10", "Infinity", "1,5" and for what
 *             is too large for a double ("1e999")
 */
export function parseNumber(text: string): number {
  if (!FULL_NUMBER.test(text)) return NaN;
  const value = Number(text); // correctly rounded by the language's definition
  return Number.isFinite(value) ? value : NaN;
}

/** How numbers are written in a file. */
export interface NumberStyle {
  readonly decimal: "." | ",";
  /**
   * Sign between groups of three digits before the decimal sign. A blank stands also for the no-break blanks
   * U+00A0 and U+202F, an apostrophe also for U+2019.
   */
  readonly thousands?: "." | "," | " " | "'" | null;
}

const GROUPS = {
  ".": /^([+-]?\d{1,3})((?:\.\d{3})+)(?![\d.])/,
  ",": /^([+-]?\d{1,3})((?:,\d{3})+)(?![\d,])/,
  " ": /^([+-]?\d{1,3})((?:[ \u00A0\u202F]\d{3})+)(?![\d \u00A0\u202F])/,
  "'": /^([+-]?\d{1,3})((?:['\u2019]\d{3})+)(?![\d'\u2019])/,
} as const;

/**
 * A decimal number in the style of its file.
 *
 * @returns the nearest double; NaN if the text is not a whole number in that style. Digits need not be grouped,
 *          but where a group sign stands the groups must be complete ("1.234.567,5" but not "1.23,5").
 * @throws  RangeError if decimal and thousands are the same sign
 */
export function parseDecimal(text: string, style: NumberStyle): number {
  const plain = plainDigits(text, style);
  return plain === null ? NaN : parseNumber(plain);
}

/** The text with a decimal point and without group signs; null if it holds the wrong signs. */
function plainDigits(text: string, { decimal, thousands = null }: NumberStyle): string | null {
  if (thousands === decimal) throw new RangeError(`decimal and thousands are both "${decimal}"`);
  const ungrouped =
    thousands === null
      ? text
      : text.replace(GROUPS[thousands], (_, head: string, tail: string) => head + tail.replace(/\D/g, ""));
  if (decimal === ".") return ungrouped;
  return ungrouped.includes(".") ? null : ungrouped.replace(",", ".");
}

/** How finely a number was printed. */
export interface PrintedPrecision {
  /**
   * Places after the decimal sign that the number would have without its exponent ("1.23e-2" has 4), between 0
   * and 100. The printed number is known to half a unit of the last of them.
   */
  readonly decimals: number;
  /** Digits from the first that is not 0; trailing zeros count ("1500" has 4, "0.0150" has 3); 1 for zero. */
  readonly significantDigits: number;
}

/** Precision of a printed number; both 0 if the text is not a number in that style. */
export function printedPrecision(text: string, style: NumberStyle = { decimal: "." }): PrintedPrecision {
  const plain = plainDigits(text, style);
  if (plain === null || Number.isNaN(parseNumber(plain))) return { decimals: 0, significantDigits: 0 };
  const [mantissa = "", exponent = "0"] = plain.toLowerCase().split("e");
  const [whole = "", fraction = ""] = mantissa.replace(/^[+-]/, "").split(".");
  const digits = (whole + fraction).replace(/^0+/, "");
  const decimals = fraction.length - parseNumber(exponent);
  return {
    decimals: Math.min(Math.max(decimals, 0), 100),
    significantDigits: Math.max(digits.length, 1),
  };
}
