import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatIsoDuration, parseIsoDuration } from "./iso-duration.ts";
import { formatIsoTime, parseIsoTime } from "./iso-time.ts";

const read = (text: string) => {
  const result = parseIsoTime(text);
  return result.ok ? result.value : result.problems[0].code;
};

describe("parseIsoTime", () => {
  // RFC 3339, section 5.8: each example and the moment it names in UTC
  test.each([
    ["1985-04-12T23:20:50.52Z", Date.UTC(1985, 3, 12, 23, 20, 50, 520), 0],
    ["1996-12-19T16:39:57-08:00", Date.UTC(1996, 11, 20, 0, 39, 57), -480],
    ["1990-12-31T23:59:60Z", Date.UTC(1991, 0, 1), 0],
    ["1990-12-31T15:59:60-08:00", Date.UTC(1991, 0, 1), -480],
    ["1937-01-01T12:00:27.87+00:20", Date.UTC(1937, 0, 1, 11, 40, 27, 870), 20],
  ])("%s", (text, milliseconds, zoneMinutes) => {
    const time = read(text);
    if (typeof time === "string") throw new Error(time);
    expect(time.epochSeconds).toBeCloseTo(milliseconds / 1000, 6);
    expect(time.zoneMinutes).toBe(zoneMinutes);
  });

  test("a leap second is read with a warning", () =>
    expect(parseIsoTime("1990-12-31T23:59:60Z")).toMatchObject({ warnings: [{ code: "time/leap-second" }] }));

  // ISO 8601:2004 examples: 12 April 1985 in 4.1.2 to 4.1.4, and the week dates of 4.1.4.1 about the turn of a year
  test.each([
    ["1985-04-12", "1985-04-12T00:00:00Z", "day"],
    ["19850412", "1985-04-12T00:00:00Z", "day"],
    ["1985-102", "1985-04-12T00:00:00Z", "day"],
    ["1985102", "1985-04-12T00:00:00Z", "day"],
    ["1985-W15-5", "1985-04-12T00:00:00Z", "day"],
    ["1985W155", "1985-04-12T00:00:00Z", "day"],
    ["1985-04", "1985-04-01T00:00:00Z", "month"],
    ["1985", "1985-01-01T00:00:00Z", "year"],
    ["+001985-04-12", "1985-04-12T00:00:00Z", "day"],
    ["2009-W01-1", "2008-12-29T00:00:00Z", "day"],
    ["2009-W53-7", "2010-01-03T00:00:00Z", "day"],
    ["1985-04-12T10:15:30", "1985-04-12T10:15:30Z", "second"],
    ["19850412T101530", "1985-04-12T10:15:30Z", "second"],
    ["1985-04-12 10:15", "1985-04-12T10:15:00Z", "minute"],
    ["1985-04-12t10:15:30z", "1985-04-12T10:15:30Z", "second"],
    ["19850412T1015Z", "1985-04-12T10:15:00Z", "minute"],
    ["1985-04-12T10Z", "1985-04-12T10:00:00Z", "hour"],
    ["1985-04-12T24:00:00", "1985-04-13T00:00:00Z", "second"],
    ["1985-04-12T23:20,5", "1985-04-12T23:20:30Z", "minute"],
    ["1985-04-12T10:15:30+0400", "1985-04-12T06:15:30Z", "second"],
    ["1985-04-12T10:15:30+04", "1985-04-12T06:15:30Z", "second"],
    ["0000-03-01", "0000-03-01T00:00:00Z", "day"],
    ["-000001-01-01", "-000001-01-01T00:00:00Z", "day"],
  ])("%s", (text, want, precision) => {
    const time = read(text);
    if (typeof time === "string") throw new Error(time);
    expect(formatIsoTime(time.epochSeconds)).toBe(want);
    expect(time.precision).toBe(precision);
  });

  test("without a zone the zone is not known", () =>
    expect(read("1985-04-12T10:15:30")).toMatchObject({ zoneMinutes: null }));

  test.each([
    ["", "not-iso"],
    ["yesterday", "not-iso"],
    ["12.04.1985", "not-iso"],
    ["04/12/1985", "not-iso"],
    ["1985-4-12", "not-iso"],
    ["1985-04-12  10:15", "not-iso"],
    ["1985-04-12T", "not-iso"],
    ["1985-04-12T10:15:30 UTC", "not-iso"],
    ["1985-04-12T1:15", "not-iso"],
    ["1985-02-29", "no-such-date"],
    ["1985-13-01", "no-such-date"],
    ["1985-366", "no-such-date"],
    ["2010-W53-1", "no-such-date"],
    ["1985-W15-8", "no-such-date"],
    ["1985-04-12T25:00", "no-such-clock"],
    ["1985-04-12T24:00:01", "no-such-clock"],
    ["1985-04-12T10:60", "no-such-clock"],
    ["1985-04-12T10:15:60Z", "no-such-clock"],
    ["1985-04-12T10:15:30+25:00", "no-such-clock"],
    ["1985-04-12T10:15:30+01:75", "no-such-clock"],
  ])("%j: %s", (text, code) => expect(read(text)).toBe(`time/${code}`));
});

