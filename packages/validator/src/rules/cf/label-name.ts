import { cfClause, defineRule } from "../../engine/rule.ts";

export const labelName = defineRule({
  id: "cf/label-name",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("2.5"),
  editions: { since: "1.12" },
  covers: ["CF-2.5-R1"],
  title: "A text variable does not bear the name of its dimension",
  why: "A variable named as its dimension is a coordinate variable, which must be numeric and monotonic.",
  remedy: "Give {variable} another name, for example {variable}_name, and name it in `coordinates`.",
  messages: { same: "the text variable {variable} has the name of its dimension" },
  passing: [
    "dimensions: cast = 2 ; n = 4 ; variables: char cast_name(cast, n) ;",
    { cdl: "dimensions: cast = 2 ; n = 4 ; variables: char cast(cast, n) ;", edition: "1.11" },
  ],
  failing: [
    {
      cdl: "dimensions: cast = 2 ; n = 4 ; variables: char cast(cast, n) ;",
      where: { variable: "cast" },
      message: "same",
    },
  ],
  check(dataset, report) {
    for (const { name, isText, dimensions } of dataset.all)
      if (isText && dimensions.length === 1 && dimensions[0] === name) report({ variable: name }, "same");
  },
});
