import { cfClause, defineRule } from "../../engine/rule.ts";
import { timeVariables } from "./time-variable.ts";

export const timeZone = defineRule({
  id: "cf/time-zone",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("4.4.2"),
  editions: { since: "1.13" },
  covers: ["CF-4.4.2-R2", "CF-4.4.2-A5"],
  title: "Times count from a moment in UTC",
  why: "An offset in the units is easily overlooked, and the times are then wrong by hours.",
  remedy: "Write the moment of {variable} in UTC.",
  messages: { offset: 'the moment in units of {variable} has the zone {found}: "{units}"' },
  passing: [
    `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 1970-01-01 00:00:00 +00:00" ;`,
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 1970-01-01 00:00 -6:00" ;`,
      edition: "1.12",
    },
  ],
  failing: [
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 1970-01-01 00:00:00 -6:00" ;`,
      where: { variable: "t", attribute: "units" },
      message: "offset",
    },
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "s since 1980-01-01 00:00:00 +1" ; t:calendar = "utc" ;`,
      where: { variable: "t", attribute: "units" },
      message: "offset",
      level: "error",
    },
  ],
  check(dataset, report) {
    for (const { variable, moment, calendar, units } of timeVariables(dataset)) {
      if (moment === null || moment.zoneMinutes === 0) continue;
      // with these two calendars it is a requirement
      const level = calendar === "utc" || calendar === "tai" ? { level: "error" as const } : {};
      report({ variable: variable.name, attribute: "units" }, "offset", {
        found: moment.zone ?? "",
        fill: { units },
        ...level,
      });
    }
  },
});
