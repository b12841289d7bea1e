import { cfClause, defineRule } from "../../engine/rule.ts";

const labelled = (label: string) =>
  `dimensions: p = 2 ; q = 2 ; n = 4 ; variables: ${label} float t(p) ; t:coordinates = "name" ;`;

export const labelShape = defineRule({
  id: "cf/label-shape",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("6.1"),
  covers: ["CF-6.1-R1"],
  title: "A label has one text for each place along one dimension of the data",
  why: "A label on several dimensions, or on one that the data do not have, cannot be set beside the values.",
  remedy: "Give {variable} one dimension of the data, and for characters a second one for their number.",
  messages: { dimensions: "{variable} is a label of other variables, but has {found} dimensions of its own" },
  passing: [labelled("char name(p, n) ;"), labelled("char name(n) ;")],
  failing: [{ cdl: labelled("char name(p, q, n) ;"), where: { variable: "name" }, message: "dimensions" }],
  check(dataset, report) {
    const labels = new Set(
      dataset.all.flatMap((variable) =>
        dataset.listed(variable, "coordinates").filter(({ isText }) => isText),
      ),
    );
    for (const { name, dimensions } of labels)
      if (dimensions.length > 1) report({ variable: name }, "dimensions", { found: dimensions.length });
  },
});
