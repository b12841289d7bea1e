import { cfClause, defineRule } from "../../engine/rule.ts";
import { timeVariables } from "./time-variable.ts";

const CDL = `dimensions: t = 1 ; variables: double t(t) ; t:units = "s since 2016-12-31 23:59:60" ; t:calendar = "standard" ;`;
const where = { variable: "t", attribute: "units" };

export const leapSecondOrigin = defineRule({
  id: "cf/leap-second-origin",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("4.4.3"),
  editions: {
    since: "1.9",
    levels: [{ until: "1.12", level: "error" }],
    clauses: [
      { until: "1.11", clause: "4.4.1" },
      { until: "1.12", clause: "4.4.2" },
    ],
  },
  covers: ["CF-4.4.3-A5", "CF-OLD-4"],
  title: "Times do not count from within a leap second",
  why: "Most programs have no such second and take it for another one.",
  remedy: "Count from another moment.",
  messages: { leap: 'units of {variable} counts from second 60: "{found}"' },
  passing: [
    `dimensions: t = 1 ; variables: double t(t) ; t:units = "s since 2016-12-31 23:59:59" ; t:calendar = "standard" ;`,
    { cdl: CDL, edition: "1.8" },
  ],
  failing: [
    { cdl: CDL, where, message: "leap" },
    { cdl: CDL, edition: "1.11", where, message: "leap", level: "error" },
  ],
  check(dataset, report) {
    // 1.12 alone took out the calendar that has such seconds
    for (const { variable, moment, units, calendar } of timeVariables(dataset))
      if (moment !== null && moment.second >= 60 && !(calendar === "utc" && dataset.edition === "1.12"))
        report({ variable: variable.name, attribute: "units" }, "leap", { found: units });
  },
});
