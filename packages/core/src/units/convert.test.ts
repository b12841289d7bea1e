import { describe, expect, test } from "vitest";
import { convertUnits, convertUnitsColumn, sameDimension } from "./convert.ts";
import { isTimeReference, parseUnits } from "./parse.ts";
import { suggestUnits } from "./suggest.ts";
import { knownUnitWords } from "./table.ts";

const linear =
  (slope: number, offset = 0) =>
  (x: number) =>
    slope * x + offset;
const unknown = "unknown";
const different = "different";

// Output of the program udunits2, release 2.2.28, to six significant digits; where an exact definition is known it
// stands here instead: foot and nautical mile (international), US survey fathom, Julian and Gregorian day counts.
const pairs: [string, string, ((x: number) => number) | "unknown" | "different"][] = [
  ["degC", "K", linear(1, 273.15)],
  ["degree_Celsius", "K", linear(1, 273.15)],
  ["°C", "K", linear(1, 273.15)],
  ["degF", "degC", linear(5 / 9, -160 / 9)],
  ["K", "degC", linear(1, -273.15)],
  ["mK", "degC", linear(0.001, -273.15)],
  ["dbar", "Pa", linear(1e4)],
  ["decibar", "bar", linear(0.1)],
  ["psi", "dbar", linear(0.689476)],
  ["hPa", "mbar", linear(1)],
  ["S/m", "mS/cm", linear(10)],
  ["uS cm-1", "S m-1", linear(1e-4)],
  ["µS/cm", "S/m", linear(1e-4)],
  ["feet", "m", linear(0.3048)],
  ["fathom", "m", linear((6 * 1200) / 3937)],
  ["nautical_mile", "m", linear(1852)],
  ["nmi", "m", linear(1.609344e-6)],
  ["knot", "m s-1", linear(1852 / 3600)],
  ["g cm-3", "kg m^-3", linear(1000)],
  ["mg/l", "kg m-3", linear(1e-3)],
  ["umol kg-1", "mol/kg", linear(1e-6)],
  ["umol/l", "mol m-3", linear(1e-3)],
  ["mL/L", "1", linear(1e-3)],
  ["percent", "1", linear(0.01)],
  ["ppt", "1", linear(1e-12)],
  ["g kg-1", "0.001", linear(1)],
  ["degrees_north", "radian", linear(Math.PI / 180)],
  ["arc_minute", "degree", linear(1 / 60)],
  ["einstein m-2 s-1", "mol m-2 s-1", linear(1)],
  ["m2 s-2", "J/kg", linear(1)],
  ["m.s-1", "m/s", linear(1)],
  ["m s**-1", "m/s", linear(1)],
  ["m²", "cm2", linear(1e4)],
  ["METER", "m", linear(1)],
  ["days since 1950-01-01T00:00:00Z", "days since 1970-01-01", linear(1, -7305)],
  ["hours since 2000-01-01 00:00 -6:00", "hours since 2000-01-01 00:00:00", linear(1, 6)],
  ["seconds since 1970-01-01 00:00:00 0:00", "seconds since 1970-01-01", linear(1)],
  ["minutes since 2020-2-30", "minutes since 2020-03-01", linear(1)],
  ["days since 0000-01-01", "days since 1970-01-01", linear(1, -719164)],
  ["month", "days", linear(365.242198781 / 12)],
  ["m from 10", "m", linear(1, 10)],
  ["lg(re 1 mW)", "W", (x) => 0.001 * 10 ** x],
  ["PSU", "1", unknown],
  ["NTU", "1", unknown],
  ["mmho/cm", "S/m", unknown],
  ["deg C", "K", unknown],
  ["db", "Pa", different],
  ["dB", "1", unknown],
];

test("there are 48 pairs", () => expect(pairs).toHaveLength(48));

test.each(pairs)("%s to %s", (have, want, conversion) => {
  expect(parseUnits(have).ok).toBe(conversion !== unknown);
  for (const x of [0, 1, 12.5, -3]) {
    const got = convertUnits(x, have, want);
    if (typeof conversion === "string") expect(got).toBeNaN();
    else {
      const wanted = conversion(x);
      expect(Math.abs(got - wanted)).toBeLessThanOrEqual(1e-6 * Math.abs(wanted) + 1e-18);
    }
  }
});

