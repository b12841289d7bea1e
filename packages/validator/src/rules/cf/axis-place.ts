import { axisOf } from "../../engine/axis.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";
import type { VariableView } from "../../engine/variable-view.ts";

/** Roles on which axis says nothing that CF defines. */
const NEVER = ["data", "flag", "label", "count", "index"];

export const axisPlace = defineRule({
  id: "cf/axis-place",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("4"),
  covers: ["CF-4-R1", "CF-4-R4"],
  title: "axis stands on coordinate variables, and in files of casts or series on the nominal position",
  why: "Programs take a variable with axis for a coordinate of the data.",
  remedy: "Remove axis from {variable}, or make it a coordinate of the data.",
  messages: {
    data: "{variable} has axis but is no coordinate of any variable",
    auxiliary: "{variable} has axis but is an auxiliary coordinate, and the file has no featureType",
  },
  passing: [
    `dimensions: x = 2 ; variables: double x(x) ; x:axis = "X" ;`,
    // CF 9.5 asks for axis on the nominal coordinates, in every edition that has chapter 9
    {
      cdl: `:featureType = "profile" ; dimensions: p = 2 ; variables: double lat(p) ; lat:units = "degrees_north" ; lat:axis = "Y" ;
     float t(p) ; t:coordinates = "lat" ;`,
      edition: "1.6",
    },
  ],
  failing: [
    {
      cdl: `dimensions: x = 2 ; variables: double t(x) ; t:axis = "X" ;`,
      where: { variable: "t", attribute: "axis" },
      message: "data",
    },
    {
      cdl: `dimensions: x = 2 ; y = 2 ; variables: double lat(y, x) ; lat:units = "degrees_north" ; lat:axis = "Y" ;
     float t(y, x) ; t:coordinates = "lat" ;`,
      where: { variable: "lat", attribute: "axis" },
      message: "auxiliary",
    },
  ],
  check(dataset, report) {
    const nodes = dataset.all.some(
      (variable) => variable.has("geometry_type") || variable.has("node_coordinates"),
    );
    if (nodes) return; // geometry nodes carry axis too; they are not examined here
    const sampling = dataset.layout.claimed !== undefined || dataset.layout.links.length > 0;
    const named = dataset.all.some((variable) => variable.has("coordinates"));
    const taken = new Set<string>(dataset.coordinates.flatMap(({ axis }) => axis ?? []));
    const isPosition = (variable: VariableView) =>
      axisOf((attribute) => (attribute === "axis" ? undefined : variable.text(attribute))) !== null;
    for (const variable of dataset.all) {
      if (!variable.has("axis")) continue;
      const where = { variable: variable.name, attribute: "axis" };
      // a position that no data variable names is the business of the rule on coordinates, if they lack one of its kind
      const unnamed =
        isPosition(variable) && (sampling || !named) && !taken.has(variable.kindOfCoordinate ?? "");
      if (NEVER.includes(variable.role) && !unnamed) report(where, "data");
      else if (variable.role === "auxiliary" && variable.dimensions.length > 0 && !sampling)
        report(where, "auxiliary");
    }
  },
});
