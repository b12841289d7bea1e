import { cfClause, defineRule } from "../../engine/rule.ts";
import { isPressure, unitOf } from "../../engine/unit-kinds.ts";

export const verticalPositive = defineRule({
  id: "cf/vertical-positive",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("4.3"),
  covers: ["CF-4.3-T8"],
  title: "A vertical coordinate that is no pressure has positive",
  why: "5 m can be above or below; without positive a program must guess.",
  remedy: 'Add positive = "down" (depths) or "up" (heights) to {variable}.',
  messages: { missing: '{variable} is a vertical coordinate in "{found}" without positive' },
  passing: [
    `dimensions: z = 2 ; variables: float z(z) ; z:standard_name = "depth" ; z:units = "m" ; z:positive = "down" ;`,
    `dimensions: z = 2 ; variables: float z(z) ; z:axis = "Z" ; z:units = "dbar" ;`,
  ],
  failing: [
    {
      cdl: `dimensions: z = 2 ; variables: float z(z) ; z:standard_name = "depth" ; z:units = "m" ;`,
      where: { variable: "z", attribute: "positive" },
      message: "missing",
    },
    {
      // auxiliary coordinates are named in the text since 1.7
      cdl: `dimensions: n = 2 ; variables: float z(n) ; z:standard_name = "depth" ; z:units = "m" ; float t(n) ; t:coordinates = "z" ;`,
      edition: "1.6",
      where: { variable: "z", attribute: "positive" },
      message: "missing",
      level: "warning",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.coordinates) {
      const found = variable.text("units");
      if (variable.axis !== "Z" || variable.has("positive") || variable.has("formula_terms")) continue;
      if (found === undefined || unitOf(found) === null || isPressure(found)) continue;
      const softer =
        variable.role === "auxiliary" && dataset.until("1.6") ? { level: "warning" as const } : {};
      report({ variable: variable.name, attribute: "positive" }, "missing", {
        found,
        expected: "up or down",
        ...softer,
      });
    }
  },
});
