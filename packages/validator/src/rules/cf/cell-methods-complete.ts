import { parseCellMethods } from "../../engine/cell-methods.ts";
import type { DatasetView } from "../../engine/dataset-view.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";
import type { VariableView } from "../../engine/variable-view.ts";

/** Coordinate variables of space and time along the dimensions of a variable, and scalar ones that it names. */
const along = (dataset: DatasetView, variable: VariableView): VariableView[] =>
  dataset
    .coordinatesOf(variable)
    .filter(
      ({ axis, isCoordinate, dimensions }) => axis !== null && (isCoordinate || dimensions.length === 0),
    );

/** Whether an entry is about the coordinate: by its name, its standard name, or as part of an area. */
const isAbout = (name: string, { name: own, standardName, axis }: VariableView): boolean =>
  name === own || name === standardName || (name === "area" && (axis === "X" || axis === "Y"));

export const cellMethodsComplete = defineRule({
  id: "cf/cell-methods-complete",
  status: "stable",
  since: "0.1.0",
  level: "advice",
  basis: "reading",
  citation: cfClause("7.3"),
  covers: ["CF-7.3-A1"],
  title: "cell_methods says for each coordinate whether the value is a point, a mean or something else",
  why: "Without a word, a quantity is taken for a point value along each coordinate.",
  remedy: 'Add entries such as "time: point" if the values are not what that default says.',
  messages: { missing: "cell_methods says nothing of {expected} for {found}" },
  passing: [
    `dimensions: z = 2 ; variables: float z(z) ; z:units = "m" ; z:axis = "Z" ; float t(z) ; t:cell_methods = "z: point" ;`,
    // the samples of a ragged array have no coordinate variable
    `dimensions: o = 2 ; variables: float d(o) ; d:axis = "Z" ; float t(o) ; t:coordinates = "d" ;`,
  ],
  failing: [
    {
      cdl: `dimensions: z = 2 ; variables: float z(z) ; z:units = "m" ; z:axis = "Z" ; float t(z) ;
        t:standard_name = "sea_water_temperature" ;`,
      where: {},
      message: "missing",
    },
  ],
  check(dataset, report) {
    const lacking = new Map<string, string[]>();
    for (const variable of dataset.all) {
      if (variable.role !== "data" || variable.isText || !dataset.isSampled(variable)) continue;
      if (variable.standardName === undefined || dataset.ancillary.has(variable)) continue;
      const entries = parseCellMethods(variable.text("cell_methods") ?? "");
      if (!Array.isArray(entries)) continue;
      const names = entries.flatMap((entry) => entry.names);
      for (const coordinate of along(dataset, variable))
        if (!names.some((name) => isAbout(name, coordinate)))
          lacking.set(coordinate.name, [...(lacking.get(coordinate.name) ?? []), variable.name]);
    }
    // one finding for the file: the default holds for nearly all casts
    const found = [...new Set([...lacking.values()].flat())];
    if (found.length > 0) report({}, "missing", { found: found.slice(0, 5), expected: [...lacking.keys()] });
  },
});
