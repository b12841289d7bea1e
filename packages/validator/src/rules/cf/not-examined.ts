import { cfClause, defineRule } from "../../engine/rule.ts";

/** Attributes by which a construct shows that the rules here do not look into, with its name and section. */
const ON_VARIABLES: readonly (readonly [attribute: string, construct: string])[] = [
  ["aggregated_data", "aggregation (2.8)"],
  ["aggregated_dimensions", "aggregation (2.8)"],
  ["formula_terms", "parametric vertical coordinates (4.3.3)"],
  ["month_lengths", "a calendar of its own (4.4.4)"],
  ["leap_month", "a calendar of its own (4.4.4)"],
  ["leap_year", "a calendar of its own (4.4.4)"],
  ["projected_crs_name", "a map projection (5.6)"],
  ["indexing_scheme", "a HEALPix grid (5.6)"],
  ["dimensions", "a domain variable (5.8)"],
  ["cell_measures", "cell measures (7.2)"],
  ["climatology", "climatological statistics (7.4)"],
  ["geometry", "geometries (7.6)"],
  ["compress", "compression by gathering (8.2)"],
  ["coordinate_interpolation", "coordinate subsampling (8.3)"],
  ["tie_point_mapping", "coordinate subsampling (8.3)"],
  ["quantization", "quantization (8.4)"],
];

/** Constructs that show in the value of an attribute. */
const BY_VALUE: readonly (readonly [attribute: string, value: RegExp, construct: string])[] = [
  ["cell_methods", /\banomaly_wrt\b/, "anomalies (7.5)"],
  ["grid_mapping_name", /^(?!latitude_longitude$)/, "a grid mapping other than latitude and longitude (5.6)"],
  ["cf_role", /^mesh_topology$/, "an unstructured mesh (1.3, UGRID)"],
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
      cdl: 'variables: int crs ; crs:grid_mapping_name = "mercator" ;',
      where: { variable: "crs", attribute: "grid_mapping_name" },
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
    const tell = (variable: string, attribute: string, construct: string) => {
      if (!told.has(construct)) report({ variable, attribute }, "variable", { fill: { construct } });
      told.add(construct);
    };
    for (const variable of dataset.all) {
      for (const [attribute, construct] of ON_VARIABLES)
        if (variable.has(attribute)) tell(variable.name, attribute, construct);
      for (const [attribute, value, construct] of BY_VALUE) {
        const text = variable.text(attribute);
        if (text !== undefined && value.test(text)) tell(variable.name, attribute, construct);
      }
      const [edges] = dataset.listed(variable, "bounds");
      if ((edges?.shape.at(-1) ?? 2) > 2) tell(variable.name, "bounds", "cells of more than two edges (7.1)");
    }
    if (dataset.attributes.has("external_variables"))
      report({ attribute: "external_variables" }, "file", {
        fill: { construct: "external variables (2.6.3)" },
      });
    if (dataset.all.some(({ name }) => name.includes("/")))
      report({}, "file", { fill: { construct: "groups (2.7)" } });
  },
});
