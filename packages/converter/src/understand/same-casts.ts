import { type Cast, type Column, printedResolution } from "@wherry/core";
import { writeUtc } from "./utc-text.ts";

/** Two casts that are one and the same. */
export interface SameCast {
  readonly casts: readonly [CastOfFile, CastOfFile];
  /** Exact: the same rows and values, time and place; near: anything less, as the differences say. */
  readonly how: "exact" | "near";
  readonly differences: readonly string[];
}

export interface CastOfFile {
  readonly path: string;
  readonly id: string;
}

/** Clocks of two zones differ by quarters of an hour, at most by this, s. */
const QUARTER = 900;
const MOST_ZONES = 14 * 3600;
/** Degrees by which a position may differ that was rounded. */
const PLACE = 0.01;
/** Fewer rows or layers tell casts apart only by chance. */
const FEWEST = 4;
const SHARE = 0.9;
/** Rows that are looked for first: casts that are not the same are soon told. */
const SAMPLE = 10;

/**
 * Casts that stand twice among those given: in the same rows, or with other rounding or units, another zone, the other
 * sign of the longitude, some of the rows, or as layer means. Nothing is decided by it; house thresholds.
 */
export function sameCasts(casts: readonly Cast[]): SameCast[] {
  const seen = casts.map(seenCast).filter(({ rows }) => rows >= FEWEST);
  const byTime = seen.filter(({ time }) => !Number.isNaN(time)).sort((a, b) => a.time - b.time);
  const timeless = seen.filter(({ time }) => Number.isNaN(time));
  const order = new Map(seen.map((cast, index) => [cast, index]));
  const found: SameCast[] = [];
  for (const a of seen) {
    const others = Number.isNaN(a.time) ? seen : [...timeless, ...nearInTime(a, byTime)];
    for (const b of new Set(others)) {
      if (order.get(b)! <= order.get(a)!) continue;
      const same = compare(a, b);
      if (same) found.push(same);
    }
  }
  return found;
}

interface SeenCast {
  readonly cast: Cast;
  readonly rows: number;
  readonly time: number;
  readonly duration: number;
  /** The first measured column, and its values from the least to the largest. */
  readonly by: (typeof MEASURED)[number] | null;
  readonly sorted: Float64Array;
}

const MEASURED = ["temperature", "conductivity", "salinity"] as const;

function seenCast(cast: Cast): SeenCast {
  const by = MEASURED.find((name) => cast.columns.has(name)) ?? null;
  const values = by === null ? new Float64Array(0) : cast.columns.get(by)!.values;
  const sorted = values.filter((value) => !Number.isNaN(value)).sort();
  const last = cast.elapsed?.findLast((value) => !Number.isNaN(value)) ?? Number.NaN;
  const duration = Number.isNaN(last) ? cast.endTime - cast.time : last;
  return {
    cast,
    rows: sorted.length === 0 ? 0 : cast.rows,
    time: cast.time,
    duration: Number.isNaN(duration) ? 0 : Math.abs(duration),
    by,
    sorted,
  };
}

/** Casts whose times are the same but for a zone, or for the moment of the cast that they stand for. */
function nearInTime(a: SeenCast, byTime: readonly SeenCast[]): SeenCast[] {
  let low = 0;
  let high = byTime.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (byTime[middle]!.time < a.time - MOST_ZONES) low = middle + 1;
    else high = middle;
  }
  const near: SeenCast[] = [];
  for (let k = low; k < byTime.length && byTime[k]!.time <= a.time + MOST_ZONES; k++)
    if (timesFit(a, byTime[k]!)) near.push(byTime[k]!);
  return near;
}

function timesFit(a: SeenCast, b: SeenCast): boolean {
  const apart = Math.abs(a.time - b.time);
  if (Number.isNaN(apart)) return true;
  const beyondZone = Math.abs(apart - Math.round(apart / QUARTER) * QUARTER);
  return apart <= 60 + Math.max(a.duration, b.duration) || (beyondZone <= 60 && apart <= MOST_ZONES);
}

