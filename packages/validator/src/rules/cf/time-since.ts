import { cfClause, defineRule } from "../../engine/rule.ts";
import { timeVariables } from "./time-variable.ts";

export const timeSince = defineRule({
  id: "cf/time-since",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("4.4.2"),
  editions: {
    since: "1.11",
    clauses: [
      { until: "1.11", clause: "4.4" },
      { until: "1.12", clause: "4.4.1" },
    ],
  },
  covers: ["CF-4.4.2-A4"],
  title: "The word between unit and moment is since",
  why: "UDUNITS knows other words, most programs only this one.",
  remedy: "Write since in units of {variable}.",
  messages: { word: 'units of {variable} says "{found}"' },
  passing: [`dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 2000-01-01" ;`],
  failing: [
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days after 2000-01-01" ;`,
      where: { variable: "t", attribute: "units" },
      message: "word",
    },
  ],
  check(dataset, report) {
    for (const { variable, word } of timeVariables(dataset))
      if (word.toLowerCase() !== "since")
        report({ variable: variable.name, attribute: "units" }, "word", { found: word, expected: "since" });
  },
});
