import { parseCellMethods } from "../../engine/cell-methods.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";
import { castsCdl } from "./sampling-example.ts";

const means = (bounds: string, methods = "z: mean") => `dimensions: z = 2 ; nv = 2 ; variables:
  float z(z) ; z:units = "m" ; z:positive = "down" ; ${bounds} float t(z) ; t:cell_methods = "${methods}" ;`;

export const cellMethodsBounds = defineRule({
  id: "cf/cell-methods-bounds",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("7.3"),
  covers: ["CF-7.3-A2", "CF-7.1-T13"],
  title: "A coordinate over which values were combined has bounds",
  why: "A mean is the mean of a layer; without bounds nobody knows how thick the layer was.",
  remedy: "Give {variable} a bounds variable with the edges of its layers.",
  messages: { none: "{data} is combined along {variable} ({method}), which has no bounds" },
  passing: [
    means('z:bounds = "b" ; float b(z, nv) ;'),
    means("", "z: point"),
    'dimensions: p = 2 ; z = 2 ; variables: float d(p, z) ; float t(p, z) ; t:coordinates = "d" ; t:cell_methods = "d: mean" ;',
  ],
  failing: [
    { cdl: means(""), where: { variable: "z" }, message: "none" },
    {
      cdl: castsCdl({
        data: 'float temp(obs) ; temp:coordinates = "time lat lon depth" ; temp:cell_methods = "depth: mean" ;',
      }),
      where: { variable: "depth" },
      message: "none",
    },
  ],
  check(dataset, report) {
    const told = new Set<string>();
    for (const variable of dataset.all) {
      const entries = parseCellMethods(variable.text("cell_methods") ?? "");
      if (!Array.isArray(entries)) continue;
      for (const { names, method } of entries) {
        if (method === "point") continue;
        for (const name of names) {
          const own = dataset.coordinatesOf(variable);
          const coordinate =
            own.find((each) => each.name === name) ?? own.find((each) => each.standardName === name);
          if (coordinate === undefined || coordinate.isText || told.has(coordinate.name)) continue;
          // the text speaks of coordinate variables and scalar ones, our reading adds depths along ragged samples;
          // two-dimensional ones have no edges of two values
          const isLayered =
            dataset.since("1.12") &&
            coordinate.axis === "Z" &&
            dataset.link(coordinate.dimensions.at(-1) ?? "") !== undefined;
          if (!coordinate.isCoordinate && coordinate.dimensions.length > 0 && !isLayered) continue;
          if (coordinate.has("bounds") || coordinate.has("climatology")) continue;
          told.add(coordinate.name);
          report({ variable: coordinate.name }, "none", { fill: { data: variable.name, method } });
        }
      }
    }
  },
});
