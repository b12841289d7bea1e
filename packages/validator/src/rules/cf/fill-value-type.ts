import { lengthOf } from "../../engine/attribute-value.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

export const fillValueType = defineRule({
  id: "cf/fill-value-type",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("2.5.1"),
  covers: ["CF-2.5.1-R2"],
  title: "_FillValue is one value of the variable's type",
  why: "A fill value of another type never equals what is stored, so missing values are taken for data.",
  remedy: "Store _FillValue of {variable} as one value of type {expected}.",
  messages: {
    type: "_FillValue of {variable} has the type {found}",
    several: "_FillValue of {variable} has {found} values",
  },
  passing: ["variables: float t ; t:_FillValue = -9.f ;", `variables: char c ; c:_FillValue = " " ;`],
  failing: [
    {
      cdl: "variables: float t ; double t:_FillValue = -9. ;",
      where: { variable: "t", attribute: "_FillValue" },
      message: "type",
    },
    {
      cdl: "variables: float t ; t:_FillValue = -9.f, -8.f ;",
      where: { variable: "t", attribute: "_FillValue" },
      message: "several",
    },
  ],
  check(dataset, report) {
    for (const { name, type, attributes } of dataset.all) {
      const fill = attributes.get("_FillValue");
      if (fill === undefined) continue;
      const where = { variable: name, attribute: "_FillValue" };
      if (fill.type !== type) report(where, "type", { found: fill.type, expected: type });
      else if (lengthOf(fill) !== 1) report(where, "several", { found: lengthOf(fill), expected: type });
    }
  },
});
