import { extentOf } from "@wherry/charts";
import type { CastSummary } from "./cast-summary.ts";

export interface LineStation {
  readonly cast: CastSummary;
  /** Along the line from its first station, km. */
  readonly distance: number;
}

export interface StationLine {
  readonly stations: readonly LineStation[];
  /** km. */
  readonly length: number;
  /** Largest distance of a station from the straight line, km. */
  readonly farthest: number;
  /** Casts at a place that another cast of the line stands for. */
  readonly repeated: readonly CastSummary[];
}

/** Fewest places that make a section. */
export const FEWEST = 4;
/** How far a station may lie off the straight line, as a part of its length. */
export const OFF_LINE = 0.1;
/** Nearer than this part of the length, two casts are one place. */
const SAME_PLACE = 0.02;
/** Most sections told. */
const MOST = 6;

/** Mean radius of the Earth, km (IUGG). */
const EARTH = 6371.0088;
const RADIANS = Math.PI / 180;

/**
 * Lines that stations form: the whole survey if its places lie on one, else stretches of casts that follow each other in
 * time and keep to a straight line in one direction.
 *
 * @param casts with levels and a position, in the order of time
 */
export function stationLines(casts: readonly CastSummary[]): readonly StationLine[] {
  const placed = casts.filter(({ levels, start, end }) => levels !== null && (start ?? end) !== null);
  const whole = lineThrough(placed);
  if (whole) return [whole];
  const lines: StationLine[] = [];
  for (let first = 0; first + FEWEST <= placed.length && lines.length < MOST; ) {
    let best: StationLine | null = null;
    let next = first + 1;
    for (let end = first + FEWEST; end <= placed.length; end++) {
      const line = lineThrough(placed.slice(first, end));
      if (!line || !keepsDirection(line)) break;
      [best, next] = [line, end];
    }
    if (best) lines.push(best);
    first = next;
  }
  return lines;
}

/** Stations in the order of the line, if their places lie on one; the first cast in time stands for a place. */
function lineThrough(casts: readonly CastSummary[]): StationLine | null {
  if (casts.length < FEWEST) return null;
  const points = onPlane(casts);
  const [along, length] = principal(points);
  if (!(length > 0.05)) return null;
  const farthest = extentOf(points.map(([x, y]) => Math.abs(x * along[1] - y * along[0])))?.[1] ?? 0;
  if (farthest > OFF_LINE * length) return null;
  const distances = points.map(([x, y]) => x * along[0] + y * along[1]);
  const origin = extentOf(distances)?.[0] ?? 0;
  const stations: LineStation[] = [];
  const repeated: CastSummary[] = [];
  for (const [k, cast] of casts.entries()) {
    const distance = distances[k]! - origin;
    if (stations.some((each) => Math.abs(each.distance - distance) < SAME_PLACE * length))
      repeated.push(cast);
    else stations.push({ cast, distance });
  }
  if (stations.length < FEWEST) return null;
  return { stations: stations.sort((a, b) => a.distance - b.distance), length, farthest, repeated };
}

/** Whether the casts were made from one end of the line to the other. */
function keepsDirection({ stations, repeated }: StationLine): boolean {
  const times = stations.map(({ cast }) => cast.time);
  const rises = times.every((time, k) => k === 0 || time > times[k - 1]!);
  const falls = times.every((time, k) => k === 0 || time < times[k - 1]!);
  return repeated.length === 0 && (rises || falls);
}

type Pair = readonly [x: number, y: number];

/** Kilometres east and north of the middle of the stations: a plane, good enough for telling a line. */
function onPlane(casts: readonly CastSummary[]): readonly Pair[] {
  const fixes = casts.map(({ start, end }) => (start ?? end)!);
  const origin = fixes[0]!;
  const scale = Math.cos(origin.latitude * RADIANS);
  const raw = fixes.map(({ longitude, latitude }): Pair => {
    const turned = ((((longitude - origin.longitude + 180) % 360) + 360) % 360) - 180;
    return [turned * RADIANS * EARTH * scale, (latitude - origin.latitude) * RADIANS * EARTH];
  });
  const mean = (of: 0 | 1) => raw.reduce((sum, each) => sum + each[of], 0) / raw.length;
  const [mx, my] = [mean(0), mean(1)];
  return raw.map(([x, y]) => [x - mx, y - my]);
}

/** Direction in which points spread most, west to east (south to north where that is no direction), and how far. */
function principal(points: readonly Pair[]): readonly [Pair, number] {
  let [xx, xy, yy] = [0, 0, 0];
  for (const [x, y] of points) [xx, xy, yy] = [xx + x * x, xy + x * y, yy + y * y];
  const angle = 0.5 * Math.atan2(2 * xy, xx - yy);
  const along: Pair = [Math.cos(angle), Math.sin(angle)];
  const distances = points.map(([x, y]) => x * along[0] + y * along[1]);
  const [least, most] = extentOf(distances) ?? [0, 0];
  return [along, most - least];
}
