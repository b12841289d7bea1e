import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type NumberStyle, parseDecimal, parseNumber, printedPrecision } from "./number.ts";

describe("parseNumber", () => {
  test.each([
    "",
    " ",
    "1 ",
    " 1",
    "0x10",
    "Infinity",
    "NaN",
    "1e999",
    "1,5",
    "--1",
    "1e",
    "e5",
    ".",
    "+",
    "1_000",
    "1.2.3",
    "١",
  ])("%j is not a number", (text) => expect(parseNumber(text)).toBeNaN());

  test.each([
    ["5.", 5],
    [".5", 0.5],
    ["+1.5E-3", 0.0015],
    ["-0", -0],
    ["007", 7],
    // IEEE 754 binary64: the largest double and the smallest subnormal
    ["1.7976931348623157e308", Number.MAX_VALUE],
    ["4.9406564584124654e-324", Number.MIN_VALUE],
  ])("%s", (text, want) => expect(parseNumber(text)).toBe(want));

  test("every double printed by the language comes back", () => {
    const number = fc.double({ noNaN: true, noDefaultInfinity: true });
    fc.assert(fc.property(number, (x) => Object.is(parseNumber(x === 0 ? "0" : String(x)), x === 0 ? 0 : x)));
  });
});

describe("parseDecimal", () => {
  const german: NumberStyle = { decimal: ",", thousands: "." };
  const blanks: NumberStyle = { decimal: ",", thousands: " " };
  test.each<[string, NumberStyle, number]>([
    ["10,25", { decimal: "," }, 10.25],
    ["1.234.567,5", german, 1234567.5],
    ["-1234567,5", german, -1234567.5],
    ["1,234.5", { decimal: ".", thousands: "," }, 1234.5],
    ["12 345,5", blanks, 12345.5],
    ["12\u00A0345", blanks, 12345],
    ["12'345.5", { decimal: ".", thousands: "'" }, 12345.5],
    ["12\u2019345", { decimal: ".", thousands: "'" }, 12345],
    ["1,5e3", { decimal: "," }, 1500],
    ["1.5", { decimal: ".", thousands: null }, 1.5],
  ])("%j in %j", (text, style, want) => expect(parseDecimal(text, style)).toBe(want));

  test.each<[string, NumberStyle]>([
    ["10.25", { decimal: "," }],
    ["10,25", { decimal: "." }],
    ["1.23,5", german],
    ["1.2345", german],
    ["1234.567", german],
    ["1,234.567", german],
    ["1.5e3", german],
    ["1,5,5", { decimal: "," }],
    ["1  234", blanks],
    [" 234", blanks],
    ["", german],
  ])("%j in %j is not a number", (text, style) => expect(parseDecimal(text, style)).toBeNaN());

  test("the same sign twice is a wrong call", () =>
    expect(() => parseDecimal("1", { decimal: ".", thousands: "." })).toThrow(RangeError));
});

describe("printedPrecision", () => {
  test.each([
    ["12.3450", 4, 6],
    ["0.0150", 4, 3],
    ["1500", 0, 4],
    ["1.23e-2", 4, 3],
    ["1.5e3", 0, 2],
    ["0.00", 2, 1],
    ["-7", 0, 1],
    ["1e-300", 100, 1],
    ["word", 0, 0],
  ])("%s", (text, decimals, significantDigits) =>
    expect(printedPrecision(text)).toEqual({ decimals, significantDigits }),
  );

  test("decimal comma", () =>
    expect(printedPrecision("1.234,50", { decimal: ",", thousands: "." })).toEqual({
      decimals: 2,
      significantDigits: 6,
    }));

  test("a printed number is recovered at its precision", () => {
    const cents = fc.integer({ min: -1e9, max: 1e9 });
    fc.assert(
      fc.property(cents, fc.integer({ min: 0, max: 6 }), (whole, places) => {
        const text = (whole / 10 ** places).toFixed(places);
        const { decimals } = printedPrecision(text);
        expect(decimals).toBe(places);
        expect(parseNumber(text).toFixed(decimals)).toBe(text);
      }),
    );
  });
});