function compare(first: SeenCast, second: SeenCast): SameCast | null {
  const [longer, shorter] = first.rows >= second.rows ? [first, second] : [second, first];
  const [a, b] = [longer.cast, shorter.cast];
  const places = placeWords(first.cast, second.cast);
  if (places === null || (first.by === second.by && !overlap(first.sorted, second.sorted))) return null;
  const match = rowsOfOther(longer, b) ?? layersOf(a, b);
  if (!match) return null;
  const differences = [...match, ...roundingWords(a, b), ...timeWords(first, second), ...places];
  return {
    casts: [nameOf(first.cast), nameOf(second.cast)],
    how: differences.length === 0 ? "exact" : "near",
    differences,
  };
}

const nameOf = ({ source, id }: Cast): CastOfFile => ({ path: source.path, id });

/** Whether some of the values of one lie within those of the other. */
function overlap(a: Float64Array, b: Float64Array): boolean {
  const reach = a.at(-1)! - a[0]! + b.at(-1)! - b[0]!;
  return Math.max(a[0]!, b[0]!) <= Math.min(a.at(-1)!, b.at(-1)!) + 0.01 * reach;
}

/** Whether a value is among sorted ones, as near as the tolerance. */
function isAmong(sorted: Float64Array, value: number, tolerance: number): boolean {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < value - tolerance) low = middle + 1;
    else high = middle;
  }
  return low < sorted.length && sorted[low]! <= value + tolerance;
}

/** Half a printed step of the coarser of two columns, in their common unit. */
const toleranceOf = (a: Column, b: Column): number => Math.max(halfStep(a), halfStep(b));

function halfStep(column: Column): number {
  let half = known.get(column);
  if (half === undefined) {
    const step = printedResolution(column);
    let size = 0;
    for (const value of column.values) if (Math.abs(value) > size) size = Math.abs(value);
    half = (Number.isNaN(step) ? 0 : 0.51 * step) + 1e-6 * size;
    known.set(column, half);
  }
  return half;
}

const known = new WeakMap<Column, number>();

/** Measured columns that both casts have, in the same unit. */
const sharedColumns = (a: Cast, b: Cast) =>
  MEASURED.flatMap((name) => {
    const [mine, theirs] = [a.columns.get(name), b.columns.get(name)];
    return mine && theirs && mine.units === theirs.units
      ? [{ name, mine, theirs, tolerance: toleranceOf(mine, theirs) }]
      : [];
  });

/**
 * Whether the rows of the shorter cast are rows of the longer one, in their order.
 *
 * @returns words on how many; null if they are not
 */
function rowsOfOther({ cast: a, by, sorted }: SeenCast, b: Cast): string[] | null {
  const shared = sharedColumns(a, b);
  const [key] = shared;
  if (!key) return null;
  const sample = Array.from({ length: SAMPLE }, (_, k) => Math.floor(((k + 0.5) * b.rows) / SAMPLE));
  const isThere = (other: number) => {
    const value = key.theirs.values[other]!;
    return key.name !== by || Number.isNaN(value) || isAmong(sorted, value, key.tolerance);
  };
  if (sample.filter(isThere).length < SHARE * SAMPLE - 1) return null;
  const fits = (row: number, other: number) =>
    shared.every(({ mine, theirs, tolerance }) => {
      const [x, y] = [mine.values[row]!, theirs.values[other]!];
      return Math.abs(x - y) <= tolerance || (Number.isNaN(x) && Number.isNaN(y));
    });
  const isSomewhere = (other: number) => a.lines.some((_, row) => fits(row, other));
  if (sample.filter(isSomewhere).length < SHARE * SAMPLE - 1) return null;
  const met = new Set<number>();
  const wanted = Math.ceil(SHARE * b.rows);
  let from = 0;
  let found = 0;
  for (let other = 0; other < b.rows; other++) {
    if (found + b.rows - other < wanted) return null;
    let row = from;
    while (row < a.rows && !fits(row, other)) row++;
    if (row === a.rows) continue;
    from = row + 1;
    found++;
    met.add(key.theirs.values[other]!);
  }
  // water that is the same throughout tells nothing
  if (found < wanted || met.size < FEWEST) return null;
  return a.rows === b.rows ? [] : [`${b.id} of ${b.source.path} has ${b.rows} of the ${a.rows} rows`];
}

