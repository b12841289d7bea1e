import { sameDimension } from "@wherry/core";
import type { DatasetView } from "../../engine/dataset-view.ts";
import { unitOf } from "../../engine/unit-kinds.ts";
import type { VariableView } from "../../engine/variable-view.ts";

/** What a variable is to ACDD: it decides which of its attributes are needed. */
export type VariableKind =
  | "coordinate"
  | "label"
  | "quantity"
  | "statistic"
  | "flag"
  | "class"
  | "other"
  | "serving" // bounds, counts, indices, containers: nothing of their own
  | "unclear";

const FLAG_NAMES = /^(?:status_flag|quality_flag|aggregate_quality_flag|\w+_quality_flag)$/;
const STATISTICS = /:\s*(?:standard_deviation|variance|range|count|sum_of_squares|sum)\b/;

/** Quantities of a cast that the unit together with the name of the variable leaves no doubt about. */
const QUANTITIES: readonly (readonly [RegExp, string, string])[] = [
  [/^(?:sea_?)?(?:water_?)?temp(?:erature)?_?\d*$/i, "K", "sea_water_temperature"],
  [/^(?:electrical_?)?cond(?:uctivity)?_?\d*$/i, "S m-1", "sea_water_electrical_conductivity"],
  [/^(?:sea_?)?(?:water_?)?pres(?:sure)?_?\d*$/i, "Pa", "sea_water_pressure"],
  [/^(?:sea_?)?(?:water_?)?dens(?:ity)?_?\d*$/i, "kg m-3", "sea_water_density"],
  [/^(?:sound_?(?:speed|velocity)|speed_of_sound)_?\d*$/i, "m s-1", "speed_of_sound_in_sea_water"],
];

/** The standard name that a variable without one should have; null if that cannot be known. */
export function plainQuantity(variable: VariableView): string | null {
  const unit = unitOf(variable.text("units"));
  if (variable.isText || unit === null) return null;
  return (
    QUANTITIES.find(([pattern, wanted]) => pattern.test(variable.name) && sameDimension(unit, wanted))?.[2] ??
    null
  );
}

export function kindOf(dataset: DatasetView, variable: VariableView): VariableKind {
  const { role, isText } = variable;
  if (role === "bounds" || role === "count" || role === "index" || role === "container") return "serving";
  if (role === "label" || variable.has("cf_role")) return "label";
  const ancillary = dataset.ancillary.has(variable);
  const flagged =
    FLAG_NAMES.test(variable.standardName ?? "") || variable.words("standard_name")[1] === "status_flag";
  if (variable.has("flag_values") || variable.has("flag_masks"))
    return ancillary || flagged ? "flag" : "class";
  if (variable.isSpaceTime) return "coordinate";
  if (isText) return "unclear";
  const methods = (variable.text("cell_methods") ?? "").replace(/\([^)]*\)/g, "");
  const modifier = variable.words("standard_name")[1];
  if (
    modifier !== undefined ||
    STATISTICS.test(methods) ||
    variable.standardName === "number_of_observations"
  )
    return "statistic";
  if (ancillary) return "unclear";
  const known = variable.standardName !== undefined || plainQuantity(variable) !== null;
  return known && dataset.isSampled(variable) ? "quantity" : "other";
}
