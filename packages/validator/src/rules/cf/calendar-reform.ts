import { dayNumber } from "@wherry/core";
import { cfClause, defineRule } from "../../engine/rule.ts";
import { spanOf } from "../../engine/span.ts";
import { epochSeconds, timeVariables } from "./time-variable.ts";

/** 1582-10-15, the first day of the Gregorian calendar. */
const REFORM = dayNumber({ year: 1582, month: 10, day: 15 }, "standard") * 86400;

const days = (origin: string, values: string) =>
  `dimensions: t = 2 ; variables: double t(t) ; t:units = "days since ${origin}" ; t:calendar = "standard" ; data: t = ${values} ;`;

export const calendarReform = defineRule({
  id: "cf/calendar-reform",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("4.4.3"),
  editions: {
    clauses: [
      { until: "1.11", clause: "4.4.1" },
      { until: "1.12", clause: "4.4.2" },
    ],
  },
  covers: ["CF-4.4.3-A4"],
  title: "Times do not reach across the change of calendar in October 1582",
  why: "Ten days were left out then; programs that forget it are ten days off on one side.",
  remedy: "Count from a moment on the same side, such as 1970-01-01, or use proleptic_gregorian.",
  messages: {
    origin: "units of {variable} counts from a moment before October 1582 to times after it: {found}",
    values: "the times of {variable} lie on both sides of October 1582",
  },
  passing: [
    days("1970-01-01", "0, 1"),
    { cdl: days("0001-01-01", "730000, 730001"), edition: "1.12" },
    days("0001-01-01", "730000, 730001").replace('"standard"', '"proleptic_gregorian"'),
  ],
  failing: [
    {
      cdl: days("0001-01-01", "730000, 730001"),
      where: { variable: "t", attribute: "units" },
      message: "origin",
    },
    { cdl: days("1582-10-01", "0, 30"), edition: "1.12", where: { variable: "t" }, message: "values" },
  ],
  async check(dataset, report) {
    for (const time of timeVariables(dataset)) {
      const { variable, moment, calendar, units } = time;
      if (moment === null || !["standard", "gregorian"].includes(calendar) || !time.isCoordinate) continue;
      const seconds = await epochSeconds(dataset, time);
      if (seconds === null) continue;
      const [first, last] = spanOf(seconds.filter((second) => !Number.isNaN(second)));
      if (first > last) continue;
      // up to 1.12 only the values were spoken of
      if (first < REFORM && last >= REFORM) report({ variable: variable.name }, "values");
      else if (dataset.since("1.13") && moment.epochSeconds < REFORM && last >= REFORM)
        report({ variable: variable.name, attribute: "units" }, "origin", { found: units });
    }
  },
});
