import { dayNumber } from "@wherry/core";
import { cfClause, defineRule } from "../../engine/rule.ts";
import { epochSeconds, timeVariables } from "./time-variable.ts";

const secondsOf = (year: number, month: number, day: number) =>
  dayNumber({ year, month, day }, "standard") * 86400;

/** First moments that a calendar allows. */
const FIRST: Readonly<Record<string, number>> = {
  utc: secondsOf(1972, 1, 1),
  tai: secondsOf(1958, 1, 1),
  standard: secondsOf(0, 1, 1),
  gregorian: secondsOf(0, 1, 1),
};

export const timeValues = defineRule({
  id: "cf/time-values",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("4.4.3"),
  editions: { since: "1.13" },
  covers: ["CF-4.4.3-R3"],
  title: "Times lie within what their calendar allows",
  why: "Leap seconds are not known before 1972 or ahead of now, so such times in utc have no definite meaning.",
  remedy: 'Correct the times of {variable}, or use the calendar "standard".',
  messages: {
    early: "{variable} has times before {expected}, the first moment of the calendar {calendar}",
    future: "{variable} has times later than now in the calendar {calendar}",
  },
  passing: [
    `dimensions: t = 2 ; variables: double t(t) ; t:units = "days since 2000-01-01" ; t:calendar = "utc" ; data: t = 0, 1 ;`,
    `dimensions: t = 2 ; variables: double t(t) ; t:units = "days since 1960-01-01" ; t:calendar = "standard" ; data: t = -900, 1 ;`,
  ],
  failing: [
    {
      cdl: `dimensions: t = 2 ; variables: double t(t) ; t:units = "s since 1972-01-01" ; t:calendar = "utc" ; data: t = -1, 1 ;`,
      where: { variable: "t" },
      message: "early",
    },
    {
      cdl: `dimensions: t = 2 ; variables: double t(t) ; t:units = "days since 2029-12-31" ; t:calendar = "utc" ; data: t = 0, 9 ;`,
      where: { variable: "t" },
      message: "future",
    },
  ],
  async check(dataset, report) {
    for (const time of timeVariables(dataset)) {
      const first = FIRST[time.calendar];
      if (!time.isCoordinate || first === undefined) continue;
      const seconds = await epochSeconds(dataset, time);
      if (seconds === null) continue;
      const early: number[] = [];
      const future: number[] = [];
      seconds.forEach((second, index) => {
        if (second < first) early.push(index);
        else if (time.calendar === "utc" && second > dataset.now) future.push(index);
      });
      const where = { variable: time.variable.name };
      const fill = { calendar: time.calendar };
      const expected =
        first === FIRST.standard ? "the year 0" : `${new Date(first * 1000).getUTCFullYear()}-01-01`;
      if (early.length > 0) report(where, "early", { places: early, expected, fill });
      if (future.length > 0) report(where, "future", { places: future, fill });
    }
  },
});
