import { cfClause, defineRule } from "../../engine/rule.ts";
import { castsCdl } from "./sampling-example.ts";

export const verticalAxis = defineRule({
  id: "cf/vertical-axis",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("9.5"),
  editions: { since: "1.6" },
  covers: ["CF-9.5-T33"],
  title: "The vertical coordinate of casts has axis and a standard name",
  why: "Depth and pressure can both serve; axis tells which of them places the data.",
  remedy: 'Set axis = "Z" and the standard name of {variable}.',
  messages: {
    axis: 'no vertical coordinate has axis = "Z"; {variable} is one by its units',
    name: "the vertical coordinate {variable} has no standard_name",
  },
  passing: [castsCdl()],
  failing: [
    {
      cdl: castsCdl({ depth: 'float depth(obs) ; depth:standard_name = "depth" ; depth:units = "m" ;' }),
      where: { variable: "depth", attribute: "axis" },
      message: "axis",
    },
    {
      cdl: castsCdl({ depth: 'float depth(obs) ; depth:axis = "Z" ; depth:units = "m" ;' }),
      where: { variable: "depth", attribute: "standard_name" },
      message: "name",
    },
  ],
  check(dataset, report) {
    if (!dataset.layout.featureType?.endsWith("profile")) return;
    const vertical = dataset.coordinates.filter(({ axis }) => axis === "Z");
    const marked = vertical.filter((variable) => variable.has("axis"));
    const [first] = vertical;
    if (first !== undefined && marked.length === 0)
      report({ variable: first.name, attribute: "axis" }, "axis", { expected: "Z" });
    for (const variable of marked)
      if (!variable.has("standard_name"))
        report({ variable: variable.name, attribute: "standard_name" }, "name");
  },
});