/** Whether the rows of the shorter cast are means of layers of the longer one's rows on the way down. */
function layersOf(a: Cast, b: Cast): string[] | null {
  const name = ["depth", "pressure"].find((each) => a.columns.has(each) && b.columns.has(each));
  const [from, to] = name
    ? [a.columns.get(name)!, b.columns.get(name)!]
    : [
        a.columns.get("pressure") ?? a.columns.get("depth"),
        b.columns.get("pressure") ?? b.columns.get("depth"),
      ];
  const shared = sharedColumns(a, b);
  if (!from || !to || shared.length === 0 || b.rows * 2 > a.rows) return null;
  const centres = to.values;
  for (let k = 1; k < centres.length; k++) if (!(centres[k]! > centres[k - 1]!)) return null;
  const deepest = from.values.reduce((most, value, row) => (value > from.values[most]! ? row : most), 0);
  let layers = 0;
  let fitting = 0;
  for (let k = 0; k < b.rows; k++) {
    const half = 0.5 * Math.min(gap(centres, k), gap(centres, k + 1));
    for (const { mine, theirs, tolerance } of shared) {
      let [sum, count, low, high] = [0, 0, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
      for (let row = 0; row <= deepest; row++) {
        const value = mine.values[row]!;
        if (!(Math.abs(from.values[row]! - centres[k]!) <= half) || Number.isNaN(value)) continue;
        sum += value;
        count++;
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
      if (count === 0 || Number.isNaN(theirs.values[k]!)) continue;
      layers++;
      // rows that were left out of a mean move it by less than half the spread of its layer
      if (Math.abs(theirs.values[k]! - sum / count) <= tolerance + 0.5 * (high - low)) fitting++;
    }
  }
  if (layers < FEWEST * shared.length || fitting < SHARE * layers) return null;
  return [`${b.id} of ${b.source.path} has layer means of the rows of ${a.id} of ${a.source.path}`];
}

/** Distance of a level from the one above it; that of its neighbours at the ends. */
function gap(levels: Float64Array, index: number): number {
  const at = Math.min(Math.max(index, 1), levels.length - 1);
  return levels[at]! - levels[at - 1]!;
}

function roundingWords(a: Cast, b: Cast): string[] {
  const words: string[] = [];
  for (const [name, mine] of a.columns) {
    const theirs = b.columns.get(name);
    if (!mine.source || !theirs?.source) continue;
    const [here, there] = [mine.source, theirs.source];
    if (here.units !== there.units && here.units !== null && there.units !== null)
      words.push(`${name} in ${here.units} and in ${there.units}`);
    else if (here.decimals !== there.decimals)
      words.push(`${name} with ${here.decimals} and with ${there.decimals} decimals`);
  }
  return words;
}

function timeWords({ cast: a }: SeenCast, { cast: b }: SeenCast): string[] {
  if (Number.isNaN(a.time) && Number.isNaN(b.time)) return [];
  const times = [a, b].map(({ time }) => (Number.isNaN(time) ? "none" : writeUtc(time)));
  return a.time === b.time ? [] : [`the times differ: ${times.join(" and ")}`];
}

/** How the positions differ; null if they are those of different casts. */
function placeWords({ start: a }: Cast, { start: b }: Cast): string[] | null {
  if (!a || !b) return a === b ? [] : ["only one of them has a position"];
  const near = (x: number, y: number) => Math.abs(x - y) <= PLACE;
  if (a.latitude === b.latitude && a.longitude === b.longitude) return [];
  if (near(a.latitude, b.latitude) && near(a.longitude, b.longitude))
    return ["the positions are rounded otherwise"];
  if (near(a.latitude, b.latitude) && near(a.longitude, -b.longitude))
    return ["the longitude has the other sign"];
  if (near(a.latitude, -b.latitude) && near(a.longitude, b.longitude))
    return ["the latitude has the other sign"];
  if (near(a.latitude, b.longitude) && near(a.longitude, b.latitude))
    return ["latitude and longitude change places"];
  return null;
}

/** The same casts as findings, for what reports problems. */
export const sameCastProblem = ({ casts: [a, b], how, differences }: SameCast) => ({
  code: `casts/${how === "exact" ? "same" : "nearly-same"}`,
  message:
    `${a.id} of ${a.path} and ${b.id} of ${b.path} are ${how === "exact" ? "the same cast" : "one cast"}` +
    (differences.length === 0 ? "" : `: ${differences.join("; ")}`),
  where: { file: b.path },
  remedy: "Both are kept. Take one away if the survey is to hold the cast once.",
});
