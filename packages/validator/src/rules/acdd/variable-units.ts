import { sameDimension } from "@wherry/core";
import { defineRule } from "../../engine/rule.ts";
import { kindOf } from "./variable-kind.ts";

export const variableUnits = defineRule({
  id: "acdd/units",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: { document: "ACDD", edition: "1.3", clause: "variable attributes, highly recommended" },
  covers: ["ACDD units"],
  title: "Quantities have units, numbers without dimension the unit 1",
  why: "A catalogue cannot show or convert a quantity without its unit.",
  remedy: 'Add units to {variable}, "1" for a number without dimension.',
  messages: { missing: "{variable} has no units" },
  passing: [
    `dimensions: n = 2 ; variables: float s(n) ; s:standard_name = "sea_water_practical_salinity" ; s:units = "1" ;`,
  ],
  failing: [
    {
      cdl: `dimensions: n = 2 ; variables: float s(n) ; s:standard_name = "sea_water_practical_salinity" ;`,
      where: { variable: "s", attribute: "units" },
      message: "missing",
    },
  ],
  check(dataset, report) {
    if (!dataset.holdsToAcdd) return;
    for (const variable of dataset.all) {
      const kind = kindOf(dataset, variable);
      if (variable.has("units") || (kind !== "quantity" && kind !== "statistic")) continue;
      const canonical = dataset.vocabulary.find(variable.standardName ?? "")?.units;
      // a dimensional quantity without units is an error of CF already, a name without a unit has none
      if (
        canonical === "" ||
        (canonical !== undefined && kind === "quantity" && !sameDimension(canonical, "1"))
      )
        continue;
      report({ variable: variable.name, attribute: "units" }, "missing", { expected: canonical ?? "1" });
    }
  },
});
