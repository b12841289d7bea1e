import { cfClause, defineRule } from "../../engine/rule.ts";

export const validRangeOnce = defineRule({
  id: "cf/valid-range-once",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("2.5.1"),
  covers: ["CF-2.5.1-R1"],
  title: "The valid range is given once: by valid_range, or by valid_min and valid_max",
  why: "Two statements of one range can disagree, and programs choose differently.",
  remedy: "Keep one of the two forms.",
  messages: { both: "{variable} has valid_range and {other}" },
  passing: [
    "variables: float t ; t:valid_min = 0.f ; t:valid_max = 9.f ;",
    "variables: float t ; t:valid_range = 0.f, 9.f ;",
  ],
  failing: [
    {
      cdl: "variables: float t ; t:valid_range = 0.f, 9.f ; t:valid_max = 9.f ;",
      where: { variable: "t", attribute: "valid_range" },
      message: "both",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const other = ["valid_min", "valid_max"].find((attribute) => variable.has(attribute));
      if (variable.has("valid_range") && other !== undefined)
        report({ variable: variable.name, attribute: "valid_range" }, "both", { fill: { other } });
    }
  },
});
