import type { Point } from "./cast-rows.ts";

/** A column of values in a section: places increase, one value each; missing is NaN. */
export interface Station {
  /** Along the section. */
  readonly distance: number;
  readonly place: Float64Array;
  readonly values: Float64Array;
}

/**
 * Lines of one value between two neighbouring stations, where values change linearly with distance at equal depth.
 * None below the shallower of the two, none across missing values.
 *
 * @returns lines of points (distance, depth)
 */
export function isolines(left: Station, right: Station, level: number): readonly (readonly Point[])[] {
  const depths = new Set<number>();
  for (const { place, values } of [left, right]) {
    for (const [k, depth] of place.entries()) {
      if (Number.isNaN(values[k])) continue;
      depths.add(depth);
      const crossing = crossingAfter(place, values, k, level);
      if (crossing !== null) depths.add(crossing);
    }
  }
  const runs: Point[][] = [];
  let broken = true;
  for (const depth of [...depths].sort((a, b) => a - b)) {
    const [a, b] = [valueAt(left, depth) - level, valueAt(right, depth) - level];
    // the two ends of a line lie on the stations, where one of the values is the level itself
    const part = near(a) ? 0 : near(b) ? 1 : a * b < 0 ? a / (a - b) : Number.NaN;
    if (Number.isNaN(part)) {
      broken = true;
      continue;
    }
    if (broken) runs.push([]);
    broken = false;
    const run = runs.at(-1)!;
    const point = (p: number): Point => [left.distance + p * (right.distance - left.distance), depth];
    run.push(point(part));
    // equal on both sides: the line goes straight across
    if (near(a) && near(b)) run.push(point(1));
  }
  return runs.filter((run) => run.length > 1);
}

const near = (difference: number) => Math.abs(difference) < 1e-9;

/** Depth between level k and the next at which the value is met; null if there is none. */
function crossingAfter(place: Float64Array, values: Float64Array, k: number, level: number): number | null {
  const [a, b] = [values[k]! - level, (values[k + 1] ?? Number.NaN) - level];
  return a * b < 0 ? place[k]! + (a / (a - b)) * (place[k + 1]! - place[k]!) : null;
}

/** Value at a depth, linear between neighbouring levels; NaN outside them and across missing ones. */
function valueAt({ place, values }: Station, depth: number): number {
  let [low, high] = [0, place.length - 1];
  if (high < 0 || depth < place[0]! || depth > place[high]!) return Number.NaN;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (place[middle]! <= depth) low = middle;
    else high = middle;
  }
  if (depth === place[low]!) return values[low]!;
  if (depth === place[high]!) return values[high]!;
  const part = (depth - place[low]!) / (place[high]! - place[low]!);
  return values[low]! + part * (values[high]! - values[low]!);
}
