import type { DatasetView } from "../../engine/dataset-view.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";
import { type TimeVariable, timeVariables } from "./time-variable.ts";

/** Calendars that leave open whether leap seconds are counted. */
const OPEN = ["standard", "gregorian", "proleptic_gregorian", "julian"];
const WORDS = ["leap_seconds: none", "leap_seconds: utc", "leap_seconds: unknown"];

const coordinates = (dataset: DatasetView): TimeVariable[] =>
  timeVariables(dataset).filter(({ isCoordinate }) => isCoordinate);

const time = (attributes: string) =>
  `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 2000-01-01" ; ${attributes}`;

export const leapSecondsPlace = defineRule({
  id: "cf/leap-seconds-place",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("4.4.3"),
  editions: { since: "1.12", until: "1.12" },
  covers: ["CF-OLD-6"],
  title: "units_metadata of a time tells of leap seconds, in a calendar that leaves them open",
  why: "In other calendars the word contradicts the calendar or means nothing.",
  remedy: "Remove units_metadata from {variable}, or write one of: {expected}.",
  messages: {
    calendar: "{variable} has units_metadata, though its calendar is {found}",
    word: 'units_metadata of {variable} is "{found}"',
  },
  passing: [
    { cdl: time('t:calendar = "standard" ; t:units_metadata = "leap_seconds: none" ;'), edition: "1.12" },
    time('t:calendar = "360_day" ; t:units_metadata = "leap_seconds: none" ;'),
  ],
  failing: [
    {
      cdl: time('t:calendar = "360_day" ; t:units_metadata = "leap_seconds: none" ;'),
      edition: "1.12",
      where: { variable: "t", attribute: "units_metadata" },
      message: "calendar",
    },
    {
      cdl: time('t:units_metadata = "temperature: on_scale" ;'),
      edition: "1.12",
      where: { variable: "t", attribute: "units_metadata" },
      message: "word",
    },
  ],
  check(dataset, report) {
    for (const { variable, calendar } of coordinates(dataset)) {
      if (!variable.has("units_metadata")) continue;
      const where = { variable: variable.name, attribute: "units_metadata" };
      const found = variable.text("units_metadata") ?? "no text";
      if (!OPEN.includes(calendar)) report(where, "calendar", { found: calendar, expected: WORDS });
      else if (!WORDS.includes(found)) report(where, "word", { found, expected: WORDS });
    }
  },
});

export const leapSecondsPresent = defineRule({
  id: "cf/leap-seconds-present",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("4.4.3"),
  editions: { since: "1.12", until: "1.12" },
  covers: ["CF-OLD-7"],
  title: "A time coordinate tells whether leap seconds are counted",
  why: "CF 1.12 left it open in the usual calendars; CF 1.13 settled it and asks no more.",
  remedy: 'Set units_metadata of {variable} to "leap_seconds: none", or write the file to CF 1.13.',
  messages: { missing: "the time coordinate {variable} has no units_metadata" },
  passing: [
    { cdl: time('t:units_metadata = "leap_seconds: unknown" ;'), edition: "1.12" },
    { cdl: time('t:calendar = "tai" ;'), edition: "1.12" },
    time(""),
  ],
  failing: [
    {
      cdl: time(""),
      edition: "1.12",
      where: { variable: "t", attribute: "units_metadata" },
      message: "missing",
    },
  ],
  check(dataset, report) {
    for (const { variable, calendar } of coordinates(dataset))
      if (OPEN.includes(calendar) && !variable.has("units_metadata"))
        report({ variable: variable.name, attribute: "units_metadata" }, "missing", { expected: WORDS });
  },
});
