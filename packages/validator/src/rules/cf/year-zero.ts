import { cfClause, defineRule } from "../../engine/rule.ts";
import { timeVariables } from "./time-variable.ts";

export const yearZero = defineRule({
  id: "cf/year-zero",
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
  covers: ["CF-4.4.3-A2", "CF-OLD-8"],
  title: "Times do not count from the year 0",
  why: "The standard calendar has no year 0, so programs disagree by a year.",
  remedy: "Count from a year that exists, for example 1970.",
  messages: { zero: 'units of {variable} counts from the year 0: "{found}"' },
  passing: [`dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 0001-01-01" ;`],
  failing: [
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 0000-01-01" ;`,
      where: { variable: "t", attribute: "units" },
      message: "zero",
    },
  ],
  check(dataset, report) {
    for (const { variable, moment, calendar, units } of timeVariables(dataset))
      if (moment?.year === 0 && ["standard", "gregorian", "julian"].includes(calendar))
        report({ variable: variable.name, attribute: "units" }, "zero", { found: units });
  },
});
