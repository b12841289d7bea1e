import { cfClause, defineRule } from "../../engine/rule.ts";

export const globalOnly = defineRule({
  id: "cf/global-only",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("2.6.2"),
  covers: ["CF-2.6.2-A1"],
  title: "title and history belong to the file, not to a variable",
  why: "They tell of the whole data set; on a variable programs do not look for them.",
  remedy: "Move {attribute} to the global attributes, or use comment.",
  messages: { variable: "{variable} has the attribute {attribute}" },
  passing: [`:title = "any" ;`],
  failing: [
    {
      cdl: `variables: float t ; t:title = "any" ;`,
      where: { variable: "t", attribute: "title" },
      message: "variable",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all)
      for (const attribute of ["title", "history"])
        if (variable.has(attribute)) report({ variable: variable.name, attribute }, "variable");
  },
});
