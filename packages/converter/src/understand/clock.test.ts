import { expect, test } from "vitest";
import { findMoments, momentOfCell, secondsOf } from "./clock.ts";

const dates = (text: string) =>
  findMoments(text).flatMap((moment) =>
    moment.dates.map(({ order, year, month, day }) => `${order} ${year}-${month}-${day}`),
  );
const clock = (text: string) => {
  const [moment] = findMoments(text);
  return moment && [moment.secondOfDay, moment.zone?.minutes];
};

// ISO 8601 and common practice, no source; the readings are by eye
test.each([
  ["2023-06-02", ["year-month-day 2023-6-2"]],
  ["20230602", ["year-month-day 2023-6-2"]],
  ["20/07/2023", ["day-month-year 2023-7-20"]],
  ["07/20/2023", ["month-day-year 2023-7-20"]],
  ["02.06.2023", ["day-month-year 2023-6-2", "month-day-year 2023-2-6"]],
  ["07/01/24", ["day-month-year 2024-1-7", "month-day-year 2024-7-1", "year-month-day 2007-1-24"]],
  ["08-Aug-2023", ["day-month-year 2023-8-8"]],
  ["8. März 2023", ["day-month-year 2023-3-8"]],
  ["3 août 2023", ["day-month-year 2023-8-3"]],
  ["2 de junho de 2023", ["day-month-year 2023-6-2"]],
  ["Sept 3, 2023", ["month-day-year 2023-9-3"]],
  ["31/04/2023", []],
  ["29/02/2023", []],
  ["29/02/2024", ["day-month-year 2024-2-29"]],
  ["version 1.2.3", []],
  ["51-12-20 N", []],
  ["16.755,14.739", []],
])("date %j", (text, want) => expect(dates(text)).toEqual(want));

test.each<[string, [number, number[] | undefined]]>([
  ["2023-06-02T08:30:00Z", [30_600, [0]]],
  ["2023-06-02 08:30:00,250", [30_600.25, undefined]],
  ["20230614T071200Z", [25_920, [0]]],
  ["9 SEP 2022 0909Z", [32_940, [0]]],
  ["14:05 (UTC+2)", [50_700, [120]]],
  ["2024-03-15 10:30:00 +09:30", [37_800, [570]]],
  ["8. März 2023 um 10.15 Uhr MESZ", [36_900, [120]]],
  ["3 août 2023 à 14h05", [50_700, undefined]],
  ["2023-06-02 12:00 AM", [0, undefined]],
  ["2023-06-02 12:00 PM", [43_200, undefined]],
  ["2023-06-02 10:00 BST", [36_000, [60, 360]]],
  ["2023-06-02 10:00 -34.5", [36_000, undefined]],
])("time of day %j", (text, want) => expect(clock(text)).toEqual(want));

test.each(["13:00 PM", "25:00", "10:61", "12.5", "", "a 10:00", "10:00 and more"])(
  "%j is no cell of a time",
  (text) => expect(momentOfCell(text)).toBeNull(),
);

test("seconds of a date", () =>
  // POSIX.1-2017, section 4.16, Seconds Since the Epoch
  expect([
    secondsOf({ year: 1970, month: 1, day: 1 }, 0),
    secondsOf({ year: 2000, month: 3, day: 1 }, 1),
  ]).toEqual([0, 951_868_801]));
