import fc from "fast-check";
import { expect, test } from "vitest";
import { isolines, type Station } from "./isolines.ts";

const station = (distance: number, ...values: number[]): Station => ({
  distance,
  place: Float64Array.from(values, (_, k) => k),
  values: Float64Array.from(values),
});

test("a slope between two stations: the line runs from where one meets the value to where the other does", () => {
  // value = depth at the left, depth - 2 at the right: the value 2 lies at 2 m and at 4 m
  const lines = isolines(station(0, 0, 1, 2, 3, 4), station(10, -2, -1, 0, 1, 2), 2);
  expect(lines).toHaveLength(1);
  expect(lines[0]![0]).toEqual([0, 2]);
  expect(lines[0]!.at(-1)).toEqual([10, 4]);
  expect(lines[0]).toContainEqual([5, 3]);
});

test("equal profiles: straight across", () => {
  expect(isolines(station(0, 0, 1, 2), station(4, 0, 1, 2), 0.5)).toEqual([
    [
      [0, 0.5],
      [4, 0.5],
    ],
  ]);
});

test("nothing is drawn below the shallower station or across a gap", () => {
  expect(isolines(station(0, 0, 1), station(1, 0, 1, 2, 3, 4), 3)).toEqual([]);
  const lines = isolines(station(0, 0, Number.NaN, 2, 3), station(1, 2, 3, 4, 5), 1);
  expect(lines.flat().every(([, depth]) => depth === 0 || depth >= 2)).toBe(true);
});

test("every point has the value of the line, whatever the profiles", () => {
  const value = fc.double({ min: -5, max: 5, noNaN: true });
  const column = fc.array(value, { minLength: 2, maxLength: 12 });
  fc.assert(
    fc.property(column, column, value, (a, b, level) => {
      const at = (values: number[], depth: number) => {
        const k = Math.min(Math.floor(depth), values.length - 2);
        return values[k]! + (depth - k) * (values[k + 1]! - values[k]!);
      };
      for (const [x, depth] of isolines(station(0, ...a), station(1, ...b), level).flat())
        expect(at(a, depth) * (1 - x) + at(b, depth) * x).toBeCloseTo(level, 6);
    }),
  );
});
