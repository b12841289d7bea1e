import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { density } from "./density.ts";
import { depthFromPressure } from "./depth.ts";
import { depthFromDensityColumn } from "./depth-from-density.ts";

const depths = (p: number[], rho: number[], lat = 45) => {
  const out = new Float64Array(p.length);
  depthFromDensityColumn(Float64Array.from(p), Float64Array.from(rho), lat, out);
  return out;
};

describe("depthFromDensityColumn", () => {
  test("equals the standard ocean's depth in the standard ocean", () => {
    const p = Array.from({ length: 1001 }, (_, i) => i / 2);
    const out = depths(
      p,
      p.map((pressure) => density(35.16504, 0, pressure)),
      30,
    );
    for (const i of [0, 1, 60, 500, 1000]) {
      expect(Math.abs(out[i]! - depthFromPressure(p[i]!, 30))).toBeLessThan(1e-6);
    }
  });

  // dz = 1e4 v dp / g summed over 30,000 steps, specific volume and surface gravity from the TEOS-10 library
  // 3.6.16, gravity growing by 2.26e-7 a metre of the depth reached
  test.each([
    { water: "fresh water at 15 degrees", SA: 0, CT: 15.801320759751, want: 30.618107 },
    { water: "brackish water at 10 degrees", SA: 15.07, CT: 10.329980209142, want: 30.246412 },
  ])("30 dbar in $water is $want m", ({ SA, CT, want }) => {
    const p = Array.from({ length: 61 }, (_, i) => i / 2);
    const out = depths(
      p,
      p.map((pressure) => density(SA, CT, pressure)),
    );
    expect(Math.abs(out[60]! - want)).toBeLessThanOrEqual(2e-6);
  });

  test("rows in any order get the depth of their pressure", () => {
    const p = [3, 1, 2, 0.5, 2];
    const rho = [1020, 1005, 1010, 1003, 1010];
    const sorted = depths([0.5, 1, 2, 2, 3], [1003, 1005, 1010, 1010, 1020]);
    expect([...depths(p, rho)]).toEqual([sorted[4], sorted[1], sorted[2], sorted[0], sorted[2]]);
  });

  test("rows without a density lie between their neighbours, above and below them", () => {
    const out = depths([-0.5, 1, 1.5, 2, 4], [Number.NaN, 1000, Number.NaN, 1000, Number.NaN]);
    const even = depths([-0.5, 1, 1.5, 2, 4], [1000, 1000, 1000, 1000, 1000]);
    out.forEach((depth, row) => {
      expect(depth).toBeCloseTo(even[row]!, 12);
    });
  });

  test("missing pressure stays missing, and without any density all is missing", () => {
    expect([...depths([Number.NaN, 1], [1000, 1000])].map(Number.isNaN)).toEqual([true, false]);
    expect([...depths([1, 2], [Number.NaN, Number.NaN])]).toEqual([Number.NaN, Number.NaN]);
    expect([...depths([], [])]).toEqual([]);
  });

  test("depth grows with pressure", () => {
    const rows = fc.array(
      fc.tuple(
        fc.double({ min: 0, max: 200, noNaN: true }),
        fc.oneof(fc.double({ min: 990, max: 1040, noNaN: true }), fc.constant(Number.NaN)),
      ),
      { minLength: 2, maxLength: 40 },
    );
    fc.assert(
      fc.property(rows, (pairs) => {
        const sorted = [...pairs].sort(([a], [b]) => a - b);
        const out = depths(
          sorted.map(([p]) => p),
          sorted.map(([, rho]) => rho),
        );
        if (sorted.every(([, rho]) => Number.isNaN(rho))) return;
        for (let i = 1; i < out.length; i++) expect(out[i]!).toBeGreaterThanOrEqual(out[i - 1]!);
      }),
    );
  });

  test("columns of different length are a wrong call", () => {
    expect(() =>
      depthFromDensityColumn(new Float64Array(2), new Float64Array(3), 45, new Float64Array(2)),
    ).toThrow(RangeError);
  });
});
