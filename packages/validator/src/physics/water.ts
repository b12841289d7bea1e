import {
  absoluteSalinityColumn,
  conservativeTemperatureColumn,
  referenceSalinityColumn,
  temperatureFrom68Column,
} from "@wherry/core";
import type { DatasetView } from "../engine/dataset-view.ts";
import type { VariableView } from "../engine/variable-view.ts";
import { type Candidate, type Equation, PIECE } from "./compare.ts";
import { onto } from "./onto.ts";
import { type Kind, only, type Quantity } from "./quantity.ts";
import { QUICK_ERROR, quickTemperature } from "./quick-temperature.ts";
import { errorFrom } from "./tolerance.ts";

/** Everything that a text may say about how a variable was made. */
export const claimsOf = (variable: VariableView): string =>
  ["source", "references", "comment", "method", "methods", "long_name", "algorithm", "equation"]
    .map((attribute) => variable.text(attribute) ?? "")
    .join(" ");

/** Temperature on ITS-90, in every reading of the scale that the file leaves open: the scale named, or both. */
export function temperatureReadings(
  { variable, values }: Quantity,
  onRows: Float64Array,
): (() => Float64Array)[] {
  const told = [...variable.attributes.keys()].map((name) => variable.text(name) ?? "").join(" ");
  const old = /(?:IPTS|T|ITS)[-_ ]?(?:19)?68/i.test(told);
  const present = /(?:ITS|T)[-_ ]?(?:19)?90/i.test(told);
  const asIs = () => onRows;
  let made: Float64Array | undefined;
  const from68 = () => {
    if (made === undefined) {
      made = new Float64Array(onRows.length);
      temperatureFrom68Column(onRows, made);
    }
    return made;
  };
  if (old && !present) return [from68];
  return present || values.length === 0 ? [asIs] : [asIs, from68];
}

/** Latitude on the rows of a variable, by the coordinates that it names; null if the file tells none. */
export async function latitudeOn(dataset: DatasetView, target: VariableView): Promise<Float64Array | null> {
  const lat = await only(dataset, "latitude");
  return lat === null ? null : onto(dataset, lat, target);
}

/** Rows from `from` to `to` (exclusive) at one position. */
export interface PositionRun {
  readonly from: number;
  readonly to: number;
  readonly lon: number;
  readonly lat: number;
}

/** Runs of rows with one position, where every row has its own. */
function runsOfRows(lon: Float64Array, lat: Float64Array): PositionRun[] {
  const runs: PositionRun[] = [];
  for (let from = 0; from < lon.length; ) {
    let to = from + 1;
    while (to < lon.length && Object.is(lon[to], lon[from]) && Object.is(lat[to], lat[from])) to += 1;
    runs.push({ from, to, lon: lon[from]!, lat: lat[from]! });
    from = to;
  }
  return runs;
}

/** The same where rows are counted feature by feature. */
function runsOfCounts(
  counts: Float64Array,
  rows: number,
  lon: Float64Array,
  lat: Float64Array,
): PositionRun[] {
  const runs: PositionRun[] = [];
  let from = 0;
  counts.forEach((count, feature) => {
    const to = Math.min(rows, from + Math.max(0, count || 0));
    if (to > from) runs.push({ from, to, lon: lon[feature]!, lat: lat[feature]! });
    from = to;
  });
  if (from < rows) runs.push({ from, to: rows, lon: Number.NaN, lat: Number.NaN });
  return runs;
}

/** The positions on the rows of a variable; null if the file tells none. */
async function positionsOn(
  dataset: DatasetView,
  target: VariableView,
): Promise<readonly PositionRun[] | null> {
  const lon = await only(dataset, "longitude");
  const lat = await only(dataset, "latitude");
  if (lon === null || lat === null) return null;
  const [dimension = "", ...others] = target.dimensions;
  const link = others.length === 0 ? dataset.link(dimension) : undefined;
  const perFeature = [lon, lat].every(({ variable }) => variable.dimensions.join() === link?.to);
  if (link?.kind === "count" && perFeature) {
    const counts = await dataset.data.numbers(link.variable);
    if (counts !== null) return runsOfCounts(counts, target.shape[0] ?? 0, lon.values, lat.values);
  }
  const [x, y] = await Promise.all([onto(dataset, lon, target), onto(dataset, lat, target)]);
  return x === null || y === null ? null : runsOfRows(x, y);
}

