import { cfClause, defineRule } from "../../engine/rule.ts";

export const missingValueEqualsFill = defineRule({
  id: "cf/missing-value-equals-fill",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("2.5.1"),
  covers: ["CF-2.5.1-A2"],
  title: "missing_value equals _FillValue where both are given",
  why: "Programs look at one or the other; with two values each of them takes some missing values for data.",
  remedy: "Give {variable} one value for missing data, in _FillValue.",
  messages: { other: "missing_value of {variable} is {found}, _FillValue is {expected}" },
  passing: ["variables: float t ; t:missing_value = -9.f ; t:_FillValue = -9.f ;"],
  failing: [
    {
      cdl: "variables: float t ; t:missing_value = -8.f ; t:_FillValue = -9.f ;",
      where: { variable: "t", attribute: "missing_value" },
      message: "other",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const fill = variable.numbers("_FillValue")?.[0];
      const missing = variable.numbers("missing_value");
      if (fill === undefined || missing === undefined) continue;
      if (missing.some((value) => !Object.is(value, fill)))
        report({ variable: variable.name, attribute: "missing_value" }, "other", {
          found: missing,
          expected: fill,
        });
    }
  },
});
