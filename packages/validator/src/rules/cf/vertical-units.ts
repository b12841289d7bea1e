import { VERTICAL_SENSE } from "../../engine/axis.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

export const verticalUnits = defineRule({
  id: "cf/vertical-units",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("4.3.1"),
  covers: ["CF-4.3.1-T9"],
  title: "A vertical coordinate with a dimension has units",
  why: "Metres, feet or decibars: without a unit nobody knows how deep.",
  remedy: "Add units to {variable}.",
  messages: { missing: "{variable} is {name} but has no units" },
  passing: [
    `dimensions: z = 2 ; variables: float z(z) ; z:standard_name = "depth" ; z:units = "m" ;`,
    // a number of levels needs none
    `dimensions: z = 2 ; variables: float z(z) ; z:axis = "Z" ;`,
  ],
  failing: [
    {
      cdl: `dimensions: z = 2 ; variables: float z(z) ; z:standard_name = "depth" ;`,
      where: { variable: "z", attribute: "units" },
      message: "missing",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.coordinates) {
      const name = variable.standardName ?? "";
      const known = VERTICAL_SENSE.has(name) || name.includes("pressure");
      if (variable.axis === "Z" && known && !variable.has("units"))
        report({ variable: variable.name, attribute: "units" }, "missing", { fill: { name } });
    }
  },
});
