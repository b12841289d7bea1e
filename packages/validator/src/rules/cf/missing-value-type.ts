import { cfClause, defineRule } from "../../engine/rule.ts";

export const missingValueType = defineRule({
  id: "cf/missing-value-type",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("2.5.1"),
  covers: ["CF-2.5.1-R3"],
  title: "missing_value has the variable's type",
  why: "A missing value of another type may not equal what is stored, so missing values are taken for data.",
  remedy: "Store missing_value of {variable} with type {expected}.",
  messages: { type: "missing_value of {variable} has the type {found}" },
  passing: ["variables: float t ; t:missing_value = -9.f, -8.f ;"],
  failing: [
    {
      cdl: "variables: float t ; t:missing_value = -9 ;",
      where: { variable: "t", attribute: "missing_value" },
      message: "type",
    },
  ],
  check(dataset, report) {
    for (const { name, type, attributes } of dataset.all) {
      const missing = attributes.get("missing_value");
      if (missing === undefined || missing.type === type) continue;
      const where = { variable: name, attribute: "missing_value" };
      report(where, "type", { found: missing.type, expected: type });
    }
  },
});
