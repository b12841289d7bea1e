import fc from "fast-check";
import { expect, test } from "vitest";
import type { Point } from "./cast-rows.ts";
import { thinned } from "./thin.ts";

/** Smallest distance from a point to a line of pieces. */
function away([x, y]: Point, line: readonly Point[]): number {
  let least = Math.hypot(x - line[0]![0], y - line[0]![1]);
  for (const [k, [bx, by]] of line.entries()) {
    const [ax, ay] = line[Math.max(k - 1, 0)]!;
    const square = (bx - ax) ** 2 + (by - ay) ** 2;
    const part =
      square === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square));
    least = Math.min(least, Math.hypot(x - ax - part * (bx - ax), y - ay - part * (by - ay)));
  }
  return least;
}

test("ends, and values farthest out, stay within a quarter of a pixel, whatever the line", () => {
  const number = fc.double({ min: 0, max: 300, noNaN: true });
  fc.assert(
    fc.property(fc.array(fc.tuple(number, number), { minLength: 1, maxLength: 200 }), (points) => {
      const line = thinned(points, "y");
      expect([line[0], line.at(-1)]).toEqual([points[0], points.at(-1)]);
      const across = (of: readonly Point[]) => of.map(([x]) => x);
      for (const pick of [Math.min, Math.max])
        expect(Math.abs(pick(...across(line)) - pick(...across(points)))).toBeLessThanOrEqual(0.25);
      // within one pixel of depth a point may stand beside the line, never farther out than what was kept
      for (const point of points) expect(away(point, line)).toBeLessThanOrEqual(1 + 0.25);
    }),
  );
});

test("a spike of one row in a long line survives, the straight rest does not", () => {
  const points = Array.from({ length: 20_000 }, (_, k): Point => [k === 7_777 ? 90 : 10, k / 50]);
  const line = thinned(points, "y");
  expect(line.map(([x]) => x)).toContain(90);
  expect(line.length).toBeLessThan(12);
});

test("noise costs at most four points a pixel", () => {
  const points = Array.from({ length: 50_000 }, (_, k): Point => [k / 100, 100 + 50 * Math.sin(k * k)]);
  expect(thinned(points, "x").length).toBeLessThanOrEqual(4 * 500);
});
