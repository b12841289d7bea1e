import { sameDimension } from "@wherry/core";
import { cfClause, defineRule } from "../../engine/rule.ts";
import { isTimeReference, unitOf } from "../../engine/unit-kinds.ts";
import type { VariableView } from "../../engine/variable-view.ts";

/** Methods whose result is in the square of the unit (CF appendix E). */
const SQUARED = /\b(?:variance|sum_of_squares)\b/;

/** The unit that the standard name, its modifier and the cell methods ask for; null if nothing can be said. */
function wantedUnit(variable: VariableView, canonical: string): string | null {
  const modifier = variable.words("standard_name")[1];
  if (modifier === "status_flag") return null;
  if (modifier === "number_of_observations") return "1";
  const methods = (variable.text("cell_methods") ?? "").replace(/\([^)]*\)/g, "");
  return SQUARED.test(methods) ? `(${canonical})2` : canonical;
}

export const unitsCanonical = defineRule({
  id: "cf/units-canonical",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("3.1"),
  covers: ["CF-3.1-R5"],
  title: "Units can be converted to the canonical unit of the standard name",
  why: "A unit of another kind shows that the name or the unit is wrong.",
  remedy: "Correct units or standard_name of {variable}.",
  messages: { other: '{variable} is {name} in "{found}", which cannot be converted to "{expected}"' },
  passing: [
    `variables: float t ; t:standard_name = "sea_water_temperature" ; t:units = "degC" ;`,
    `variables: float p ; p:standard_name = "sea_water_pressure" ; p:units = "psi" ;`,
    `variables: double t ; t:standard_name = "time" ; t:units = "days since 1950-01-01" ;`,
    `variables: int n ; n:standard_name = "sea_water_temperature number_of_observations" ; n:units = "1" ;`,
    `variables: float v ; v:standard_name = "sea_water_temperature" ; v:units = "K2" ; v:cell_methods = "depth: variance" ;`,
  ],
  failing: [
    {
      cdl: `variables: float t ; t:standard_name = "sea_water_temperature" ; t:units = "m" ;`,
      where: { variable: "t", attribute: "units" },
      message: "other",
    },
    {
      // deci-barn is an area
      cdl: `variables: float p ; p:standard_name = "sea_water_pressure" ; p:units = "db" ;`,
      where: { variable: "p", attribute: "units" },
      message: "other",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const name = variable.standardName;
      const units = variable.text("units");
      if (name === undefined || units === undefined || isTimeReference(units)) continue;
      const entry = dataset.vocabulary.find(name);
      const canonical = entry?.units ?? "";
      const wanted = canonical === "" ? null : wantedUnit(variable, canonical);
      const unit = unitOf(units);
      const target = wanted === null ? null : unitOf(wanted);
      if (wanted === null || unit === null || target === null || sameDimension(unit, target)) continue;
      const where = { variable: variable.name, attribute: "units" };
      report(where, "other", { found: units, expected: wanted, fill: { name } });
    }
  },
});
