import { plainOf } from "../../engine/attribute-value.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

const CALENDARS = [
  "standard",
  "gregorian",
  "proleptic_gregorian",
  "julian",
  "noleap",
  "365_day",
  "all_leap",
  "366_day",
  "360_day",
  "none",
];

export const calendarKnown = defineRule({
  id: "cf/calendar-known",
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
  covers: ["CF-4.4.3-R2"],
  title: "calendar is one that CF knows",
  why: "A program that does not know the calendar cannot turn the numbers into dates.",
  remedy: 'Set calendar of {variable} to "standard" unless the times are really in another one.',
  messages: {
    unknown: "calendar of {variable} is {found}",
    own: "calendar of {variable} is {found}, though month_lengths describes a calendar of its own",
  },
  passing: [
    `dimensions: t = 1 ; variables: double t(t) ; t:calendar = "Standard" ;`,
    `dimensions: t = 1 ; variables: double t(t) ; t:calendar = "utc" ;`,
    `dimensions: t = 1 ; variables: double t(t) ; t:calendar = "martian" ; t:month_lengths = 60, 60, 60, 60, 60, 60, 60, 60, 60, 60, 60, 8 ;`,
  ],
  failing: [
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:calendar = "standard" ; t:month_lengths = 60, 60, 60, 60, 60, 60, 60, 60, 60, 60, 60, 8 ;`,
      where: { variable: "t", attribute: "calendar" },
      message: "own",
    },
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:calendar = "utc" ;`,
      edition: "1.11",
      where: { variable: "t", attribute: "calendar" },
      message: "unknown",
    },
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:calendar = "GMT" ;`,
      where: { variable: "t", attribute: "calendar" },
      message: "unknown",
    },
  ],
  check(dataset, report) {
    const known = dataset.since("1.12") ? [...CALENDARS, "utc", "tai"] : CALENDARS;
    for (const variable of dataset.all) {
      const attribute = variable.attributes.get("calendar");
      if (attribute === undefined) continue;
      const text = variable.text("calendar")?.toLowerCase();
      if (variable.has("month_lengths")) {
        if (text !== undefined && known.includes(text))
          report({ variable: variable.name, attribute: "calendar" }, "own", { found: text });
        continue;
      }
      if (text === undefined || !known.includes(text))
        report({ variable: variable.name, attribute: "calendar" }, "unknown", {
          found: plainOf(attribute),
          expected: known,
        });
    }
  },
});
