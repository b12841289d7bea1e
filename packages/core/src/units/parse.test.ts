import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { convertUnits, sameDimension } from "./convert.ts";
import { isTimeReference, parseUnits } from "./parse.ts";

describe("what is no unit is a problem with its column", () => {
  test.each([
    [" m", "grammar", 1],
    ["m ", "grammar", 3],
    ["m//s", "grammar", 3],
    ["m * s", "grammar", 3],
    ["(m", "grammar", 3],
    ["m)", "grammar", 2],
    ["m since 10", "ok", 0],
    ["m since", "grammar", 8],
    ["m since 1970-01-01", "grammar", 13],
    ["m2s-1", "unknown", 1],
    ["kkm", "unknown", 1],
    ["0 m", "impossible", 1],
    ["m256", "impossible", 1],
    ["1e999 m", "impossible", 1],
    ["m from 1e999", "impossible", 2],
    ["1e-999 m", "impossible", 1],
    ["lg(re 1 mW)/s", "impossible", 12],
    ["lg(mW)", "unknown", 1],
    ["days since 1970-13-01", "impossible", 12],
    ["days since 1970-02-31", "impossible", 12],
    ["days since 1970-01-01 24:00", "impossible", 12],
    ["days since 1970-01-01 12:00 +15:00", "impossible", 12],
    ["days since 1970-01-01 UTC", "grammar", 22],
    ["days since 1970-01-01T", "grammar", 22],
    ["(days since 1970-01-01) since 2000-01-01", "impossible", 24],
    ["days since", "grammar", 11],
    [`${"(".repeat(60)}m`, "grammar", 52],
    ["m ".repeat(2000), "grammar", 2001],
  ])("%j", (text, what, column) => {
    const result = parseUnits(text);
    if (what === "ok") expect(result.ok).toBe(true);
    else
      expect(result).toMatchObject({ ok: false, problems: [{ code: `units/${what}`, where: { column } }] });
  });
});

test.each([
  ["kg.m2.s-1", "kg m2/s"],
  ["m·s", "m.s"],
  ["m⁻²", "m^-2"],
  ["m s⁻¹", "m/s"],
  ["meter per second", "m/s"],
  ["(kg)(m)", "kg.m"],
  ["(m/s)^2", "m2 s-2"],
  ["J/s/m2", "W m-2"],
  ["nautical\u00A0miles", "nautical_mile"],
  ["KILOMETERS", "km"],
  ["inches", "inch"],
  ["henries", "henry"],
  ["1e3 m", "km"],
  ["m from 0.0", "m"],
  ["10^3 m", "km"],
  ["ln(re: 1 mW)", "ln(re 1 mW)"],
  ["days after 1970-01-01", "days since 1970-01-01 00:00Z"],
  ["days @ 19700101", "days since 1970-01-01"],
  ["seconds since 1970-1-1 12", "seconds since 1970-01-01 12:00"],
  ["seconds since 1970-01-01 013005.5", "seconds since 1970-01-01 01:30:05.5"],
])("%s is %s", (a, b) => {
  expect(sameDimension(a, b)).toBe(true);
  expect(convertUnits(3, a, b)).toBeCloseTo(3, 12);
});

test("names and numbers of a unit are told apart with their prefixes", () => {
  const result = parseUnits("10 kilofeet ms-1");
  expect(result).toMatchObject({
    ok: true,
    value: {
      parts: [
        { kind: "number", text: "10" },
        { kind: "name", text: "kilofeet", prefix: "kilo", entry: "international_foot" },
        { kind: "name", text: "ms", prefix: "m", entry: "second" },
      ],
    },
  });
});

test("the moment of a time unit keeps its spelling", () => {
  const result = parseUnits("hours since 2000-1-1T00:00 -6:00");
  if (!result.ok || !isTimeReference(result.value)) throw new Error("not read");
  expect(result.value.since).toMatchObject({
    word: "since",
    moment: { text: "2000-1-1T00:00 -6:00", separator: "T", zone: "-6:00", zoneMinutes: -360 },
  });
});

test("any text gives a result, never an exception", () => {
  const piece = fc.constantFrom(
    "m",
    "s",
    "-1",
    "2",
    " ",
    "/",
    ".",
    "*",
    "**",
    "^",
    "(",
    ")",
    "lg(re ",
    "since ",
    "1970-01-01",
    "12:00",
    "Z",
    "%",
    "@",
    "e5",
    "²",
    "deg",
    "k",
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(piece).map((pieces) => pieces.join("")),
      ),
      (text) => {
        const result = parseUnits(text);
        expect(typeof result.ok).toBe("boolean");
        if (!result.ok) expect(result.problems[0].where.column).toBeLessThanOrEqual(text.length + 1);
      },
    ),
    { numRuns: 2000 },
  );
});
