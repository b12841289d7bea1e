import { cfClause, defineRule } from "../../engine/rule.ts";

export const dimensionOnce = defineRule({
  id: "cf/dimension-once",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("2.4"),
  covers: ["CF-2.4-R1"],
  title: "A variable uses each dimension once",
  why: "With one dimension twice, nobody can tell along which of the two a coordinate runs.",
  remedy: "Give the second axis of {variable} a dimension of its own.",
  messages: { twice: "{variable} uses the dimension {dimension} more than once" },
  passing: ["dimensions: n = 2 ; m = 2 ; variables: float a(n, m) ;"],
  failing: [
    {
      cdl: "dimensions: n = 2 ; variables: float a(n, n) ;",
      where: { variable: "a", dimension: "n" },
      message: "twice",
    },
  ],
  check(dataset, report) {
    for (const { name, allDimensions } of dataset.all) {
      const twice = allDimensions.find((dimension, index) => allDimensions.indexOf(dimension) !== index);
      if (twice !== undefined)
        report({ variable: name, dimension: twice }, "twice", { found: [...allDimensions] });
    }
  },
});