describe("decimal factors stay exact", () => {
  test.each([
    [42914, "uS/cm", "S/m", 4.2914],
    [42.914, "mS/cm", "S m-1", 4.2914],
    [10, "dbar", "Pa", 1e5],
    [32, "degF", "degC", 0],
    [212, "degF", "degC", 100],
    [7.1, "degC", "degree_Celsius", 7.1],
    [3, "ft", "m", 0.9144],
    [1025, "kg m-3", "g cm-3", 1.025],
  ])("%d %s in %s", (x, from, to, want) => expect(convertUnits(x, from, to)).toBe(want));
});

test("an inverse is no conversion, unlike in the library", () =>
  expect(convertUnits(2, "s", "Hz")).toBeNaN());
test("a duration is no moment", () => expect(convertUnits(2, "days", "days since 1970-01-01")).toBeNaN());
test.each([
  ["(1e200 m)^9", "m9"],
  ["light_year^200", "fm200"],
])("%s is beyond all numbers", (from, to) => {
  expect(parseUnits(from).ok).toBe(true);
  expect(convertUnits(1, from, to)).toBeNaN();
});
test("NaN in, NaN out", () => expect(convertUnits(NaN, "degC", "K")).toBeNaN());

test("offsets belong to bare temperatures", () => {
  expect(convertUnits(1, "degC/m", "K/m")).toBe(1);
  expect(convertUnits(1, "degC^2", "K2")).toBe(1);
  expect(convertUnits(1000, "mdegC", "K")).toBe(274.15);
});

test("column twin equals the scalar and checks its length", () => {
  const values = Float64Array.of(0, 42914, NaN);
  const out = new Float64Array(3);
  convertUnitsColumn(values, "uS/cm", "S/m", out);
  expect(out).toEqual(Float64Array.of(0, 4.2914, NaN));
  convertUnitsColumn(values, "uS/cm", "m", out);
  expect(out).toEqual(Float64Array.of(NaN, NaN, NaN));
  expect(() => convertUnitsColumn(values, "m", "m", new Float64Array(2))).toThrow(RangeError);
});

test.each([
  ["S/m", "mS cm-1", true],
  ["degrees_north", "1", true],
  ["K", "degC", true],
  ["days since 2000-01-01", "s", false],
  ["days since 2000-01-01", "hours since 1950-01-01", true],
  ["dbar", "m", false],
  ["PSU", "1", false],
])("sameDimension(%j, %j) is %s", (a, b, want) => expect(sameDimension(a, b)).toBe(want));

test("time counted from a moment", () => {
  const of = (text: string) => {
    const result = parseUnits(text);
    return result.ok && isTimeReference(result.value);
  };
  expect([of("days since 1970-01-01"), of("day"), of("m from 10")]).toEqual([true, false, false]);
});

describe("spellings that people type", () => {
  // common practice, no source
  test.each([
    ["PSU", "1"],
    ["psu", "1"],
    ["PSS-78", "1"],
    ["ppt", "1e-3"],
    ["db", "dbar"],
    ["dB", "dbar"],
    ["DBAR", "dbar"],
    ["nmi", "nautical_mile"],
    ["mmho/cm", "mS cm-1"],
    ["mhos/m", "S m-1"],
    ["NTU", "1"],
    ["FTU", "1"],
    ["deg C", "degC"],
    ["Deg C", "degC"],
    ["oC", "degC"],
    ["[deg C]", "degC"],
    ["mg/L O2", "mg L-1"],
    ["RFU", "1"],
    ["uE m-2 s-1", "umol m-2 s-1"],
    ["m s -1", "m s-1"],
    ["kg m -3", "kg m-3"],
    ["m/sec", "m s-1"],
  ])("%s: perhaps %s", (typed, units) => {
    expect(suggestUnits(typed)?.units).toBe(units);
    expect(parseUnits(units).ok).toBe(true);
  });

  test.each(["m", "degC", "S m-1", "1", "", "kg m-3", "mL/L", "furlong", "gibberish"])(
    "%j needs none",
    (text) => expect(suggestUnits(text)).toBeNull(),
  );

  test("no good name of the database is questioned, but for those that people mean otherwise", () => {
    const questioned = knownUnitWords().filter((word) => suggestUnits(word) !== null);
    expect(questioned.sort()).toEqual(["C", "F", "ppt"]);
  });

  test("a misspelt name is told its like", () => {
    const result = parseUnits("kg metter-3");
    expect(!result.ok && result.problems[0].remedy).toBe("Perhaps meter or meters or metre.");
  });

  test("the problem of an unknown unit carries it", () => {
    const result = parseUnits("deg C");
    expect(result).toMatchObject({ ok: false, problems: [{ code: "units/unknown", where: { column: 1 } }] });
    if (!result.ok) expect(result.problems[0].remedy).toContain("degC");
  });
});
