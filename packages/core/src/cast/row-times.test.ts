import { describe, expect, test } from "vitest";
import { rowTimes } from "./row-times.ts";

const times = (...values: number[]) => rowTimes(Float64Array.from(values));

describe("times of rows", () => {
  test("even times stay as they are", () => {
    const found = times(0, 0.5, 1, 1.5)!;
    expect([...found.seconds]).toEqual([0, 0.5, 1, 1.5]);
    expect(found.interval).toBe(0.5);
    expect(found.placed).toBe(0);
  });

  test("several rows with the same second are spread over it", () => {
    const found = times(0, 0, 0, 0, 1, 1, 1, 1)!;
    expect([...found.seconds]).toEqual([0, 0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75]);
    expect(found.placed).toBe(6);
  });

  test("a clock that is set back does not go back", () => {
    const { seconds } = times(0, 1, 2, 0.5, 1.5, 5)!;
    for (let k = 1; k < seconds.length; k++) expect(seconds[k]!).toBeGreaterThan(seconds[k - 1]!);
  });

  test("missing times are placed between their neighbours and beyond the ends", () =>
    expect([...times(Number.NaN, 1, Number.NaN, 3, Number.NaN)!.seconds]).toEqual([0, 1, 2, 3, 4]));

  test("no times, one time or one and the same time are none", () => {
    expect(rowTimes(null)).toBeNull();
    expect(times()).toBeNull();
    expect(times(4)).toBeNull();
    expect(times(4, 4, 4)).toBeNull();
  });
});
