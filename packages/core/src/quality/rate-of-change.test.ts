import fc from "fast-check";
import { expect, test } from "vitest";
import { rateOfChange } from "./rate-of-change.ts";

/** Straight from the rule: the standard deviation of each window by itself. */
function byDefinition(values: readonly number[], deviations: number, windowRows: number): number[] {
  return values.map((value, k) => {
    if (Number.isNaN(value)) return 9;
    if (k === 0 || Number.isNaN(values[k - 1]!)) return 2;
    const window = values.slice(Math.max(0, k - windowRows), k).filter((each) => !Number.isNaN(each));
    if (window.length < 3) return 2;
    const mean = window.reduce((a, b) => a + b, 0) / window.length;
    const sd = Math.sqrt(window.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (window.length - 1));
    return Math.abs(value - values[k - 1]!) > deviations * sd ? 3 : 1;
  });
}

test("sliding sums give what the definition gives", () =>
  fc.assert(
    fc.property(
      fc.array(fc.option(fc.integer({ min: 0, max: 1000 }), { freq: 12, nil: Number.NaN }), {
        maxLength: 80,
      }),
      fc.integer({ min: 3, max: 20 }),
      (list, windowRows) => {
        // an irrational factor keeps every comparison away from equality
        const found = rateOfChange(Float64Array.from(list), { deviations: Math.E / 2, windowRows });
        expect([...found]).toEqual(byDefinition(list, Math.E / 2, windowRows));
      },
    ),
    { seed: 4 },
  ));

test("steps within the floor pass", () => {
  const values = Float64Array.of(5, 5, 5, 5, 5.04, 5.2);
  expect([...rateOfChange(values, { deviations: 3, windowRows: 10, floor: 0.05 })]).toEqual([
    2, 2, 2, 1, 1, 3,
  ]);
  expect([...rateOfChange(values, { deviations: 3, windowRows: 10 })].slice(3)).toEqual([1, 3, 3]);
});
