import { cfClause, defineRule } from "../../engine/rule.ts";

/** Attributes by which a construct shows that the rules here do not look into, with its name and section. */
const ON_VARIABLES: readonly (readonly [attribute: string, construct: string])[] = [
  ["aggregated_data", "aggregation (2.8)"],
  ["formula_terms", "parametric vertical coordinates (4.3.3)"],
  ["month_lengths", "a calendar of its own (4.4.4)"],
  ["cell_measures", "cell measures (7.2)"],
  ["climatology", "climatological statistics (7.4)"],
  ["geometry", "geometries (7.6)"],
  ["compress", "compression by gathering (8.2)"],
  ["coordinate_interpolation", "coordinate subsampling (8.3)"],
  ["quantization", "quantization (8.4)"],
];

export const notExamined = defineRule({
  id: "cf/not-examined",
  status: "stable",
  since: "0.1.0",
  level: "advice",
  basis: "house",
  citation: cfClause("1"),
  covers: [],
  title: "What is present but not examined is said",
  why: "No finding must not be taken for a check that was never made.",
  remedy: "Have this part looked at by other means; all else in the file was examined.",
  messages: {
    variable: "{variable} uses {construct}: present, not examined",
    file: "the file uses {construct}: present, not examined",
  },
  passing: ['variables: float t ; t:units = "K" ;'],
  failing: [
    {
      cdl: 'variables: float t ; t:cell_measures = "area: a" ; float a ;',
      where: { variable: "t", attribute: "cell_measures" },
      message: "variable",
    },
    {
      cdl: ':external_variables = "a" ; variables: float t ;',
      where: { attribute: "external_variables" },
      message: "file",
    },
  ],
  check(dataset, report) {
    const told = new Set<string>();
    for (const variable of dataset.all)
      for (const [attribute, construct] of ON_VARIABLES) {
        if (!variable.has(attribute) || told.has(attribute)) continue;
        told.add(attribute);
        report({ variable: variable.name, attribute }, "variable", { fill: { construct } });
      }
    if (dataset.attributes.has("external_variables"))
      report({ attribute: "external_variables" }, "file", {
        fill: { construct: "external variables (2.6.3)" },
      });
    if (dataset.all.some(({ name }) => name.includes("/")))
      report({}, "file", { fill: { construct: "groups (2.7)" } });
  },
});
