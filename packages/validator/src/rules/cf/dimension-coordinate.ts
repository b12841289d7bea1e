import type { DatasetView } from "../../engine/dataset-view.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

/** Names that leave no doubt about what runs along a dimension. */
const NAMES: Readonly<Record<string, string>> = {
  time: "time",
  lat: "latitude",
  latitude: "latitude",
  lon: "longitude",
  longitude: "longitude",
  depth: "depth",
};

/** Whether some coordinate lies along the dimension: a variable of its name, or one that data name. */
const isLocated = (dataset: DatasetView, dimension: string): boolean =>
  dataset.all.some(
    (variable) =>
      variable.name === dimension || (variable.isSpaceTime && variable.dimensions.includes(dimension)),
  );

export const dimensionCoordinate = defineRule({
  id: "cf/dimension-coordinate",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: cfClause("5"),
  covers: ["CF-5-R1"],
  title: "A dimension of time, latitude, longitude or depth has a coordinate variable",
  why: "Without one nobody knows where or when the values along it are.",
  remedy: "Add a numeric variable {dimension}({dimension}) with units and its values.",
  messages: { missing: "the dimension {dimension} is one of {kind}, but no variable gives its values" },
  passing: [
    `dimensions: time = 2 ; variables: double time(time) ; float t(time) ;`,
    `dimensions: depth = 2 ; variables: double z(depth) ; float t(depth) ; t:coordinates = "z" ;`,
  ],
  failing: [
    {
      cdl: "dimensions: time = 2 ; variables: float t(time) ;",
      where: { dimension: "time" },
      message: "missing",
    },
  ],
  check(dataset, report) {
    for (const { name, length } of dataset.dimensions.values()) {
      const kind = NAMES[name.toLowerCase()];
      const used = dataset.all.some(({ role, dimensions }) => role === "data" && dimensions.includes(name));
      if (kind !== undefined && used && length > 1 && !isLocated(dataset, name))
        report({ dimension: name }, "missing", { fill: { kind } });
    }
  },
});
