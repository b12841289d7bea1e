import { cfClause, defineRule } from "../../engine/rule.ts";
import { timeVariables } from "./time-variable.ts";

const DATE = "[+-]?\\d{1,7}-\\d{1,2}-\\d{1,2}";
const CLOCK = "\\s+\\d{1,2}(?::\\d{1,2}(?::\\d{1,2}(?:\\.\\d*)?)?)?";

/** 1.13: a zone is Z, or has a sign. */
const SIGNED = new RegExp(`^${DATE}(?:${CLOCK}(?:\\s*Z|\\s*[+-]\\d{1,2}(?::\\d{2})?)?)?$`);
/** 1.12: a zone is digits, with or without sign and colon; no names and no Z. */
const DIGITS = new RegExp(
  `^${DATE}(?:${CLOCK}(?:\\s*[+-]\\d{1,2}(?::?\\d{2})?|\\s+\\d{1,2}(?::?\\d{2})?)?)?$`,
);

export const timeOriginForm = defineRule({
  id: "cf/time-origin-form",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("4.4.2"),
  editions: {
    since: "1.12",
    levels: [{ until: "1.12", level: "warning" }],
    clauses: [{ until: "1.12", clause: "4.4.1" }],
  },
  covers: ["CF-4.4.2-R3"],
  title: "The moment is written as year-month-day, hour:minute:second and zone, with blanks between",
  why: "Programs that follow CF to the letter do not read other forms, such as a T between date and time.",
  remedy:
    'Write the moment of {variable} as in "seconds since 1970-01-01 00:00:00", with Z or a signed zone if any.',
  messages: { form: 'the moment in units of {variable} is written "{found}"' },
  passing: [
    ...["1970-01-01 00:00:00Z", "1970-1-1", "1970-01-01 00:00", "1970-01-01 00:00:00 +0:00"].map(
      (origin) => `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since ${origin}" ;`,
    ),
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 1970-01-01 0:0:0 0:00" ;`,
      edition: "1.12",
    },
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 1970-01-01T00:00:00Z" ;`,
      edition: "1.11",
    },
  ],
  failing: [
    ...[
      "1970-01-01T00:00:00Z",
      "1970-01-01 00:00:00 UTC",
      "1970-01-01 00:00:00 -0600",
      "1970-01-01 0:0:0 0:00",
    ].map((origin) => ({
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since ${origin}" ;`,
      where: { variable: "t", attribute: "units" },
      message: "form" as const,
    })),
    {
      cdl: `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 1970-01-01T00:00:00" ;`,
      edition: "1.12",
      where: { variable: "t", attribute: "units" },
      message: "form",
    },
  ],
  check(dataset, report) {
    const form = dataset.since("1.13") ? SIGNED : DIGITS;
    for (const { variable, origin, moment, isCoordinate } of timeVariables(dataset)) {
      // what cannot be read at all is reported by the rule on the moment
      if (moment === null || form.test(origin)) continue;
      const level = isCoordinate ? {} : { level: "warning" as const };
      report({ variable: variable.name, attribute: "units" }, "form", { found: origin, ...level });
    }
  },
});
