import {
  type Cast,
  COMPOSITION_SALINITY,
  convertUnits,
  densityCompositionTerm,
  type SensorUncertainty,
} from "@wherry/core";
import type { MemoryVariable } from "@wherry/netcdf";
import type { ColumnGroup, RowPlaces } from "./column-groups.ts";
import { longNameOf, type RowLayout, temperatureKind } from "./data-variables.ts";
import { derivedUncertainty, isRiverThinned, type RowsOf } from "./derived-uncertainty.ts";
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

const MEASURED =
  "one standard deviation of a single value as stated for the sensor, taken to be common to all rows of a cast";
const PROPAGATED =
  "one standard deviation, propagated to first order (JCGM 100:2008) from the standard uncertainties stated for the " +
  "sensors, taken to be independent of each other and common to all rows of a cast; what the equations themselves " +
  "leave open is not in it";
/** What a quantity's propagated uncertainty leaves out. */
const LEFT_OUT: Readonly<Record<string, string>> = {
  depth: "from pressure alone, by the standard ocean; the atmospheric offset and the density are not in it",
};
const COMPOSITION =
  `where Practical Salinity is below ${COMPOSITION_SALINITY}, river salts, which conduct less for their mass, may make ` +
  `the water denser than computed by about ${densityCompositionTerm(0)} kg m-3 (0.02 to 0.3 kg m-3 by river: Pawlowicz, ` +
  "2015, doi 10.1016/j.dsr.2015.03.006); this one-sided term is not in the number";

/**
 * Standard uncertainty of a quantity, from what the sheet says of the sensors: of a measured one as stated there, of a
 * computed one propagated; null where the sheet says nothing. It is missing where the value is missing.
 *
 * @param values values of the variable beside which it stands, NaN where missing
 * @param rowsOf the columns that the quantity may be computed from, on the rows of the product
 */
export function uncertaintyVariable(
  group: ColumnGroup,
  values: Float64Array,
  casts: readonly Cast[],
  places: RowPlaces,
  layout: RowLayout,
  context: WritingContext,
  rowsOf: RowsOf,
): MemoryVariable | null {
  const words = new Set<string>();
  const all = new Float64Array(places.total).fill(Number.NaN);
  for (const [index, cast] of casts.entries()) {
    const own = (column: string) => rowsOf(index, column);
    const column = group.columns[index];
    const one = column?.source == null ? Number.NaN : sensorUncertainty(group, cast, context);
    const derived =
      column?.method == null ? null : derivedUncertainty(group.column, cast, own, sensors(cast, context));
    if (Number.isNaN(one) && derived === null) continue;
    words.add(derived === null ? MEASURED : PROPAGATED);
    if (derived !== null && LEFT_OUT[group.column] !== undefined) words.add(LEFT_OUT[group.column]!);
    if (derived !== null && group.column === "density" && isRiverThinned(own)) words.add(COMPOSITION);
    const offset = places.offsets[index]!;
    for (let k = 0; k < places.counts[index]!; k++)
      if (!Number.isNaN(values[offset + k]!))
        all[offset + k] = derived === null ? one : derived[k]! / group.quantity.divisor;
  }
  if (words.size === 0) return null;
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
      ["comment", [...words].join("; ")],
      ["coverage_content_type", "auxiliaryInformation"],
      ["coordinates", layout.coordinates],
    ),
  };
}

/** Of the three sensors from which everything is computed, house units. */
function sensors(cast: Cast, context: WritingContext): SensorUncertainty {
  return {
    C: inUnits("conductivity", "mS cm-1", cast, context),
    t: inUnits("temperature", "degree_C", cast, context),
    p: inUnits("pressure", "dbar", cast, context),
  };
}

/** In the unit of the product; NaN if the sheet gives none or a unit that does not fit. */
function sensorUncertainty(group: ColumnGroup, cast: Cast, context: WritingContext): number {
  if (!SENSORS.has(group.column)) return Number.NaN;
  return inUnits(group.column as SensorName, group.quantity.units, cast, context);
}

function inUnits(name: SensorName, units: string, cast: Cast, context: WritingContext): number {
  const sensor = instrumentOf(cast, context).sensors?.[name];
  if (sensor?.uncertainty === undefined) return Number.NaN;
  // a difference: the zero points of temperature scales do not enter
  return convertUnits(sensor.uncertainty, sensor.units, units) - convertUnits(0, sensor.units, units);
}
