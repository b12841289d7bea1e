import { readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { absoluteSalinityCompositionTerm, densityCompositionTerm } from "./composition-term.ts";
import { depthUncertainty, depthUncertaintyColumn } from "./depth-uncertainty.ts";
import {
  densityUncertainty,
  densityUncertaintyColumn,
  practicalSalinityUncertainty,
  practicalSalinityUncertaintyColumn,
  type SensorUncertainty,
  soundSpeedUncertainty,
  soundSpeedUncertaintyColumn,
} from "./standard-uncertainty.ts";

type Results = { SP: number; rho: number; sound_speed: number; depth: number };
type Point = {
  C: number;
  t: number;
  p: number;
  lat: number;
  u: [number, number, number];
  first_order: Results;
  drawn: Results;
};

// made with the TEOS-10 library by tools/make_uncertainty_points.py
const { points } = JSON.parse(readFileSync(testData("reference", "uncertainty-points.json"), "utf8")) as {
  points: Point[];
};

const sensors = ([C, t, p]: Point["u"]): SensorUncertainty => ({ C, t, p });
const functions: Record<keyof Results, (point: Point) => number> = {
  SP: ({ C, t, p, u }) => practicalSalinityUncertainty(C, t, p, sensors(u)),
  rho: ({ C, t, p, u }) => densityUncertainty(C, t, p, sensors(u)),
  sound_speed: ({ C, t, p, u }) => soundSpeedUncertainty(C, t, p, sensors(u)),
  depth: ({ p, lat, u }) => depthUncertainty(p, lat, u[2]),
};

describe.each(Object.entries(functions) as [keyof Results, (point: Point) => number][])("%s", (name, of) => {
  const far = (way: "first_order" | "drawn", share: number) =>
    points
      .map((point) => ({ ...point, got: of(point), want: point[way][name] }))
      .filter(({ got, want }) => !(Math.abs(got / want - 1) <= share));

  // steps of one uncertainty see a little of the curvature; density and sound speed go by Reference Salinity
  const share = name === "SP" || name === "depth" ? 1e-3 : 3e-3;
  test("derivatives of the TEOS-10 library", () => expect(far("first_order", share)).toEqual([]));
  // a standard deviation of 200 000 draws is known within 0.16 % (one standard deviation)
  test("random draws through the TEOS-10 library", () => expect(far("drawn", 0.01)).toEqual([]));
});

test("there are points of fresh, brackish and sea water", () => {
  expect(points).toHaveLength(60);
  expect(points.filter(({ C }) => C < 3).length).toBeGreaterThan(5);
});

describe("columns", () => {
  const u = { C: 0.01, t: 0.005, p: 0.1 };
  const [C, t, p] = [Float64Array.of(0.1, 20, 45), Float64Array.of(4, 15, 25), Float64Array.of(0, 10, 200)];
  test.each([
    ["salinity", practicalSalinityUncertainty, practicalSalinityUncertaintyColumn],
    ["density", densityUncertainty, densityUncertaintyColumn],
    ["sound speed", soundSpeedUncertainty, soundSpeedUncertaintyColumn],
  ] as const)("%s: the column twin gives what the scalar gives", (_, scalar, twin) => {
    const out = new Float64Array(3);
    twin(C, t, p, u, out);
    expect([...out]).toEqual([0, 1, 2].map((i) => scalar(C[i]!, t[i]!, p[i]!, u)));
    expect(() => twin(C, t, p, u, new Float64Array(2))).toThrow(RangeError);
  });
  test("depth", () => {
    const out = new Float64Array(3);
    depthUncertaintyColumn(p, 45, 0.1, out);
    expect([...out]).toEqual([...p].map((each) => depthUncertainty(each, 45, 0.1)));
  });
});

describe("edges", () => {
  test("sensors without uncertainty give none", () => {
    for (const of of [practicalSalinityUncertainty, densityUncertainty, soundSpeedUncertainty]) {
      expect(of(30, 15, 10, { C: 0, t: 0, p: 0 })).toBe(0);
      expect(of(Number.NaN, 15, 10, { C: 0, t: 0, p: 0 })).toBeNaN();
      expect(of(30, 15, 10, { C: Number.NaN, t: 0.1, p: 0.1 })).toBeNaN();
    }
    expect(depthUncertainty(100, 45, 0)).toBe(0);
  });
  test("a conductivity smaller than its uncertainty still has one", () => {
    const { C, t, p } = { C: 0.01, t: 15, p: 0 };
    const one = practicalSalinityUncertainty(C, t, p, { C: 0.05, t: 0.01, p: 0.1 });
    // 0.05 mS cm-1 is about 0.03 in salinity there
    expect(one).toBeGreaterThan(0.01);
    expect(one).toBeLessThan(0.06);
    expect(practicalSalinityUncertainty(0, t, p, { C: 0.05, t: 0.01, p: 0.1 })).toBeGreaterThan(0.01);
  });
  test("grows with each sensor's uncertainty", () => {
    const u = { C: 0.01, t: 0.01, p: 0.1 };
    for (const key of ["C", "t", "p"] as const) {
      const more = { ...u, [key]: u[key] * 3 };
      expect(densityUncertainty(30, 15, 10, more)).toBeGreaterThan(densityUncertainty(30, 15, 10, u));
    }
  });
});

test("the composition term counts below SP 2 (house choice after Pawlowicz 2015)", () => {
  for (const term of [densityCompositionTerm, absoluteSalinityCompositionTerm]) {
    expect(term(0.3)).toBe(0.1);
    expect(term(2)).toBe(0);
    expect(term(Number.NaN)).toBeNaN();
  }
});
