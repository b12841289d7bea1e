import { cfClause, defineRule } from "../../engine/rule.ts";
import { isTimeReference } from "../../engine/unit-kinds.ts";

export const timeReference = defineRule({
  id: "cf/time-reference",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("4.4.2"),
  editions: {
    clauses: [
      { until: "1.11", clause: "4.4" },
      { until: "1.12", clause: "4.4.1" },
    ],
  },
  covers: ["CF-4.4.2-R1", "CF-4.4.1-T10"],
  title: "The units of a time coordinate count from a moment",
  why: "A number of seconds alone is no time; the moment from which they count makes it one.",
  remedy: 'Set units of {variable} to the form "seconds since 1970-01-01 00:00:00".',
  messages: {
    missing: "{variable} is a time without units",
    other: '{variable} is a time in "{found}", which names no moment to count from',
  },
  passing: [
    `dimensions: t = 2 ; variables: double t(t) ; t:standard_name = "time" ; t:units = "days since 2000-01-01" ;`,
  ],
  failing: [
    {
      cdl: `dimensions: t = 2 ; variables: double t(t) ; t:standard_name = "time" ;`,
      where: { variable: "t", attribute: "units" },
      message: "missing",
    },
    {
      cdl: `dimensions: t = 2 ; variables: double t(t) ; t:standard_name = "time" ; t:units = "days" ;`,
      where: { variable: "t", attribute: "units" },
      message: "other",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.coordinates) {
      if (variable.standardName !== "time" && variable.axis !== "T") continue;
      if (variable.words("standard_name").length > 1) continue;
      const where = { variable: variable.name, attribute: "units" };
      const found = variable.text("units");
      if (!variable.has("units")) report(where, "missing", { expected: "<unit> since <date>" });
      else if (found !== undefined && !isTimeReference(found))
        report(where, "other", { found, expected: "<unit> since <date>" });
    }
  },
});
