import { type Cast, type Column, Flag } from "@wherry/core";

/** How a row is drawn. Rows in air are not. */
export type Manner = "down" | "up" | "rest" | "all" | "air";

/** The manner of every row, by its segment; without segments by what is known of the whole cast. */
export function mannerOfRows(cast: Cast): readonly Manner[] {
  const { direction } = cast.state;
  const whole: Manner = direction === "down" ? "down" : direction.startsWith("up") ? "up" : "all";
  const manners = new Array<Manner>(cast.rows).fill(cast.segments.length > 0 ? "rest" : whole);
  for (const { kind, firstRow, lastRow } of cast.segments) {
    const manner =
      kind === "down" || kind === "up" || kind === "air" ? kind : kind === "stay" ? "all" : "rest";
    manners.fill(manner, firstRow, lastRow + 1);
  }
  return manners;
}

/** Whether the row has a value that is not bad, at a place that is not bad. */
export const isSound = (column: Column, place: Column, row: number): boolean =>
  Number.isFinite(column.values[row]) &&
  Number.isFinite(place.values[row]) &&
  column.flags[row] !== Flag.bad &&
  place.flags[row] !== Flag.bad;

export type Point = readonly [x: number, y: number];

/**
 * Runs of neighbouring points of one manner. A run ends where a value is missing or bad, so that no line is drawn
 * through what is not there.
 */
export function runsOf(
  manners: readonly Manner[],
  manner: Manner,
  sound: (row: number) => boolean,
  point: (row: number) => Point,
): readonly (readonly Point[])[] {
  const runs: Point[][] = [];
  let run: Point[] = [];
  for (const [row, each] of manners.entries()) {
    if (each === manner && sound(row)) run.push(point(row));
    else if (run.length > 0) {
      runs.push(run);
      run = [];
    }
  }
  if (run.length > 0) runs.push(run);
  return runs;
}

/** Of many points only such as are at least `apart` from the last one kept, so that marks can be told apart. */
export function spreadOut(points: readonly Point[], apart: number): readonly Point[] {
  const kept: Point[] = [];
  for (const point of points) {
    const crowded = kept.some(([x, y]) => Math.hypot(point[0] - x, point[1] - y) < apart);
    if (!crowded) kept.push(point);
  }
  return kept;
}
