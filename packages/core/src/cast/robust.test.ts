import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { median, pressureNoise, quantile, robustSd } from "./robust.ts";

const numbers = (...values: number[]) => Float64Array.from(values);

describe("median and quantile", () => {
  test.each([
    { values: [3, 1, 2], fraction: 0.5, want: 2, from: "middle of three" },
    { values: [4, 1, 3, 2], fraction: 0.5, want: 2.5, from: "mean of the middle two" },
    { values: [1, 2, 3, 4, 5], fraction: 0.25, want: 2, from: "rank 1 of 0 to 4" },
    { values: [10, 20], fraction: 0.05, want: 10.5, from: "linear between ranks" },
    { values: [Number.NaN, 7, Number.NaN], fraction: 0.9, want: 7, from: "missing values do not count" },
  ])("$from", ({ values, fraction, want }) => expect(quantile(numbers(...values), fraction)).toBe(want));

  test("of nothing is NaN", () => {
    expect(median(numbers())).toBeNaN();
    expect(median(numbers(Number.NaN))).toBeNaN();
  });

  test("equals the definition by sorting, and leaves its input alone", () =>
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1, maxLength: 60 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (list, fraction) => {
          const values = numbers(...list);
          const sorted = [...list].sort((a, b) => a - b);
          const place = fraction * (list.length - 1);
          const [low, high] = [sorted[Math.floor(place)]!, sorted[Math.ceil(place)]!];
          expect(quantile(values, fraction)).toBeCloseTo(low + (place - Math.floor(place)) * (high - low), 9);
          expect([...values]).toEqual(list);
        },
      ),
      { seed: 1 },
    ));
});

test("robust standard deviation is the median deviation over 0.6745", () =>
  expect(robustSd(numbers(1, 2, 3, 4, 100))).toBeCloseTo(1 / 0.6745, 12));

describe("pressure noise", () => {
  test("a straight line has none", () =>
    expect(pressureNoise(Float64Array.from({ length: 50 }, (_, k) => 0.25 * k))).toBe(0));

  test("alternating readings of +-1: every second difference is 4", () =>
    expect(pressureNoise(Float64Array.from({ length: 50 }, (_, k) => (k % 2 === 0 ? 1 : -1)))).toBeCloseTo(
      4 / 0.6745 / Math.sqrt(6),
      12,
    ));

  test.each([0, 1, 2])("%i rows have none", (rows) => expect(pressureNoise(new Float64Array(rows))).toBe(0));
});
