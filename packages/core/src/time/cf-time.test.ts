import fc from "fast-check";
import { expect, test } from "vitest";
import {
  cfCalendar,
  countsYearsOrMonths,
  dateValidity,
  epochToTime,
  parseTimeUnits,
  timeToEpoch,
} from "./cf-time.ts";

const read = (text: string, calendar?: string) => {
  const result = parseTimeUnits(text, calendar);
  if (!result.ok) throw new Error(result.problems[0].message);
  return result.value;
};

test("units are taken apart", () =>
  expect(read("hours since 2000-01-01 00:00:00 -6:00")).toMatchObject({
    word: "hours",
    prefix: "",
    entry: "hour",
    secondsPerUnit: 3600,
    shiftWord: "since",
    epochSeconds: Date.UTC(2000, 0, 1, 6) / 1000,
    reference: { zone: "-6:00", zoneMinutes: -360, hour: 0, separator: " " },
    calendar: "standard",
    strictForm: true,
  }));

// seconds from 1970-01-01 by Julian day numbers: 1950-01-01 is JDN 2433283, 0001-01-01 (Julian) 1721424,
// 0001-01-01 (Gregorian) 1721426, 1970-01-01 is 2440588
test.each([
  ["days since 1950-01-01", "standard", 2433283 - 2440588],
  ["days since 1950-01-01T00:00:00Z", "gregorian", 2433283 - 2440588],
  ["days since 1-1-1", "standard", 1721424 - 2440588],
  ["days since 1-1-1", "proleptic_gregorian", 1721426 - 2440588],
  ["days since 1-1-1", "JULIAN", 1721424 - 2440588],
  ["days since 0-1-1", "standard", 1721424 - 2440588],
])("%s in %s", (text, calendar, days) => expect(read(text, calendar).epochSeconds).toBe(days * 86400));

test.each([
  ["seconds since 1970-01-01 00:00:00", true],
  ["seconds since 1970-1-1", true],
  ["seconds since 1970-01-01 00:00:00 Z", true],
  ["seconds since 1970-01-01 00:00:00.0 +05:30", true],
  ["seconds since 1970-01-01T00:00:00", false],
  ["seconds since 1970-01-01 00:00:00Z", false],
  ["seconds since 1970-01-01 00:00:00 UTC", false],
  ["seconds since 1970-01-01 00:00:00 0:00", false],
  ["seconds since 1970-01-01 00:00:00 -0600", false],
  ["seconds since 1970-01", false],
  ["seconds since 19700101", false],
])("%s has the strict form: %s", (text, strict) => expect(read(text).strictForm).toBe(strict));

test.each([
  ["seconds", "standard", "time/no-reference"],
  ["m", "standard", "time/no-reference"],
  ["10 s since 1970-01-01", "standard", "time/no-reference"],
  ["fortnightly", "standard", "units/unknown"],
  ["days since 1970-01-01", "noleap", "time/calendar-not-computed"],
  ["days since 1970-01-01", "360_day", "time/calendar-not-computed"],
  ["days since 1970-01-01", "utc", "time/calendar-not-computed"],
  ["days since 1970-01-01", "lunar", "time/unknown-calendar"],
])("%s in %s: %s", (text, calendar, code) =>
  expect(parseTimeUnits(text, calendar)).toMatchObject({ ok: false, problems: [{ code }] }),
);

test.each([
  ["days since 2020-2-30", "standard", ["time/no-such-date"], Date.UTC(2020, 2, 1)],
  ["days since 2020-2-30", "proleptic_gregorian", ["time/no-such-date"], Date.UTC(2020, 2, 1)],
  ["days since 1582-10-10", "proleptic_gregorian", [], -141432 * 86400_000],
  ["days since 1582-10-10", "standard", ["time/no-such-date"], -141422 * 86400_000],
  ["days since 0-1-1", "standard", ["time/year-zero"], -719164 * 86400_000],
  ["days since -5-1-1", "standard", ["time/negative-year"], (1721424 - 6 * 365 - 2 - 2440588) * 86400_000],
])("%s in %s warns %j", (text, calendar, codes, milliseconds) => {
  const result = parseTimeUnits(text, calendar);
  expect(result.ok && result.warnings.map((warning) => warning.code)).toEqual(codes);
  expect(read(text, calendar).epochSeconds).toBe(milliseconds / 1000);
});

test.each([
  ["years since 2000-01-01", true],
  ["months since 2000-01-01", true],
  ["common_years since 2000-01-01", true],
  ["yr since 2000-01-01", true],
  ["days since 2000-01-01", false],
])("%s counts years or months: %s", (text, want) => expect(countsYearsOrMonths(read(text))).toBe(want));

test("a prefix is seen", () => {
  expect(read("ms since 2000-01-01").prefix).toBe("m");
  expect(read("kilodays since 2000-01-01")).toMatchObject({ prefix: "kilo", entry: "day" });
});

test("calendars of CF in any case", () => {
  expect(cfCalendar("Proleptic_Gregorian")).toMatchObject({ computed: "proleptic_gregorian" });
  expect(cfCalendar("tai")).toMatchObject({ computed: null, since: "1.12" });
  expect(cfCalendar("none")).toMatchObject({ computed: null });
  expect(cfCalendar("mayan")).toBeNull();
});

test.each([
  [0, "standard", "valid"],
  [-719165 * 86400, "standard", "year-zero"],
  [-719165 * 86400, "proleptic_gregorian", "valid"],
  [-720000 * 86400, "julian", "negative-year"],
] as const)("%d in %s is %s", (seconds, calendar, want) =>
  expect(dateValidity(seconds, calendar)).toBe(want),
);

test("values and moments go both ways", () => {
  const units = read("days since 1950-01-01");
  fc.assert(
    fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), (days) => {
      expect(Math.abs(epochToTime(timeToEpoch(days, units), units) - days)).toBeLessThan(1e-10);
    }),
  );
  expect(timeToEpoch(NaN, units)).toBeNaN();
});
