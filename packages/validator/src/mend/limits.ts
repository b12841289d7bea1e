import { formatIsoTime } from "@wherry/core";
import { numberAttribute, textAttribute } from "@wherry/netcdf";
import type { Axis } from "../engine/axis.ts";
import type { DatasetView } from "../engine/dataset-view.ts";
import type { Rule } from "../engine/rule.ts";
import { coordinatesOfKind, extentOf, statedNumber } from "../rules/acdd/coverage.ts";
import { timeSpan } from "../rules/acdd/time-span.ts";
import { positions } from "../rules/physics/positions.ts";
import { times } from "../rules/physics/times.ts";
import type { Edit, Mender } from "./edit.ts";

/** Whether a rule on the values themselves has nothing to say: limits of wrong values are no better for it. */
async function isSound(rule: Rule, dataset: DatasetView): Promise<boolean> {
  let sound = true;
  await rule.check(dataset, () => {
    sound = false;
  });
  return sound;
}

const global = (attribute: string, value: number | string): Edit => ({
  variable: null,
  attribute,
  to:
    typeof value === "number" ? numberAttribute(attribute, "double", value) : textAttribute(attribute, value),
});

/** The number with the digits that its type can tell: 50.1, not 50.099998474121094. */
const told = (value: number, single: boolean): number =>
  single ? Number.parseFloat(value.toPrecision(7)) : value;

/** A limit of the coordinates along an axis, as a number. */
const limitOf =
  (axis: Axis): Mender =>
  async ({ where: { attribute = "" } }, dataset) => {
    const coordinates = coordinatesOfKind(dataset, axis);
    // several vertical coordinates in several units: which one is meant, a person must tell
    if (axis === "Z" && (coordinates.length !== 1 || !agreesInUnits(dataset, coordinates[0]?.text("units"))))
      return [];
    if (axis !== "Z" && !(await isSound(positions, dataset))) return [];
    // a box across the meridian where longitudes wrap has its limits the other way round
    const [west, east] = [
      statedNumber(dataset, "geospatial_lon_min"),
      statedNumber(dataset, "geospatial_lon_max"),
    ];
    if (axis === "X" && west !== null && east !== null && west > east) return [];
    const extent = await extentOf(dataset, coordinates);
    if (extent === null) return [];
    const value = attribute.endsWith("_min") ? extent.min : extent.max;
    return [
      global(
        attribute,
        told(
          value,
          coordinates.every(({ type }) => type === "float"),
        ),
      ),
    ];
  };

function agreesInUnits(dataset: DatasetView, units: string | undefined): boolean {
  const stated = dataset.text("geospatial_vertical_units");
  return units !== undefined && (stated === undefined || stated === units);
}

export const latitudeLimit = limitOf("Y");
export const longitudeLimit = limitOf("X");
export const verticalLimit = limitOf("Z");

/** The sense of the vertical coordinate, where there is one. */
export const verticalSense: Mender = ({ where: { attribute = "" } }, dataset) => {
  const [sense, ...others] = new Set(
    coordinatesOfKind(dataset, "Z").map((variable) => variable.text("positive")?.toLowerCase()),
  );
  return others.length === 0 && (sense === "up" || sense === "down") ? [global(attribute, sense)] : [];
};

export const verticalUnits: Mender = ({ where: { attribute = "" } }, dataset) => {
  const [units, ...others] = new Set(coordinatesOfKind(dataset, "Z").map((each) => each.text("units")));
  return others.length === 0 && units !== undefined ? [global(attribute, units)] : [];
};

/** Start, end and duration of the times in the file, where it tells them exactly. */
export const timeLimit: Mender = async (finding, dataset) => {
  const { attribute = "" } = finding.where;
  const span = await timeSpan(dataset);
  // an end before its start: which of the two is wrong, the times tell, not this attribute
  if (span === null || finding.key === "order" || !(await isSound(times, dataset))) return [];
  const { earliest, end } = span;
  if (attribute === "time_coverage_start") return [global(attribute, formatIsoTime(earliest))];
  if (end === null) return [];
  if (attribute === "time_coverage_end") return [global(attribute, formatIsoTime(end))];
  return [global(attribute, durationOf(Math.round(end - earliest)))];
};

const DAY = 86_400;

/** ISO 8601 duration in days, hours, minutes and seconds, whose lengths are fixed. */
function durationOf(seconds: number): string {
  const parts = [
    [Math.floor(seconds / DAY), "D"],
    [Math.floor((seconds % DAY) / 3600), "H"],
    [Math.floor((seconds % 3600) / 60), "M"],
    [seconds % 60, "S"],
  ] as const;
  const [days, ...clock] = parts.map(([value, letter]) => (value === 0 ? "" : `${value}${letter}`));
  const time = clock.join("");
  const text = `P${days}${time === "" ? "" : `T${time}`}`;
  return text === "P" ? "PT0S" : text;
}

/** The unit of the limits along an axis that has coordinates; limits are told in this one always. */
const unitOf =
  (axis: Axis, units: string): Mender =>
  ({ where: { attribute = "" } }, dataset) =>
    coordinatesOfKind(dataset, axis).length > 0 ? [global(attribute, units)] : [];

export const latitudeUnits = unitOf("Y", "degrees_north");
export const longitudeUnits = unitOf("X", "degrees_east");
