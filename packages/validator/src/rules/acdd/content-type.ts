import { defineRule } from "../../engine/rule.ts";
import { castCdl } from "./limits-example.ts";
import { kindOf, type VariableKind } from "./variable-kind.ts";

/** Code list of ISO 19115-1 and the word that ACDD adds. */
const WORDS = [
  "image",
  "thematicClassification",
  "physicalMeasurement",
  "auxiliaryInformation",
  "qualityInformation",
  "referenceInformation",
  "modelResult",
  "coordinate",
];

/** Words that fit each kind of variable; other kinds may have any. */
const FITTING: Partial<Record<VariableKind, readonly string[]>> = {
  coordinate: ["coordinate"],
  quantity: ["physicalMeasurement", "auxiliaryInformation"],
  statistic: ["auxiliaryInformation"],
  flag: ["qualityInformation"],
  class: ["thematicClassification", "qualityInformation", "auxiliaryInformation"],
};

const NEEDED: readonly VariableKind[] = ["coordinate", "quantity", "statistic", "flag", "class", "other"];

const withType = (line: string) => castCdl(':featureType = "profile" ;').replace("data:", `${line}\ndata:`);
const COORDINATES = ["time", "lat", "lon", "z"]
  .map((name) => `${name}:coverage_content_type = "coordinate" ;`)
  .join(" ");
const T = 't:standard_name = "sea_water_temperature" ;';
const where = { variable: "t", attribute: "coverage_content_type" };

export const contentType = defineRule({
  id: "acdd/content-type",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: { document: "ACDD", edition: "1.3", clause: "variable attributes, highly recommended" },
  covers: ["ACDD coverage_content_type"],
  title: "coverage_content_type tells measurements, coordinates and quality flags apart",
  why: "Catalogues list what was measured by this word; flags and coordinates must not appear among it.",
  remedy: "Set coverage_content_type of {variable} to {expected}.",
  messages: {
    missing: "{variable} has no coverage_content_type",
    unknown: 'coverage_content_type of {variable} is "{found}", which is no word of the list',
    other: 'coverage_content_type of {variable} is "{found}", but the variable is a {kind}',
  },
  passing: [withType(`${COORDINATES} ${T} t:coverage_content_type = "physicalMeasurement" ;`)],
  failing: [
    { cdl: withType(`${COORDINATES} ${T}`), where, message: "missing" },
    {
      cdl: withType(`${COORDINATES} ${T} t:coverage_content_type = "measurement" ;`),
      where,
      message: "unknown",
    },
    {
      cdl: withType(`${COORDINATES} ${T} t:coverage_content_type = "qualityInformation" ;`),
      where,
      message: "other",
    },
  ],
  check(dataset, report) {
    if (!dataset.holdsToAcdd) return;
    for (const variable of dataset.all) {
      const kind = kindOf(dataset, variable);
      const found = variable.text("coverage_content_type")?.trim();
      const place = { variable: variable.name, attribute: "coverage_content_type" };
      const fitting = FITTING[kind];
      const expected = fitting?.[0] ?? "auxiliaryInformation or referenceInformation";
      const asWord = WORDS.find((word) => word.toLowerCase() === found?.toLowerCase());
      if (found === undefined || found === "") {
        if (NEEDED.includes(kind)) report(place, "missing", { expected });
      } else if (asWord === undefined || asWord !== found)
        report(place, "unknown", {
          found,
          expected: WORDS,
          ...(asWord === undefined ? {} : { level: "warning" }),
        });
      else if (fitting !== undefined && !fitting.includes(found) && found !== "modelResult")
        report(place, "other", { found, expected, fill: { kind: kind === "flag" ? "quality flag" : kind } });
    }
  },
});
