import { plainOf } from "../../engine/attribute-value.ts";
import { axisFromUnits, isAxis } from "../../engine/axis.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

const KINDS = { X: "longitude", Y: "latitude", Z: "vertical", T: "time" } as const;

export const axisValue = defineRule({
  id: "cf/axis-value",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("4"),
  covers: ["CF-4-R2", "CF-4-R3"],
  title: "axis is X, Y, Z or T and agrees with the units",
  why: "Two statements on what a coordinate is must not contradict each other.",
  remedy: "Correct axis or units of {variable}.",
  messages: {
    value: "axis of {variable} is {found}",
    units: 'axis of {variable} is "{found}", its units "{units}" are those of a {kind} coordinate',
  },
  passing: [
    `dimensions: x = 2 ; variables: double x(x) ; x:axis = "x" ; x:units = "km" ;`,
    `dimensions: z = 2 ; variables: double z(z) ; z:axis = "Z" ; z:units = "dbar" ;`,
  ],
  failing: [
    {
      cdl: `dimensions: x = 2 ; variables: double x(x) ; x:axis = "lon" ;`,
      where: { variable: "x", attribute: "axis" },
      message: "value",
    },
    {
      cdl: `dimensions: x = 2 ; variables: double x(x) ; x:axis = "X" ; x:units = "degrees_north" ;`,
      where: { variable: "x", attribute: "axis" },
      message: "units",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const attribute = variable.attributes.get("axis");
      if (attribute === undefined) continue;
      const where = { variable: variable.name, attribute: "axis" };
      const axis = variable.text("axis")?.toUpperCase() ?? "";
      const units = variable.text("units") ?? "";
      if (!isAxis(axis)) {
        report(where, "value", { found: plainOf(attribute), expected: "X, Y, Z or T" });
        continue;
      }
      const told = axisFromUnits(variable.text("units"), variable.text("positive"));
      if (told !== null && told !== axis)
        report(where, "units", { found: axis, expected: told, fill: { units, kind: KINDS[told] } });
    }
  },
});
