import { cfClause, defineRule } from "../../engine/rule.ts";
import { involvesTemperature } from "../../engine/unit-kinds.ts";

export const temperatureMetadata = defineRule({
  id: "cf/temperature-metadata",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("3.1.2"),
  editions: { since: "1.11" },
  covers: ["CF-3.1-A2"],
  title: "A unit with temperature in it says whether it is on a scale or a difference",
  why: "10 degC on the scale is 283.15 K, a difference of 10 degC is 10 K: a program cannot know which.",
  remedy:
    'Add units_metadata = "temperature: on_scale" (a temperature) or "temperature: difference" to {variable}.',
  messages: { missing: '{variable} in "{found}" has no units_metadata' },
  passing: [
    `variables: float t ; t:units = "degC" ; t:units_metadata = "temperature: on_scale" ;`,
    { cdl: `variables: float t ; t:units = "degC" ;`, edition: "1.10" },
  ],
  failing: [
    {
      cdl: `variables: float t ; t:units = "degC" ;`,
      where: { variable: "t", attribute: "units_metadata" },
      message: "missing",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const found = variable.text("units");
      if (variable.role === "bounds" || variable.has("units_metadata") || !involvesTemperature(found))
        continue;
      const where = { variable: variable.name, attribute: "units_metadata" };
      report(where, "missing", {
        found: found ?? "",
        expected: "temperature: on_scale or temperature: difference",
      });
    }
  },
});
