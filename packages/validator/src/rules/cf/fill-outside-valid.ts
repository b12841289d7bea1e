import { cfClause, defineRule } from "../../engine/rule.ts";
import { validRange } from "./valid-range.ts";

export const fillOutsideValid = defineRule({
  id: "cf/fill-outside-valid",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("2.5.1"),
  covers: ["CF-2.5.1-A1"],
  title: "The fill value lies outside the valid range",
  why: "A fill value within the range looks like a measurement to programs that only test the range.",
  remedy: "Choose a fill value outside the valid range of {variable}.",
  messages: { inside: "_FillValue {found} of {variable} lies within its valid range, {expected}" },
  passing: ["variables: float t ; t:_FillValue = -9.f ; t:valid_min = 0.f ; t:valid_max = 9.f ;"],
  failing: [
    {
      cdl: "variables: float t ; t:_FillValue = 5.f ; t:valid_range = 0.f, 9.f ;",
      where: { variable: "t", attribute: "_FillValue" },
      message: "inside",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const fill = variable.numbers("_FillValue")?.[0];
      const range = validRange(variable);
      if (fill === undefined || range === null || !(fill >= range.min && fill <= range.max)) continue;
      const where = { variable: variable.name, attribute: "_FillValue" };
      report(where, "inside", { found: fill, expected: `${range.min} to ${range.max}` });
    }
  },
});
