import { sameDimension } from "@wherry/core";
import { cfClause, defineRule } from "../../engine/rule.ts";

/** Reported by the rules on each kind of coordinate. */
const COORDINATES = ["latitude", "longitude", "time"];

export const unitsPresent = defineRule({
  id: "cf/units-present",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("3.1"),
  covers: ["CF-3.1-R1"],
  title: "A quantity with a dimension has units",
  why: "Without a unit a number means nothing: decibar or kilopascal, millisiemens or siemens.",
  remedy: "Add the attribute units to {variable}; the table of standard names has {expected} for it.",
  messages: { missing: "{variable} is {name} but has no units" },
  passing: [
    `variables: float t ; t:standard_name = "sea_water_temperature" ; t:units = "degC" ;`,
    `variables: byte q ; q:standard_name = "sea_water_temperature status_flag" ;`,
    `variables: byte q ; q:standard_name = "quality_flag" ;`,
    `variables: float s ; s:standard_name = "sea_water_salinity" ;`,
  ],
  failing: [
    {
      cdl: `variables: float c ; c:standard_name = "sea_water_electrical_conductivity" ;`,
      where: { variable: "c", attribute: "units" },
      message: "missing",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      if (variable.isText || variable.role === "bounds" || variable.has("units")) continue;
      const [name, modifier] = variable.words("standard_name");
      if (name === undefined || COORDINATES.includes(name)) continue;
      if (variable.axis === "Z" || modifier === "status_flag" || modifier === "number_of_observations")
        continue;
      const units = dataset.vocabulary.find(name)?.units ?? "";
      // without units a number counts as dimensionless, whatever its scale
      if (units === "" || sameDimension(units, "1")) continue;
      report({ variable: variable.name, attribute: "units" }, "missing", { expected: units, fill: { name } });
    }
  },
});
