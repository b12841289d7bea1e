import { cfClause, defineRule } from "../../engine/rule.ts";
import { involvesTemperature, isTimeReference } from "../../engine/unit-kinds.ts";

const TEMPERATURE = ["temperature: on_scale", "temperature: difference", "temperature: unknown"];
const LEAP_SECONDS = ["leap_seconds: none", "leap_seconds: utc", "leap_seconds: unknown"];

export const unitsMetadata = defineRule({
  id: "cf/units-metadata",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("3.1.2"),
  editions: { since: "1.11" },
  covers: ["CF-3.1-R4", "CF-3.1-R8"],
  title: "units_metadata is one of the words of CF and fits the units",
  why: "It tells whether degrees are on a scale or a difference, so programs act on its exact words.",
  remedy: "Write one of: {expected}.",
  messages: {
    word: 'units_metadata of {variable} is "{found}"',
    temperature: 'units_metadata of {variable} speaks of temperature, its units "{units}" do not',
    time: 'units_metadata of {variable} speaks of leap seconds, its units "{units}" are no time since a moment',
  },
  passing: [
    `variables: float t ; t:units = "degC" ; t:units_metadata = "temperature: on_scale" ;`,
    { cdl: `variables: float t ; t:units = "degC" ; t:units_metadata = "any" ;`, edition: "1.10" },
  ],
  failing: [
    [`t:units = "degC" ; t:units_metadata = "on_scale"`, "word"] as const,
    [`t:units = "m" ; t:units_metadata = "temperature: on_scale"`, "temperature"] as const,
    [`t:units = "s" ; t:units_metadata = "leap_seconds: none"`, "time"] as const,
  ].map(([cdl, message]) => ({
    cdl: `variables: float t ; ${cdl} ;`,
    where: { variable: "t", attribute: "units_metadata" },
    message,
  })),
  check(dataset, report) {
    const words = dataset.since("1.12") ? [...TEMPERATURE, ...LEAP_SECONDS] : TEMPERATURE;
    for (const variable of dataset.all) {
      if (!variable.has("units_metadata")) continue;
      const where = { variable: variable.name, attribute: "units_metadata" };
      const found = variable.text("units_metadata") ?? "no text";
      const units = variable.text("units");
      const detail = { found, expected: words, fill: { units: units ?? "" } };
      if (!words.includes(found)) report(where, "word", detail);
      else if (TEMPERATURE.includes(found) && !involvesTemperature(units))
        report(where, "temperature", detail);
      else if (LEAP_SECONDS.includes(found) && !isTimeReference(units)) report(where, "time", detail);
    }
  },
});
