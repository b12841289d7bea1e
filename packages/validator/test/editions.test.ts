import { parseCdl } from "@wherry/netcdf";
import { describe, expect, test } from "vitest";
import { checkDataset, type Edition, type Level } from "../src/index.ts";

/**
 * What was legal in one edition and is not in another. Source: the lists of requirements and the chapters of CF 1.6 to
 * 1.13, compared edition by edition.
 */
const TIME = (attributes: string) =>
  `dimensions: t = 1 ; variables: double t(t) ; t:standard_name = "time" ; ${attributes} data: t = 1 ;`;
const ORIGIN = (origin: string) => TIME(`t:units = "seconds since ${origin}" ; t:calendar = "standard" ;`);
const LABEL = "dimensions: cast = 1 ; n = 2 ; variables: char cast(cast, n) ;";
const SERIES = `:featureType = "timeSeries" ; dimensions: s = 1 ; o = 2 ; variables: double t(s, o) ;
  t:units = "s since 2000-01-01" ; t:calendar = "standard" ; float x(s, o) ; x:coordinates = "t" ; data: t = 1, 1 ;`;

type Row = readonly [what: string, cdl: string, rule: string, levels: Partial<Record<Edition, Level | null>>];

const ROWS: readonly Row[] = [
  [
    "T between date and time",
    ORIGIN("1970-01-01T00:00:00Z"),
    "cf/time-origin-form",
    { "1.6": null, "1.11": null, "1.12": "warning", "1.13": "error" },
  ],
  [
    "UTC behind the time",
    ORIGIN("1970-01-01 00:00:00 UTC"),
    "cf/time-origin-form",
    { "1.11": null, "1.12": "warning", "1.13": "error" },
  ],
  [
    "a zone without sign",
    ORIGIN("1970-01-01 00:00:00 0:00"),
    "cf/time-origin-form",
    { "1.11": null, "1.12": null, "1.13": "error" },
  ],
  [
    "a zone of four digits",
    ORIGIN("1970-01-01 00:00:00 -0600"),
    "cf/time-origin-form",
    { "1.11": null, "1.12": null, "1.13": "error" },
  ],
  [
    "a zone other than UTC",
    ORIGIN("1970-01-01 00:00:00 -6:00"),
    "cf/time-zone",
    { "1.6": null, "1.12": null, "1.13": "warning" },
  ],
  [
    "calendar gregorian",
    TIME('t:units = "s since 2000-01-01" ; t:calendar = "gregorian" ;'),
    "cf/calendar-present",
    { "1.8": null, "1.9": "warning", "1.13": "warning" },
  ],
  [
    "no calendar",
    TIME('t:units = "s since 2000-01-01" ;'),
    "cf/calendar-present",
    { "1.8": null, "1.9": "warning" },
  ],
  [
    "calendar utc",
    TIME('t:units = "s since 2000-01-01" ; t:calendar = "utc" ;'),
    "cf/calendar-known",
    { "1.11": "error", "1.12": null },
  ],
  [
    "equal times in a series",
    SERIES,
    "cf/feature-times",
    { "1.6": "warning", "1.10": "warning", "1.11": "error" },
  ],
  [
    "a label with the name of its dimension",
    LABEL,
    "cf/label-name",
    { "1.6": null, "1.11": null, "1.12": "error" },
  ],
  [
    "ppmv beside a standard name",
    'variables: float x ; x:units = "ppmv" ; x:standard_name = "mole_fraction_of_carbon_dioxide_in_air" ;',
    "cf/units-parts-per",
    { "1.10": null, "1.11": "error" },
  ],
  [
    "modifier status_flag",
    'variables: byte q ; q:standard_name = "sea_water_temperature status_flag" ;',
    "cf/modifier-deprecated",
    { "1.6": null, "1.7": "warning" },
  ],
  [
    "a temperature without units_metadata",
    'variables: float t ; t:units = "degC" ;',
    "cf/temperature-metadata",
    { "1.10": null, "1.11": "warning" },
  ],
  ["letters in pieces", ':title = "Mu\u0308ndung" ;', "cf/text-encoding", { "1.11": null, "1.12": "error" }],
  [
    "string attributes",
    'string :title = "any" ;',
    "cf/string-attribute-old",
    { "1.6": "error", "1.7": "error", "1.8": "advice", "1.9": null },
  ],
  ["unsigned integers", "variables: uint n ;", "cf/data-types-old", { "1.8": "error", "1.9": null }],
  [
    "more names in Conventions",
    ':Conventions = "CF-1.6, ACDD-1.3" ;',
    "cf/conventions-alone",
    { "1.6": "advice", "1.7": null },
  ],
  [
    "a wrong actual_range",
    "variables: float t ; t:actual_range = 1.f, 2.f ; data: t = 5 ;",
    "cf/actual-range",
    { "1.6": null, "1.7": "error" },
  ],
  [
    "names with a hyphen",
    "variables: float a-b ;",
    "cf/names",
    { "1.6": "error", "1.7": "error", "1.8": "warning" },
  ],
  [
    "months",
    TIME('t:units = "months since 2000-01-01" ; t:calendar = "standard" ;'),
    "cf/time-unit",
    { "1.6": "advice", "1.12": "advice", "1.13": "warning" },
  ],
  [
    "chapter 9 before it existed",
    ':featureType = "cast" ;',
    "cf/feature-type",
    { "1.5": null, "1.6": "error" },
  ],
];

describe("rules hold in the editions in which they stand", () => {
  test.each(
    ROWS.flatMap(([what, cdl, rule, levels]) =>
      Object.entries(levels).map(([edition, level]) => ({
        what,
        cdl,
        rule,
        edition: edition as Edition,
        level,
      })),
    ),
  )("$what in CF $edition: $level", async ({ cdl, rule, edition, level }) => {
    const parsed = parseCdl(cdl);
    if (!parsed.ok) throw new Error(parsed.problems[0].message);
    const findings = await checkDataset(parsed.value, {
      path: "a.nc",
      edition,
      now: 1.9e9,
      ruleSets: ["cf"],
    });
    const own = findings.filter((finding) => finding.rule === rule);
    expect(own.map((finding) => finding.level)).toEqual(level === null ? [] : [level]);
    for (const { citation } of own) expect(citation?.edition).toBe(edition);
  });
});

test("the section number is that of the edition", async () => {
  const parsed = parseCdl(TIME('t:units = "days" ;'));
  if (!parsed.ok) throw new Error("no CDL");
  const clauses: string[] = [];
  for (const edition of ["1.6", "1.12", "1.13"] as const) {
    const findings = await checkDataset(parsed.value, { path: "a.nc", edition, now: 0, ruleSets: ["cf"] });
    clauses.push(findings.find(({ rule }) => rule === "cf/time-reference")?.citation?.clause ?? "");
  }
  expect(clauses).toEqual(["4.4", "4.4.1", "4.4.2"]);
});
