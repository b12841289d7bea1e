import { cfClause, defineRule } from "../../engine/rule.ts";
import { hasDate } from "./calendar-date.ts";
import { timeVariables } from "./time-variable.ts";

export const timeOrigin = defineRule({
  id: "cf/time-origin",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("4.4.3"),
  editions: {
    clauses: [
      { until: "1.11", clause: "4.4.1" },
      { until: "1.12", clause: "4.4.2" },
    ],
  },
  covers: ["CF-4.4.3-R4"],
  title: "The moment from which a time counts exists in its calendar",
  why: "Programs move a date that does not exist to another day, or refuse the file.",
  remedy: "Correct the date in units of {variable}.",
  messages: {
    unreadable: 'the moment in units of {variable}, "{found}", cannot be read as a date',
    none: 'the moment in units of {variable}, "{found}", is no date of the calendar {calendar}',
  },
  passing: [
    `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 2000-02-29" ;`,
    `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 2001-02-30" ; t:calendar = "360_day" ;`,
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 1950-01-01T00:00:00Z" ;`,
      edition: "1.6",
    },
  ],
  failing: [
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since last week" ;`,
      where: { variable: "t", attribute: "units" },
      message: "unreadable",
    },
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 2001-02-29" ;`,
      where: { variable: "t", attribute: "units" },
      message: "none",
    },
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 1582-10-10" ;`,
      where: { variable: "t", attribute: "units" },
      message: "none",
    },
  ],
  check(dataset, report) {
    for (const { variable, origin, moment, calendar, isCoordinate } of timeVariables(dataset)) {
      const where = { variable: variable.name, attribute: "units" };
      const level = isCoordinate ? {} : { level: "warning" as const };
      if (moment === null)
        report(where, "unreadable", { found: origin, expected: "year-month-day", ...level });
      else if (!hasDate(calendar, moment.year, moment.month, moment.day))
        report(where, "none", { found: origin, fill: { calendar }, ...level });
    }
  },
});
