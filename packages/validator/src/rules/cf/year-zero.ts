import { dayNumber } from "@wherry/core";
import { cfClause, defineRule } from "../../engine/rule.ts";
import { epochSeconds, timeVariables } from "./time-variable.ts";

/** The year 0 in the standard calendar, where Julian rules hold so early. */
const FIRST = dayNumber({ year: 0, month: 1, day: 1 }, "standard") * 86_400;
const LAST = dayNumber({ year: 1, month: 1, day: 1 }, "standard") * 86_400;

const IN_YEAR_ZERO =
  'dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 0001-01-01" ; data: t = -100 ;';

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
  messages: {
    zero: 'units of {variable} counts from the year 0: "{found}"',
    values: "{variable} has times in the year 0",
  },
  passing: [
    `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 0001-01-01" ;`,
    { cdl: IN_YEAR_ZERO, edition: "1.8" },
  ],
  failing: [
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 0000-01-01" ;`,
      where: { variable: "t", attribute: "units" },
      message: "zero",
    },
    { cdl: IN_YEAR_ZERO, where: { variable: "t" }, message: "values" },
  ],
  async check(dataset, report) {
    for (const time of timeVariables(dataset)) {
      const { variable, moment, calendar, units } = time;
      if (!["standard", "gregorian", "julian"].includes(calendar)) continue;
      if (moment?.year === 0)
        report({ variable: variable.name, attribute: "units" }, "zero", { found: units });
      // the values were spoken of since 1.9
      if (!dataset.since("1.9") || !time.isCoordinate) continue;
      const seconds = (await epochSeconds(dataset, time)) ?? [];
      const places = Array.from(seconds.keys()).filter((i) => seconds[i]! >= FIRST && seconds[i]! < LAST);
      if (places.length > 0) report({ variable: variable.name }, "values", { places });
    }
  },
});