/** The measured or stored state of the water on the rows of one variable. */
export interface Water {
  readonly SP: Float64Array;
  readonly t: Float64Array;
  readonly p: Float64Array;
  /** All rows, in their order; null where no position is known. */
  readonly positions: readonly PositionRun[] | null;
  readonly inputs: readonly Quantity[];
}

const waters = new WeakMap<DatasetView, Map<string, Promise<Water | null>>>();

/** The water on the rows of a variable, kept for all variables on its dimensions; null where a part is missing. */
export function waterOn(dataset: DatasetView, target: VariableView): Promise<Water | null> {
  const known = waters.get(dataset) ?? new Map<string, Promise<Water | null>>();
  waters.set(dataset, known);
  const key = target.dimensions.join();
  const water = known.get(key) ?? readWater(dataset, target);
  known.set(key, water);
  return water;
}

async function readWater(dataset: DatasetView, target: VariableView): Promise<Water | null> {
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
  const reading = temperatureReadings(temperature, t)[0]?.() ?? t;
  const positions = await positionsOn(dataset, target);
  return { SP, t: reading, p, positions, inputs: [salinity, temperature, pressure] };
}

/** Index of the run that holds a row. */
function runAt(runs: readonly PositionRun[], row: number): number {
  let [low, high] = [0, runs.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (runs[middle]!.to <= row) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Absolute Salinity of some rows; by the atlas where there is a position, else Reference Salinity. */
function fillAbsoluteSalinity({ SP, p, positions }: Water, from: number, to: number, SA: Float64Array): void {
  if (positions === null) {
    referenceSalinityColumn(SP.subarray(from, to), SA);
    return;
  }
  for (let k = runAt(positions, from); k < positions.length && positions[k]!.from < to; k += 1) {
    const run = positions[k]!;
    const [first, end] = [Math.max(from, run.from), Math.min(to, run.to)];
    absoluteSalinityColumn(
      SP.subarray(first, end),
      p.subarray(first, end),
      run.lon,
      run.lat,
      SA.subarray(first - from, end - from),
    );
  }
}

const kept = new WeakMap<Water, { SA: Float64Array; CT: Float64Array }>();

/** Absolute Salinity and quick Conservative Temperature of all rows, kept for the columns that need them. */
function quickWater(water: Water): { SA: Float64Array; CT: Float64Array } {
  let known = kept.get(water);
  if (known === undefined) {
    const { SP, t, p } = water;
    known = { SA: new Float64Array(SP.length), CT: new Float64Array(SP.length) };
    const temperature = quickTemperature(water);
    for (let from = 0; from < SP.length; from += PIECE) {
      const to = Math.min(from + PIECE, SP.length);
      const SA = known.SA.subarray(from, to);
      fillAbsoluteSalinity(water, from, to, SA);
      temperature(SA, t.subarray(from, to), p.subarray(from, to), known.CT.subarray(from, to));
    }
    kept.set(water, known);
  }
  return known;
}

/** The way to compute a quantity by its equation of TEOS-10, from Absolute Salinity, Conservative Temperature, pressure. */
export const teosCandidate = (name: string, water: Water, kind: Kind, equation: Equation): Candidate => ({
  name,
  fill(from, to, out) {
    const [SA, CT] = [new Float64Array(to - from), new Float64Array(to - from)];
    const p = water.p.subarray(from, to);
    fillAbsoluteSalinity(water, from, to, SA);
    conservativeTemperatureColumn(SA, water.t.subarray(from, to), p, CT);
    equation(SA, CT, p, out);
  },
  quick: {
    error: errorFrom(kind, "temperature", QUICK_ERROR),
    fill(from, to, out) {
      const { SA, CT } = quickWater(water);
      equation(SA.subarray(from, to), CT.subarray(from, to), water.p.subarray(from, to), out);
    },
  },
});
