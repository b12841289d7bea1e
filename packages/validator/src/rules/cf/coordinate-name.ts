import { cfClause, defineRule } from "../../engine/rule.ts";

export const coordinateName = defineRule({
  id: "cf/coordinate-name",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("5"),
  covers: ["CF-5-A1"],
  title: "A coordinate of several dimensions does not bear the name of one of them",
  why: "Programs take a variable with the name of a dimension for its coordinate variable.",
  remedy: "Rename {variable} or its dimension.",
  messages: { same: "the coordinate {variable} has several dimensions, and the name of one of them" },
  passing: [
    `dimensions: p = 2 ; z = 2 ; variables: float depth(p, z) ; float t(p, z) ; t:coordinates = "depth" ;`,
  ],
  failing: [
    {
      cdl: `dimensions: p = 2 ; depth = 2 ; variables: float depth(p, depth) ; float t(p, depth) ; t:coordinates = "depth" ;`,
      where: { variable: "depth" },
      message: "same",
    },
  ],
  check(dataset, report) {
    for (const { name, role, dimensions } of dataset.all)
      if (role === "auxiliary" && dimensions.length > 1 && dimensions.includes(name))
        report({ variable: name }, "same");
  },
});
