import { type Cast, convertUnits } from "@wherry/core";
import type { MemoryVariable } from "@wherry/netcdf";
import type { ColumnGroup, RowPlaces } from "./column-groups.ts";
import { longNameOf, type RowLayout, temperatureKind } from "./data-variables.ts";
import { instrumentOf } from "./equipment.ts";
import { attributes, fillAttribute, rangeAttribute, store } from "./storage.ts";
import type { WritingContext } from "./writing-context.ts";

type SensorName = "temperature" | "conductivity" | "pressure" | "depth" | "salinity" | "sound_speed";

const SENSORS: ReadonlySet<string> = new Set<SensorName>([
  "temperature",
  "conductivity",
  "pressure",
  "depth",
  "salinity",
  "sound_speed",
]);

/**
 * Standard uncertainty of a measured quantity, from what the sheet says of the sensors; null where it says
 * nothing. It is missing where the value is missing.
 *
 * @param values values of the variable beside which it stands, NaN where missing
 */
export function uncertaintyVariable(
  group: ColumnGroup,
  values: Float64Array,
  casts: readonly Cast[],
  places: RowPlaces,
  layout: RowLayout,
  context: WritingContext,
): MemoryVariable | null {
  const perCast = casts.map((cast, index) => {
    const isMeasured = group.columns[index]?.source != null;
    return isMeasured ? sensorUncertainty(group, cast, context) : Number.NaN;
  });
  if (perCast.every((value) => Number.isNaN(value))) return null;
  const all = new Float64Array(places.total).fill(Number.NaN);
  for (const [index, offset] of places.offsets.entries())
    for (let k = offset; k < offset + places.counts[index]!; k++)
      if (!Number.isNaN(values[k]!)) all[k] = perCast[index]!;
  const stored = store(all, "float");
  return {
    name: `${group.name}_uncertainty`,
    type: stored.type,
    dimensions: [layout.dimension],
    data: stored.data,
    attributes: attributes(
      ["long_name", `standard uncertainty of ${longNameOf(group)}`],
      ["standard_name", group.quantity.standardName && `${group.quantity.standardName} standard_error`],
      ["units", group.quantity.units],
      ["units_metadata", temperatureKind(group, "difference")],
      fillAttribute(stored),
      rangeAttribute(stored),
      [
        "comment",
        "one standard deviation of a single value as stated for the sensor, taken to be common to all rows of a cast",
      ],
      ["coverage_content_type", "auxiliaryInformation"],
      ["coordinates", layout.coordinates],
    ),
  };
}

/** In the unit of the product; NaN if the sheet gives none or a unit that does not fit. */
function sensorUncertainty(group: ColumnGroup, cast: Cast, context: WritingContext): number {
  if (!SENSORS.has(group.column)) return Number.NaN;
  const sensor = instrumentOf(cast, context).sensors?.[group.column as SensorName];
  if (sensor?.uncertainty === undefined) return Number.NaN;
  // a difference: the zero points of temperature scales do not enter
  const zero = convertUnits(0, sensor.units, group.quantity.units);
  return convertUnits(sensor.uncertainty, sensor.units, group.quantity.units) - zero;
}
