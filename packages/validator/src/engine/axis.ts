import { isEastUnit, isNorthUnit, isPressure, isTimeReference } from "./unit-kinds.ts";

export type Axis = "X" | "Y" | "Z" | "T";

export const isAxis = (text: string): text is Axis => /^[XYZT]$/.test(text);

/** Standard names of vertical coordinates whose sense is in the name (CF 4.3 and the standard name table). */
export const VERTICAL_SENSE: ReadonlyMap<string, "up" | "down"> = new Map([
  ["depth", "down"],
  ["depth_below_geoid", "down"],
  ["depth_below_sea_floor", "down"],
  ["altitude", "up"],
  ["height", "up"],
  ["height_above_geopotential_datum", "up"],
  ["height_above_mean_sea_level", "up"],
  ["height_above_reference_ellipsoid", "up"],
  ["height_above_sea_floor", "up"],
]);

const BY_NAME: ReadonlyMap<string, Axis> = new Map<string, Axis>([
  ["latitude", "Y"],
  ["longitude", "X"],
  ["time", "T"],
  ["sea_water_pressure", "Z"],
  ["sea_water_pressure_due_to_sea_water", "Z"],
  ["air_pressure", "Z"],
  ...[...VERTICAL_SENSE.keys()].map((name): [string, Axis] => [name, "Z"]),
]);

/** The kind of coordinate that units and positive tell, whatever the axis attribute says. */
export function axisFromUnits(units: string | undefined, positive: string | undefined): Axis | null {
  if (isNorthUnit(units)) return "Y";
  if (isEastUnit(units)) return "X";
  if (isTimeReference(units)) return "T";
  if (positive !== undefined && /^(?:up|down)$/i.test(positive)) return "Z";
  return isPressure(units) ? "Z" : null;
}

/** The kind of coordinate, by every method of CF chapter 4: units, positive, standard name, axis. */
export function axisOf(text: (attribute: string) => string | undefined): Axis | null {
  const told = axisFromUnits(text("units"), text("positive"));
  if (told !== null) return told;
  const named = BY_NAME.get(text("standard_name") ?? "");
  if (named !== undefined) return named;
  const axis = text("axis")?.toUpperCase() ?? "";
  return isAxis(axis) ? axis : null;
}
