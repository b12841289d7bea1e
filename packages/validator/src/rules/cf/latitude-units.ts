import { cfClause, defineRule } from "../../engine/rule.ts";
import { isNorthUnit } from "../../engine/unit-kinds.ts";

const SPELLINGS = ["degrees_north", "degree_north", "degree_N", "degrees_N", "degreeN", "degreesN"];

export const latitudeUnits = defineRule({
  id: "cf/latitude-units",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("4.1"),
  covers: ["CF-4.1-T6"],
  title: "A latitude carries one of the six unit spellings that CF accepts",
  why: "Software recognises latitude by these spellings; plain degrees name no direction.",
  remedy: "Set units of {variable} to degrees_north.",
  messages: {
    missing: "{variable} is a latitude without units",
    other: '{variable} is a latitude in "{found}"',
  },
  passing: SPELLINGS.map(
    (units) => `variables: double x ; x:standard_name = "latitude" ; x:units = "${units}" ;`,
  ),
  failing: [
    {
      cdl: `variables: double x ; x:standard_name = "latitude" ; x:units = "degrees" ;`,
      where: { variable: "x", attribute: "units" },
      message: "other",
    },
    {
      cdl: `variables: double x ; x:standard_name = "latitude" ; x:units = "Degrees_North" ;`,
      where: { variable: "x", attribute: "units" },
      message: "other",
    },
    {
      cdl: `variables: double x ; x:standard_name = "latitude" ;`,
      where: { variable: "x", attribute: "units" },
      message: "missing",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      if (variable.role === "bounds" || variable.text("standard_name")?.trim() !== "latitude") continue;
      const where = { variable: variable.name, attribute: "units" };
      const found = variable.text("units");
      if (found === undefined) report(where, "missing", { expected: SPELLINGS });
      else if (!isNorthUnit(found)) report(where, "other", { found, expected: SPELLINGS });
    }
  },
});
