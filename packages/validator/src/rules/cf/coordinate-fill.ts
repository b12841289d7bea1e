import { plainOf } from "../../engine/attribute-value.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

export const coordinateFill = defineRule({
  id: "cf/coordinate-fill",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("5"),
  covers: ["CF-5-R3"],
  title: "A coordinate variable has no fill value",
  why: "Each of its values must be there, so a value for missing ones has no use.",
  remedy: "Remove {attribute} from {variable}.",
  messages: { fill: "the coordinate variable {variable} has {attribute}" },
  passing: [
    `dimensions: z = 2 ; variables: float depth(z) ; depth:_FillValue = -9.f ; float t(z) ; t:coordinates = "depth" ;`,
  ],
  failing: [
    {
      cdl: "dimensions: z = 2 ; variables: float z(z) ; z:_FillValue = -9.f ;",
      where: { variable: "z", attribute: "_FillValue" },
      message: "fill",
    },
    {
      cdl: "dimensions: z = 2 ; variables: float z(z) ; z:missing_value = -9.f ;",
      where: { variable: "z", attribute: "missing_value" },
      message: "fill",
    },
  ],
  check(dataset, report) {
    for (const { name, isCoordinate, attributes } of dataset.all) {
      if (!isCoordinate) continue;
      for (const attribute of ["_FillValue", "missing_value"]) {
        const found = attributes.get(attribute);
        if (found !== undefined) report({ variable: name, attribute }, "fill", { found: plainOf(found) });
      }
    }
  },
});
