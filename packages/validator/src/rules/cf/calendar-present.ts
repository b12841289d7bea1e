import { cfClause, defineRule } from "../../engine/rule.ts";
import { isTimeReference } from "../../engine/unit-kinds.ts";

export const calendarPresent = defineRule({
  id: "cf/calendar-present",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("4.4.3"),
  editions: {
    since: "1.9",
    clauses: [
      { until: "1.11", clause: "4.4.1" },
      { until: "1.12", clause: "4.4.2" },
    ],
  },
  covers: ["CF-4.4.3-A1", "CF-4.4.3-A3"],
  title: "A time coordinate names its calendar, and the usual one is called standard",
  why: "Without the word, programs differ in the calendar that they take.",
  remedy: 'Set calendar of {variable} to "standard".',
  messages: {
    missing: "the time coordinate {variable} has no calendar",
    old: "calendar of {variable} is {found}, the old word for standard",
  },
  passing: [
    `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 2000-01-01" ; t:calendar = "standard" ;`,
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 2000-01-01" ;`,
      edition: "1.8",
    },
  ],
  failing: [
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 2000-01-01" ;`,
      where: { variable: "t", attribute: "calendar" },
      message: "missing",
    },
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 2000-01-01" ; t:calendar = "gregorian" ;`,
      where: { variable: "t", attribute: "calendar" },
      message: "old",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.coordinates) {
      if (variable.axis !== "T" || !isTimeReference(variable.text("units"))) continue;
      const where = { variable: variable.name, attribute: "calendar" };
      const found = variable.text("calendar");
      if (!variable.has("calendar")) report(where, "missing", { expected: "standard" });
      else if (found?.toLowerCase() === "gregorian") report(where, "old", { found, expected: "standard" });
    }
  },
});
