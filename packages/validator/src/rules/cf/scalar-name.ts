import { cfClause, defineRule } from "../../engine/rule.ts";

export const scalarName = defineRule({
  id: "cf/scalar-name",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "reading",
  citation: cfClause("5.7"),
  covers: ["CF-5.7-T12"],
  title: "A scalar coordinate does not have the name of a dimension",
  why: "A program takes a variable with the name of a dimension for the coordinate of that dimension.",
  remedy: "Rename {variable}, or the dimension.",
  messages: { same: "{variable} is a scalar coordinate with the name of a dimension" },
  passing: ['dimensions: z = 2 ; variables: double depth ; float t(z) ; t:coordinates = "depth" ;'],
  failing: [
    {
      cdl: 'dimensions: z = 2 ; variables: double z ; float t(z) ; t:coordinates = "z" ;',
      where: { variable: "z" },
      message: "same",
    },
  ],
  check(dataset, report) {
    for (const { name, role, allDimensions } of dataset.all)
      if (role === "auxiliary" && allDimensions.length === 0 && dataset.dimensions.has(name))
        report({ variable: name }, "same");
  },
});
