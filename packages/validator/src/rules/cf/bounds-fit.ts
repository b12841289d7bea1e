import { plainOf } from "../../engine/attribute-value.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

const where = { variable: "z", attribute: "bounds" };
const layers = (bounds: string) =>
  `dimensions: z = 2 ; nv = 2 ; p = 3 ; variables: float z(z) ; z:bounds = "b" ; ${bounds}`;

export const boundsFit = defineRule({
  id: "cf/bounds-fit",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("7.1"),
  covers: ["CF-7.1-R1", "CF-7.1-R2", "CF-7.1-R3"],
  title: "bounds names one numeric variable with the dimensions of the coordinate and one more",
  why: "Bounds that do not fit leave the layers without edges.",
  remedy: "Give {variable} a bounds variable of its own dimensions and a last one of two vertices.",
  messages: {
    text: "bounds of {variable} is not the name of one variable but {found}",
    unknown: "bounds of {variable} names {found}, which is no variable of the file",
    type: "bounds of {variable}, {found}, is text",
    dimensions: "bounds of {variable} has the dimensions {found} instead of {expected} and one more",
    vertices: "bounds of {variable} has {found} vertices instead of {expected}",
  },
  passing: [
    layers("float b(z, nv) ;"),
    'dimensions: nv = 2 ; variables: float z ; z:bounds = "b" ; float b(nv) ;',
  ],
  failing: [
    { cdl: `variables: float z ; z:bounds = "a b" ;`, where, message: "text" },
    { cdl: layers("float c(z, nv) ;"), where, message: "unknown" },
    { cdl: layers("char b(z, nv) ;"), where, message: "type" },
    { cdl: layers("float b(nv, z) ;"), where, message: "dimensions" },
    { cdl: layers("float b(z, p) ;"), where, message: "vertices" },
    {
      // a two-dimensional coordinate has cells with more than two corners
      cdl: 'dimensions: p = 2 ; z = 2 ; nv = 2 ; variables: float z(p, z) ; z:bounds = "b" ; float b(p, z, nv) ;',
      where,
      message: "vertices",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const attribute = variable.attributes.get("bounds");
      if (attribute === undefined) continue;
      const place = { variable: variable.name, attribute: "bounds" };
      const [name, ...others] = variable.words("bounds");
      const bounds = name === undefined ? null : dataset.named(name, variable.name);
      const own = variable.allDimensions;
      const size = bounds?.shape.at(-1) ?? 0;
      if (name === undefined || others.length > 0) report(place, "text", { found: plainOf(attribute) });
      else if (bounds === null) report(place, "unknown", { found: name });
      else if (bounds.isText) report(place, "type", { found: name });
      else if (
        bounds.allDimensions.length !== own.length + 1 ||
        own.some((each, i) => bounds.allDimensions[i] !== each)
      )
        report(place, "dimensions", { found: [...bounds.allDimensions], expected: [...own] });
      // the number of vertices is asked for since 1.12
      else if (dataset.since("1.12") && (own.length < 2 ? size !== 2 : size < 3))
        report(place, "vertices", { found: size, expected: own.length < 2 ? "2" : "more than 2" });
    }
  },
});
