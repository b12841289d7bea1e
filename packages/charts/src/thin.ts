import type { Point } from "./cast-rows.ts";

/** What the eye can't see, in pixels. */
const UNSEEN = 0.25;

/**
 * A line of fewer points that looks the same and loses no extreme: of neighbours within one pixel along the axis of
 * depth or time the first, the outermost two and the last stay; of these, points closer than a quarter of a pixel to
 * the straight line between those kept are dropped (the rule of Ramer, Douglas and Peucker).
 *
 * @param points in pixels, in the order of the line
 * @param along  which coordinate is depth or time
 */
export const thinned = (points: readonly Point[], along: "x" | "y"): readonly Point[] =>
  straightened(extremesOnly(points, along === "x" ? 0 : 1));

function extremesOnly(points: readonly Point[], along: 0 | 1): readonly Point[] {
  const across = along === 0 ? 1 : 0;
  const kept: Point[] = [];
  for (let first = 0; first < points.length; ) {
    const pixel = Math.floor(points[first]![along]);
    let [next, least, most] = [first + 1, first, first];
    for (; next < points.length && Math.floor(points[next]![along]) === pixel; next++) {
      if (points[next]![across] < points[least]![across]) least = next;
      if (points[next]![across] > points[most]![across]) most = next;
    }
    const places = new Set([first, Math.min(least, most), Math.max(least, most), next - 1]);
    for (const place of places) kept.push(points[place]!);
    first = next;
  }
  return kept;
}

function straightened(points: readonly Point[]): readonly Point[] {
  if (points.length < 3) return points;
  const keep = new Uint8Array(points.length);
  keep[0] = keep[points.length - 1] = 1;
  const open: [number, number][] = [[0, points.length - 1]];
  for (let piece = open.pop(); piece; piece = open.pop()) {
    const [from, to] = piece;
    let [farthest, at] = [UNSEEN * UNSEEN, -1];
    for (let k = from + 1; k < to; k++) {
      const away = squareAway(points[k]!, points[from]!, points[to]!);
      if (away > farthest) {
        farthest = away;
        at = k;
      }
    }
    if (at < 0) continue;
    keep[at] = 1;
    open.push([from, at], [at, to]);
  }
  return points.filter((_, k) => keep[k] === 1);
}

/** Square of the distance of a point from the line between two others. */
function squareAway(point: Point, a: Point, b: Point): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const x = point[0] - a[0];
  const y = point[1] - a[1];
  const square = dx * dx + dy * dy;
  const part = square === 0 ? 0 : Math.min(Math.max((x * dx + y * dy) / square, 0), 1);
  return (x - part * dx) ** 2 + (y - part * dy) ** 2;
}
