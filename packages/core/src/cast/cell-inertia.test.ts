import { describe, expect, test } from "vitest";
import { conductivityFromSalinity } from "../seawater/conductivity-from-salinity.ts";
import { cellMemory, conductivityPerDegree } from "./cell-inertia.ts";

describe("heat kept by the wall of a conductivity cell", () => {
  // Values of the shared processing notes: PSS-78 by the TEOS-10 library, and the discrete form worked by hand.
  test.each([
    [35, 15, 0, 0.98352],
    [10, 15, 0, 0.32147],
    [35, 5, 100, 0.90596],
    [0.2, 20, 5, 0.00831],
  ])("SP %d at %d degC and %d dbar", (SP, t, p, expected) =>
    expect(conductivityPerDegree(conductivityFromSalinity(SP, t, p), t, p)).toBeCloseTo(expected, 4),
  );

  const seconds = Float64Array.from({ length: 8 }, (_, k) => k * 0.25);
  test("memory of a size of 0.03 and 8 s", () => {
    const memory = cellMemory(Float64Array.of(15, 15, 14, 13, 12, 12, 12, 12), seconds, 0.03, 8);
    const expected = [0, 0, -0.029536, -0.058163, -0.08591, -0.083267, -0.080705, -0.078222];
    for (const [k, value] of expected.entries()) expect(memory[k]).toBeCloseTo(value, 6);
  });

  test("a missing temperature between two rows of a straight line changes nothing after it", () => {
    const straight = cellMemory(Float64Array.of(15, 14, 13, 12), seconds.subarray(0, 4), 0.03, 8);
    const holed = cellMemory(Float64Array.of(15, Number.NaN, 13, 12), seconds.subarray(0, 4), 0.03, 8);
    expect(holed[3]).toBeCloseTo(straight[3]!, 4);
    expect(holed.every((E) => !Number.isNaN(E))).toBe(true);
  });
});
