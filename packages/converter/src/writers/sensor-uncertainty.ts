import {
  type Cast,
  COMPOSITION_SALINITY,
  convertUnits,
  densityCompositionTerm,
  driftUncertainty,
} from "@wherry/core";
import { derivedUncertainty, isRiverThinned, type SensorRows } from "./derived-uncertainty.ts";
import { instrumentOf } from "./equipment.ts";
import type { WritingContext } from "./writing-context.ts";

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

/** Standard uncertainties on the rows of a product, house units, and how they arose. */
export interface ToldUncertainty {
  readonly values: Float64Array;
  readonly words: readonly string[];
}

/** Columns of a cast on the rows of a product, house units, NaN where missing. */
type Rows = (column: string) => Float64Array | null;

/** House units of the sensors that calibrations correct. */
const CORRECTED = { conductivity: "mS cm-1", temperature: "degree_C", pressure: "dbar" } as const;
type Corrected = keyof typeof CORRECTED;
const isCorrected = (name: string): name is Corrected => name in CORRECTED;
/** Further quantities for which the sheet has a sensor. */
const OTHERS: readonly string[] = ["depth", "salinity", "sound_speed"];

/**
 * Of a measured quantity: as the sheet states it for the sensor, with the share of the drift where the sensor was
 * corrected between two calibrations.
 *
 * @param units of the column, where it is none of those that calibrations correct
 * @returns null if the sheet states none
 */
export function sensorUncertainty(
  name: string,
  units: string,
  cast: Cast,
  context: WritingContext,
  rows: Rows,
): ToldUncertainty | null {
  const read = rows(name);
  if (read === null || !(isCorrected(name) || OTHERS.includes(name))) return null;
  const stated = statedUncertainty(name, isCorrected(name) ? CORRECTED[name] : units, cast, context);
  if (Number.isNaN(stated)) return null;
  const drift = isCorrected(name) ? driftUncertainty(cast, name, read) : null;
  const values = new Float64Array(read.length).fill(stated);
  if (drift === null) return { values, words: [MEASURED] };
  for (let k = 0; k < values.length; k++) values[k] = Math.hypot(stated, drift.values[k]!);
  const between = `${drift.from.slice(0, 10)} and ${drift.to.slice(0, 10)}`;
  return {
    values,
    words: [
      MEASURED,
      `in it, in quadrature, is the drift of ${name} between its calibrations of ${between}: half of what the reading ` +
        "changed by, as the half-width of a rectangular distribution (JCGM 100:2008, 4.3.7)",
    ],
  };
}

/** Of a computed quantity: propagated from the sensors; null where one that counts has no figure. */
export function propagatedUncertainty(
  name: string,
  cast: Cast,
  context: WritingContext,
  rows: Rows,
): ToldUncertainty | null {
  const of = (sensor: Corrected) => sensorUncertainty(sensor, CORRECTED[sensor], cast, context, rows);
  const [C, t, p] = [of("conductivity"), of("temperature"), of("pressure")];
  const sensors: SensorRows = {
    C: C?.values ?? null,
    t: t?.values ?? null,
    p: p?.values ?? null,
  };
  const values = derivedUncertainty(name, cast, rows, sensors);
  if (values === null) return null;
  const counting = name === "depth" ? [p] : [C, t, p];
  const words = [
    PROPAGATED,
    ...counting.flatMap((each) => each?.words.slice(1) ?? []),
    ...(LEFT_OUT[name] === undefined ? [] : [LEFT_OUT[name]]),
    ...(name === "density" && isRiverThinned(rows) ? [COMPOSITION] : []),
  ];
  return { values, words };
}

/** In the unit given; NaN if the sheet states none or a unit that does not fit. */
function statedUncertainty(name: string, units: string, cast: Cast, context: WritingContext): number {
  const sensor = instrumentOf(cast, context).sensors?.[name as Corrected];
  if (sensor?.uncertainty === undefined) return Number.NaN;
  // a difference: the zero points of temperature scales do not enter
  return convertUnits(sensor.uncertainty, sensor.units, units) - convertUnits(0, sensor.units, units);
}
