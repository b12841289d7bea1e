import { cfClause, defineRule } from "../../engine/rule.ts";
import { timeVariables } from "./time-variable.ts";

export const timeUnit = defineRule({
  id: "cf/time-unit",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("4.4.2"),
  editions: {
    levels: [{ until: "1.12", level: "advice" }],
    clauses: [
      { until: "1.11", clause: "4.4" },
      { until: "1.12", clause: "4.4.1" },
    ],
  },
  covers: ["CF-4.4.2-A1", "CF-4.4.2-A2", "CF-4.4.2-A3"],
  title: "Times count in seconds, minutes, hours or days",
  why: "A year of UDUNITS is 365.2422 days and a month a twelfth of it: the dates that come out are not those meant.",
  remedy: "Count in days or seconds.",
  messages: {
    calendar: '{variable} counts in "{found}", which is no calendar month or year',
    prefix: '{variable} counts in "{found}": decimal prefixes belong to seconds only',
    second: '{variable} counts in "{found}" in the calendar utc, where only seconds have a fixed length',
  },
  passing: [
    `dimensions: t = 1 ; variables: double t(t) ; t:units = "milliseconds since 2000-01-01" ;`,
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "kdays since 2000-01-01" ;`,
      edition: "1.12",
    },
  ],
  failing: [
    ...(["months", "years", "common_years"] as const).map((unit) => ({
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "${unit} since 2000-01-01" ;`,
      where: { variable: "t", attribute: "units" },
      message: "calendar" as const,
    })),
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "kdays since 2000-01-01" ;`,
      where: { variable: "t", attribute: "units" },
      message: "prefix",
    },
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 2000-01-01" ; t:calendar = "utc" ;`,
      where: { variable: "t", attribute: "units" },
      message: "second",
    },
  ],
  check(dataset, report) {
    for (const { variable, unit, calendar } of timeVariables(dataset)) {
      const part = unit?.parts.find(({ kind }) => kind === "name");
      if (part?.kind !== "name") continue;
      const where = { variable: variable.name, attribute: "units" };
      const detail = { found: part.text, expected: "seconds, minutes, hours or days" };
      if (/year|month/i.test(part.entry)) report(where, "calendar", detail);
      else if (!dataset.since("1.13")) continue;
      else if (part.prefix !== "" && part.entry !== "second") report(where, "prefix", detail);
      else if (calendar === "utc" && part.entry !== "second") report(where, "second", detail);
    }
  },
});
