import { cfClause, defineRule } from "../../engine/rule.ts";
import { isEastUnit } from "../../engine/unit-kinds.ts";

const SPELLINGS = ["degrees_east", "degree_east", "degree_E", "degrees_E", "degreeE", "degreesE"];

export const longitudeUnits = defineRule({
  id: "cf/longitude-units",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("4.2"),
  covers: ["CF-4.2-T7"],
  title: "A longitude carries one of the six unit spellings that CF accepts",
  why: "Software recognises longitude by these spellings; plain degrees name no direction.",
  remedy: "Set units of {variable} to degrees_east.",
  messages: {
    missing: "{variable} is a longitude without units",
    other: '{variable} is a longitude in "{found}"',
  },
  passing: SPELLINGS.map(
    (units) => `variables: double x ; x:standard_name = "longitude" ; x:units = "${units}" ;`,
  ),
  failing: [
    {
      cdl: `variables: double x ; x:standard_name = "longitude" ; x:units = "degrees" ;`,
      where: { variable: "x", attribute: "units" },
      message: "other",
    },
    {
      cdl: `variables: double x ; x:standard_name = "longitude" ; x:units = "Degrees_East" ;`,
      where: { variable: "x", attribute: "units" },
      message: "other",
    },
    {
      cdl: `variables: double x ; x:standard_name = "longitude" ;`,
      where: { variable: "x", attribute: "units" },
      message: "missing",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      if (variable.role === "bounds" || variable.text("standard_name")?.trim() !== "longitude") continue;
      const where = { variable: variable.name, attribute: "units" };
      const found = variable.text("units");
      if (found === undefined) report(where, "missing", { expected: SPELLINGS });
      else if (!isEastUnit(found)) report(where, "other", { found, expected: SPELLINGS });
    }
  },
});
