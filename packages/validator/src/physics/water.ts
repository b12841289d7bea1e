import {
  absoluteSalinityColumn,
  conservativeTemperatureColumn,
  referenceSalinityColumn,
  temperatureFrom68,
} from "@wherry/core";
import type { DatasetView } from "../engine/dataset-view.ts";
import type { VariableView } from "../engine/variable-view.ts";
import { onto } from "./onto.ts";
import { only, type Quantity } from "./quantity.ts";

/** Everything that a text may say about how a variable was made. */
export const claimsOf = (variable: VariableView): string =>
  ["source", "references", "comment", "method", "methods", "long_name", "algorithm", "equation"]
    .map((attribute) => variable.text(attribute) ?? "")
    .join(" ");

/** Temperature on ITS-90, in every reading of the scale that the file leaves open: the scale named, or both. */
export function temperatureReadings({ variable, values }: Quantity, onRows: Float64Array): Float64Array[] {
  const told = [...variable.attributes.keys()].map((name) => variable.text(name) ?? "").join(" ");
  const old = /(?:IPTS|T|ITS)[-_ ]?(?:19)?68/i.test(told);
  const present = /(?:ITS|T)[-_ ]?(?:19)?90/i.test(told);
  const from68 = () => onRows.map(temperatureFrom68);
  if (old && !present) return [from68()];
  return present || values.length === 0 ? [onRows] : [onRows, from68()];
}

/** Calls `use` for each run of rows at one position. */
export function eachPosition(
  lon: Float64Array,
  lat: Float64Array,
  use: (from: number, to: number, lon: number, lat: number) => void,
): void {
  for (let from = 0; from < lon.length; ) {
    let to = from + 1;
    while (to < lon.length && Object.is(lon[to], lon[from]) && Object.is(lat[to], lat[from])) to += 1;
    use(from, to, lon[from]!, lat[from]!);
    from = to;
  }
}

/** The measured or stored state of the water on the rows of one variable. */
export interface Water {
  readonly SP: Float64Array;
  readonly t: Float64Array;
  readonly p: Float64Array;
  readonly lon: Float64Array | null;
  readonly lat: Float64Array | null;
  readonly inputs: readonly Quantity[];
}

/** The position on the rows of a variable, by the coordinates that it names. */
export async function positionOf(
  dataset: DatasetView,
  target: VariableView,
): Promise<{ lon: Float64Array | null; lat: Float64Array | null }> {
  const lon = await only(dataset, "longitude");
  const lat = await only(dataset, "latitude");
  return {
    lon: lon === null ? null : await onto(dataset, lon, target),
    lat: lat === null ? null : await onto(dataset, lat, target),
  };
}

export async function waterOn(dataset: DatasetView, target: VariableView): Promise<Water | null> {
  const inputs = await Promise.all([
    only(dataset, "salinity"),
    only(dataset, "temperature"),
    only(dataset, "pressure"),
  ]);
  const [salinity, temperature, pressure] = inputs;
  if (!salinity || !temperature || !pressure) return null;
  const [SP, t, p] = await Promise.all(
    [salinity, temperature, pressure].map((each) => onto(dataset, each, target)),
  );
  if (!SP || !t || !p) return null;
  const reading = temperatureReadings(temperature, t)[0] ?? t;
  const { lon, lat } = await positionOf(dataset, target);
  return { SP, t: reading, p, lon, lat, inputs: [salinity, temperature, pressure] };
}

/** Absolute Salinity and Conservative Temperature; by the atlas where a position is given, else Reference Salinity. */
export function teos(
  { SP, t, p }: Pick<Water, "SP" | "t" | "p">,
  position: { lon: Float64Array; lat: Float64Array } | null,
) {
  const SA = new Float64Array(SP.length);
  const CT = new Float64Array(SP.length);
  if (position === null) referenceSalinityColumn(SP, SA);
  else
    eachPosition(position.lon, position.lat, (from, to, lon, lat) =>
      absoluteSalinityColumn(SP.subarray(from, to), p.subarray(from, to), lon, lat, SA.subarray(from, to)),
    );
  conservativeTemperatureColumn(SA, t, p, CT);
  return { SA, CT };
}

const kept = new WeakMap<Float64Array, { SA: Float64Array; CT: Float64Array }>();

/** The same by the atlas, kept for the columns that need it; null without a position. */
export function atlasWater(water: Water): { SA: Float64Array; CT: Float64Array } | null {
  const { lon, lat, SP } = water;
  if (lon === null || lat === null) return null;
  let known = kept.get(SP);
  if (known === undefined) {
    known = teos(water, { lon, lat });
    kept.set(SP, known);
  }
  return known;
}
