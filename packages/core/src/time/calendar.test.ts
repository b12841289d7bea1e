import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Calendar, civilDate, dayNumber, lenientDayNumber } from "./calendar.ts";

const calendars: Calendar[] = ["standard", "proleptic_gregorian", "julian"];

describe("dayNumber", () => {
  test.each([
    { date: [1970, 1, 1], calendar: "standard", days: 0, from: "definition" },
    // JDN 0 began at noon of that day; JD 2440587.5 is 1970-01-01T00:00Z
    { date: [-4712, 1, 1], calendar: "julian", days: -2440588, from: "Julian day 0: 1 January 4713 BC" },
    {
      date: [-4713, 11, 24],
      calendar: "proleptic_gregorian",
      days: -2440588,
      from: "the same day, Gregorian",
    },
    { date: [2000, 1, 1], calendar: "standard", days: 2451545 - 2440588, from: "J2000.0 is JD 2451545.0" },
    { date: [1858, 11, 17], calendar: "standard", days: 2400001 - 2440588, from: "MJD 0 is JD 2400000.5" },
    {
      date: [1582, 10, 4],
      calendar: "standard",
      days: 2299160 - 2440588,
      from: "last Julian day, JDN 2299160",
    },
    {
      date: [1582, 10, 15],
      calendar: "standard",
      days: 2299161 - 2440588,
      from: "first Gregorian day, JDN 2299161",
    },
    { date: [1, 1, 1], calendar: "standard", days: -719164, from: "program udunits2" },
    {
      date: [1, 1, 1],
      calendar: "proleptic_gregorian",
      days: -719162,
      from: "Python date.toordinal, 719163",
    },
    {
      date: [1900, 3, 1],
      calendar: "julian",
      days: 2415021 + 72 - 2440588,
      from: "1900-03-14 Gregorian; 1900-01-01 is JDN 2415021",
    },
  ] as const)("$from", ({ date: [year, month, day], calendar, days }) => {
    expect(dayNumber({ year, month, day }, calendar)).toBe(days);
  });

  test.each([
    [1582, 10, 5, "standard"],
    [1582, 10, 14, "standard"],
    [1900, 2, 29, "standard"],
    [1900, 2, 29, "proleptic_gregorian"],
    [2024, 2, 30, "julian"],
    [2024, 13, 1, "standard"],
    [2024, 0, 1, "standard"],
    [2024, 1, 0, "standard"],
    [2024, 1, 1.5, "standard"],
    [NaN, 1, 1, "standard"],
  ] as const)("there is no %d-%d-%d in %s", (year, month, day, calendar) => {
    expect(dayNumber({ year, month, day }, calendar)).toBeNaN();
  });

  test.each([
    [1500, 2, 29, "standard"],
    [1500, 2, 29, "julian"],
    [1582, 10, 10, "julian"],
    [2000, 2, 29, "standard"],
    [0, 2, 29, "proleptic_gregorian"],
  ] as const)("there is a %d-%d-%d in %s", (year, month, day, calendar) => {
    expect(dayNumber({ year, month, day }, calendar)).not.toBeNaN();
  });
});

test("days and dates are one to one, and dates follow each other", () => {
  const days = fc.integer({ min: -3_000_000, max: 3_000_000 });
  fc.assert(
    fc.property(days, fc.constantFrom(...calendars), (n, calendar) => {
      expect(dayNumber(civilDate(n, calendar), calendar)).toBe(n);
      const [a, b] = [civilDate(n, calendar), civilDate(n + 1, calendar)];
      const reform = a.year === 1582 && a.month === 10 && a.day === 4;
      if (b.month === a.month) expect(b.day - a.day).toBe(reform && calendar === "standard" ? 11 : 1);
      else expect(b.day).toBe(1);
    }),
  );
});

test("agrees with the language's own calendar", () => {
  const moment = fc.date({
    min: new Date(-62135596800000),
    max: new Date(253402300799000),
    noInvalidDate: true,
  });
  fc.assert(
    fc.property(moment, (date) => {
      const days = Math.floor(date.getTime() / 86400000);
      expect(civilDate(days, "proleptic_gregorian")).toEqual({
        year: date.getUTCFullYear(),
        month: date.getUTCMonth() + 1,
        day: date.getUTCDate(),
      });
    }),
  );
});

// program udunits2, release 2.2.28
test.each([
  [
    { year: 2020, month: 2, day: 30 },
    { year: 2020, month: 3, day: 1 },
  ],
  [
    { year: 0, month: 1, day: 1 },
    { year: 1, month: 1, day: 1 },
  ],
  [
    { year: 1999, month: 2, day: 29 },
    { year: 1999, month: 3, day: 1 },
  ],
])("%j is read as %j where days may run over", (lenient, strict) => {
  expect(lenientDayNumber(lenient)).toBe(dayNumber(strict, "standard"));
});
