import type { DatasetView } from "../../engine/dataset-view.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";
import type { VariableView } from "../../engine/variable-view.ts";
import { castsCdl } from "./sampling-example.ts";

const POSITION_NAMES = ["time", "latitude", "longitude", "depth", "altitude", "height"];

/** Variables that are a position by standard name or axis, whether or not any data variable names them. */
const isPosition = (variable: VariableView): boolean =>
  variable.kindOfCoordinate !== null &&
  variable.role !== "bounds" &&
  (variable.isSpaceTime ||
    POSITION_NAMES.includes(variable.text("standard_name") ?? "") ||
    variable.has("axis"));

/** Positions within reach of a variable whose kind it lacks, one of each kind, preferably one with axis. */
function unnamed(dataset: DatasetView, variable: VariableView, positions: readonly VariableView[]): string[] {
  const reach = dataset.reach(variable);
  const kinds = new Set(dataset.coordinatesOf(variable).map((each) => each.kindOfCoordinate));
  const within = positions.filter(
    (position) => position !== variable && position.dimensions.every((dimension) => reach.has(dimension)),
  );
  const lacking = new Map<string, string>();
  for (const { name, kindOfCoordinate: kind } of within)
    if (kind !== null && !kinds.has(kind) && !lacking.has(kind)) lacking.set(kind, name);
  return [...lacking.values()];
}

/** Dimensions along which the elements of a feature lie: the last of each depth, or time for series and tracks. */
function elementDimensions(dataset: DatasetView, positions: readonly VariableView[]): ReadonlySet<string> {
  const axis = dataset.layout.featureType?.endsWith("profile") ? "Z" : "T";
  const along = positions.filter(({ kindOfCoordinate }) => kindOfCoordinate === axis);
  return new Set(along.flatMap(({ dimensions }) => dimensions.at(-1) ?? []));
}

export const dataCoordinates = defineRule({
  id: "cf/data-coordinates",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("9.5"),
  editions: { since: "1.6" },
  covers: ["CF-9.5-T30", "CF-9.2-T23", "CF-5.7-T12"],
  title: "Data name their time, position and depth in `coordinates`",
  why: "Without these names a program cannot know where and when a value was measured.",
  remedy: "Add {found} to `coordinates` of {variable}.",
  messages: { missing: "coordinates of {variable} does not name {found}" },
  passing: [
    castsCdl(),
    castsCdl({ more: 'byte q(obs) ; q:flag_values = 1b ; q:flag_meanings = "good" ;' }),
    `:featureType = "profile" ; dimensions: z = 2 ; variables: float z(z) ; z:units = "dbar" ; z:axis = "Z" ;
     double time ; time:standard_name = "time" ; time:units = "days since 2000-01-01" ; float t(z) ; t:coordinates = "time" ;`,
  ],
  failing: [
    {
      cdl: castsCdl({ data: 'float temp(obs) ; temp:coordinates = "time lat lon" ;' }),
      where: { variable: "temp", attribute: "coordinates" },
      message: "missing",
    },
    {
      cdl: castsCdl({ data: "float temp(obs) ;" }),
      where: { variable: "temp", attribute: "coordinates" },
      message: "missing",
    },
  ],
  check(dataset, report) {
    if (dataset.layout.featureType === null) return;
    const hasAxis = (variable: VariableView) => (variable.has("axis") ? 0 : 1);
    const positions = dataset.all.filter(isPosition).sort((a, b) => hasAxis(a) - hasAxis(b));
    const elements = elementDimensions(dataset, positions);
    for (const variable of dataset.sampled) {
      if (variable.role === "flag" || dataset.ancillary.has(variable) || variable.isText) continue;
      // a position that nobody names is no data that lacks coordinates
      if (isPosition(variable) && variable.has("axis")) continue;
      // counts, histories and descriptions of features lie on other dimensions
      if (!variable.dimensions.some((dimension) => elements.has(dimension))) continue;
      const found = unnamed(dataset, variable, positions);
      if (found.length > 0)
        report({ variable: variable.name, attribute: "coordinates" }, "missing", { found });
    }
  },
});
