import { cfClause, defineRule } from "../../engine/rule.ts";
import { involvesTemperature } from "../../engine/unit-kinds.ts";

const DIFFERENCE = "temperature: difference";
const SPREAD = /:\s*(?:range|standard_deviation|variance)\b/;

export const differenceMetadata = defineRule({
  id: "cf/difference-metadata",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("3.1.2"),
  editions: { since: "1.11" },
  covers: ["CF-3.1-R6", "CF-3.1-R7"],
  title: "Spreads and standard errors of temperatures are differences",
  why: "A spread of 1 degC is 1 K; taken for a value on the scale it would become 274 K.",
  remedy: `Set units_metadata of {variable} to "${DIFFERENCE}".`,
  messages: {
    error: 'the standard error {variable} says "{found}"',
    spread: 'the spread {variable} says "{found}"',
  },
  passing: [
    `variables: float t ; t:units = "K" ; t:cell_methods = "depth: range" ; t:units_metadata = "temperature: difference" ;`,
    `variables: float t ; t:units = "K" ; t:cell_methods = "depth: mean" ; t:units_metadata = "temperature: on_scale" ;`,
  ],
  failing: [
    {
      cdl: `variables: float t ; t:units = "K" ; t:standard_name = "sea_water_temperature standard_error" ; t:units_metadata = "temperature: on_scale" ;`,
      where: { variable: "t", attribute: "units_metadata" },
      message: "error",
    },
    {
      cdl: `variables: float t ; t:units = "K" ; t:cell_methods = "depth: standard_deviation" ; t:units_metadata = "temperature: on_scale" ;`,
      where: { variable: "t", attribute: "units_metadata" },
      message: "spread",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const found = variable.text("units_metadata");
      if (found === undefined || found === DIFFERENCE || !involvesTemperature(variable.text("units")))
        continue;
      const where = { variable: variable.name, attribute: "units_metadata" };
      const methods = (variable.text("cell_methods") ?? "").replace(/\([^)]*\)/g, "");
      if (variable.words("standard_name")[1] === "standard_error")
        report(where, "error", { found, expected: DIFFERENCE });
      else if (SPREAD.test(methods)) report(where, "spread", { found, expected: DIFFERENCE });
    }
  },
});
