import { defineRule } from "../../engine/rule.ts";
import { kindOf, plainQuantity } from "./variable-kind.ts";

export const variableStandardName = defineRule({
  id: "acdd/standard-name",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: { document: "ACDD", edition: "1.3", clause: "variable attributes, highly recommended" },
  covers: ["ACDD standard_name"],
  title: "Coordinates and the usual quantities have a standard name",
  why: "A machine knows what a variable is by its standard name only.",
  remedy: "Set standard_name of {variable}, for example to {expected}.",
  messages: {
    coordinate: "the coordinate {variable} has no standard_name",
    quantity: "{variable} seems to be {expected} but has no standard_name",
    flag: "the quality flag {variable} has no standard_name",
  },
  passing: [
    `variables: float t ; t:units = "degC" ; t:standard_name = "sea_water_temperature" ;`,
    `variables: float offset ; offset:units = "m" ;`,
  ],
  failing: [
    {
      cdl: `variables: double x ; x:units = "degrees_north" ; float t ; t:coordinates = "x" ; t:standard_name = "sea_water_temperature" ;`,
      where: { variable: "x", attribute: "standard_name" },
      message: "coordinate",
    },
    {
      cdl: `dimensions: n = 2 ; variables: float conductivity(n) ; conductivity:units = "mS/cm" ;`,
      where: { variable: "conductivity", attribute: "standard_name" },
      message: "quantity",
    },
    {
      cdl: `variables: float t ; t:standard_name = "sea_water_temperature" ; t:ancillary_variables = "q" ; byte q ; q:flag_values = 1b ; q:flag_meanings = "good" ;`,
      where: { variable: "q", attribute: "standard_name" },
      message: "flag",
      level: "warning",
    },
  ],
  check(dataset, report) {
    if (!dataset.holdsToAcdd) return;
    const names = { X: "longitude", Y: "latitude", Z: "depth", T: "time" } as const;
    for (const variable of dataset.all) {
      if (variable.has("standard_name")) continue;
      const where = { variable: variable.name, attribute: "standard_name" };
      const kind = kindOf(dataset, variable);
      const plain = plainQuantity(variable);
      if (kind === "coordinate" && variable.axis !== null)
        report(where, "coordinate", { expected: names[variable.axis] });
      else if (kind === "quantity" && plain !== null) report(where, "quantity", { expected: plain });
      else if (kind === "flag")
        report(where, "flag", { expected: "aggregate_quality_flag", level: "warning" });
    }
  },
});
