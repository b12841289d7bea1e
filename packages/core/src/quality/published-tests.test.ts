import { describe, expect, test } from "vitest";
import { multivariate } from "./multivariate.ts";
import { neighbour } from "./neighbour.ts";

describe("multivariate", () => {
  // values alternate by 1 about their level: the standard deviation of a window of 4 is sqrt(4/3)/... by hand:
  // values 0 1 0 1 have mean 0.5 and squares 4 * 0.25 = 1, divisor 3, hence 0.57735
  const still = [0, 1, 0, 1];
  const limits = { deviations: 3, otherDeviations: 2, windowRows: 4 };
  const judged = (last: number, otherLast: number) =>
    multivariate(Float64Array.of(...still, last), Float64Array.of(...still, otherLast), limits)[4];

  test("a step of 3 x 0.577 = 1.73 or less passes", () => expect(judged(2.7, 1)).toBe(1));
  test("a larger one that the other quantity does not share is questionable", () =>
    expect(judged(2.8, 1)).toBe(3));
  test("a shared step passes: the other one went more than 2 x 0.577", () => expect(judged(9, 2.2)).toBe(1));
  test("the first rows, and rows beside missing values, are not judged", () =>
    expect([...multivariate(Float64Array.of(0, 1, NaN, 1), Float64Array.of(0, 1, 0, 1), limits)]).toEqual([
      2, 2, 9, 2,
    ]));
});

describe("neighbour", () => {
  // limits of the published example: 0.5 degC above 15 dbar, 1 degC to 40 dbar
  const layers = [
    { pressureRange: [0, 15], largestDifference: 0.5 },
    { pressureRange: [15, 40], largestDifference: 1 },
  ] as const;
  const former = { pressure: Float64Array.of(0, 10, 20, 30), values: Float64Array.of(10, 11, 12, NaN) };
  test("against the earlier profile at equal pressure", () =>
    expect([
      ...neighbour(
        Float64Array.of(10.9, 11.2, 12.9, 12, 9, 9, NaN),
        Float64Array.of(5, 5, 16, 16, 25, 31, 5),
        former,
        layers,
      ),
    ]).toEqual([1, 3, 3, 1, 2, 2, 9]));
});