describe("formatIsoTime", () => {
  test.each([
    [0, undefined, "1970-01-01T00:00:00Z"],
    [-0.5, undefined, "1969-12-31T23:59:59.5Z"],
    [1714979289, undefined, "2024-05-06T07:08:09Z"],
    [1714979289.25, undefined, "2024-05-06T07:08:09.25Z"],
    [1714979289.25, 0, "2024-05-06T07:08:09Z"],
    [1714979289.25, 3, "2024-05-06T07:08:09.250Z"],
    [59.9999999, undefined, "1970-01-01T00:01:00Z"],
    [86399.9996, 3, "1970-01-02T00:00:00.000Z"],
    [253402300800, undefined, "+010000-01-01T00:00:00Z"],
  ])("%d with %s decimals", (seconds, decimals, want) => expect(formatIsoTime(seconds, decimals)).toBe(want));

  test("equals the language's own form for any millisecond", () => {
    const moment = fc.date({
      min: new Date(-62167219200000),
      max: new Date(253402300799999),
      noInvalidDate: true,
    });
    fc.assert(
      fc.property(moment, (date) => {
        expect(formatIsoTime(date.getTime() / 1000, 3)).toBe(date.toISOString());
        const back = read(date.toISOString());
        if (typeof back === "string") throw new Error(back);
        expect(Math.abs(back.epochSeconds - date.getTime() / 1000)).toBeLessThan(1e-4);
      }),
    );
  });

  test.each([NaN, Infinity])("%d is no moment", (seconds) =>
    expect(() => formatIsoTime(seconds)).toThrow(RangeError),
  );
});

describe("durations", () => {
  test.each([
    [0, "PT0S"],
    [0.5, "PT0.5S"],
    [90, "PT1M30S"],
    [3600, "PT1H"],
    [86400, "P1D"],
    [93784, "P1DT2H3M4S"],
    [59.9999999, "PT1M"],
  ])("%d s is %s", (seconds, text) => expect(formatIsoDuration(seconds)).toBe(text));

  test.each([
    ["P2W", 14 * 86400],
    ["PT0,5H", 1800],
    ["P0Y1D", 86400],
    ["PT36H", 129600],
  ])("%s", (text, seconds) => expect(parseIsoDuration(text)).toMatchObject({ ok: true, value: seconds }));

  test.each([
    ["P", "not-a-duration"],
    ["PT", "not-a-duration"],
    ["P1DT", "not-a-duration"],
    ["1H", "not-a-duration"],
    ["PT1.5H30M", "not-a-duration"],
    ["P1M", "nominal-duration"],
    ["P1Y", "nominal-duration"],
  ])("%s: %s", (text, code) =>
    expect(parseIsoDuration(text)).toMatchObject({ ok: false, problems: [{ code: `time/${code}` }] }),
  );

  test("what is written is read back to the microsecond", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e8, noNaN: true }), (seconds) => {
        const back = parseIsoDuration(formatIsoDuration(seconds));
        if (!back.ok) throw new Error(back.problems[0].message);
        expect(Math.abs(back.value - seconds)).toBeLessThan(6e-7);
      }),
    );
  });

  test.each([-1, NaN, Infinity])("%d is no duration", (seconds) =>
    expect(() => formatIsoDuration(seconds)).toThrow(RangeError),
  );
});
