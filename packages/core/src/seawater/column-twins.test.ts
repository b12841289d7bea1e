import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as core from "../index.ts";

/** Every equation by name, with the kind of each input; `lat` and `lon` stay scalars in the twin. */
const equations = {
  absoluteSalinity: ["SP", "p", "lon", "lat"],
  conductivityFromSalinity: ["SP", "t", "p"],
  conservativeTemperature: ["SP", "t", "p"],
  density: ["SP", "t", "p"],
  densityEos80: ["SP", "t", "p"],
  depthFromPressure: ["p", "lat"],
  depthFromPressureUnesco: ["p", "lat"],
  adiabaticLapseRateEos80: ["SP", "t", "p"],
  freezingTemperature: ["SP", "p", "airSaturation"],
  freezingTemperatureEos80: ["SP", "p"],
  halineContraction: ["SP", "t", "p"],
  oxygenSolubility: ["SP", "t"],
  potentialTemperature0: ["SP", "t", "p"],
  potentialTemperatureEos80: ["SP", "t", "p"],
  practicalSalinity: ["C", "t", "p"],
  pressureFromDepth: ["p", "lat"],
  pressureFromDepthSaunders: ["p", "lat"],
  referenceSalinity: ["SP"],
  salinityFromAbsolute: ["SP", "p", "lon", "lat"],
  sigma0: ["SP", "t"],
  soundSpeed: ["SP", "t", "p"],
  soundSpeedChenMillero: ["SP", "t", "p"],
  soundSpeedDelGrosso: ["SP", "t", "p"],
  specificConductance25: ["C", "t"],
  specificConductance25Pss78: ["C", "t", "p"],
  spiciness0: ["SP", "t"],
  temperatureFrom68: ["t"],
  temperatureFromConservative: ["SP", "t", "p"],
  temperatureTo68: ["t"],
  thermalExpansion: ["SP", "t", "p"],
} as const;

type Kind = "SP" | "C" | "t" | "p" | "lat" | "lon" | "airSaturation";

const values: Record<Kind, number[]> = {
  SP: [0.5, 12, 35, 0],
  C: [0.9, 18, 42.914, 0],
  t: [18, 4, 15, 30],
  p: [0.2, 12, 90, 0],
  lat: [-43],
  lon: [-9],
  airSaturation: [1],
};
const scalar = (kind: Kind) => values[kind].length === 1;

// the public face is looked up by name, as a program outside would do
const face = core as unknown as Record<string, (...args: unknown[]) => number>;

describe.each(Object.entries(equations))("%s", (name, kinds) => {
  const equation = face[name]!;
  const twin = face[`${name}Column`]!;
  const row = (i: number) => kinds.map((kind) => (scalar(kind) ? values[kind][0]! : values[kind][i]!));

  test("the column twin gives what the scalar gives", () => {
    const out = new Float64Array(4);
    twin(...kinds.map((kind) => (scalar(kind) ? values[kind][0] : Float64Array.from(values[kind]))), out);
    expect([...out]).toEqual([0, 1, 2, 3].map((i) => equation(...row(i))));
    expect([...out].every(Number.isFinite)).toBe(true);
  });

  test("the column twin refuses an out of another length", () => {
    const columns = kinds.map((kind) => (scalar(kind) ? values[kind][0] : Float64Array.from(values[kind])));
    expect(() => twin(...columns, new Float64Array(5))).toThrow(RangeError);
  });

  test.each(kinds.map((kind, i) => [kind, i] as const))("NaN in %s gives NaN", (_, missing) => {
    for (const i of [0, 1, 2, 3]) {
      expect(equation(...row(i).map((value, k) => (k === missing ? Number.NaN : value)))).toBeNaN();
    }
  });

  test("gives a number, or NaN, for any numbers", () => {
    fc.assert(
      fc.property(fc.array(fc.double(), { minLength: kinds.length, maxLength: kinds.length }), (inputs) => {
        expect(typeof equation(...inputs)).toBe("number");
      }),
    );
  });

  test("its range of validity is exported", () => {
    const shared = name.startsWith("temperatureFrom68") || name.startsWith("temperatureTo68");
    const range = (core as Record<string, unknown>)[`${shared ? "temperatureScale" : name}Range`];
    expect(range).toBeDefined();
    for (const [low, high] of Object.values(range as core.ValidityRange)) expect(low).toBeLessThan(high);
  });
});

describe("practical salinity at the low end", () => {
  test("no conductivity is no salinity", () => {
    for (const t of [-1, 0, 15, 30]) expect(core.practicalSalinity(0, t, 0)).toBe(0);
    expect(core.conductivityFromSalinity(0, 15, 0)).toBe(0);
  });
  test("the dip of the low-salinity form below 0 is 0 (the TEOS-10 library gives no number there)", () => {
    for (const C of [1e-6, 1e-4, 5e-4, 1e-3]) expect(core.practicalSalinity(C, 15, 0)).toBe(0);
    expect(core.practicalSalinity(2e-3, 15, 0)).toBeCloseTo(0.0002526123054514127, 12);
  });
  test("a negative conductivity has none", () => expect(core.practicalSalinity(-0.01, 15, 0)).toBeNaN());
  test("is continuous at 2 (TEOS-10 form)", () => {
    for (const t of [0, 10, 25]) {
      const C = core.conductivityFromSalinity(2, t, 0);
      const below = core.practicalSalinity(C * (1 - 1e-12), t, 0);
      const above = core.practicalSalinity(C * (1 + 1e-12), t, 0);
      expect(Math.abs(above - below)).toBeLessThan(1e-10);
    }
  });
  test("there and back over the whole range", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 42, noNaN: true }),
        fc.double({ min: -2, max: 35, noNaN: true }),
        fc.double({ min: 0, max: 1000, noNaN: true }),
        (SP, t, p) => {
          expect(core.practicalSalinity(core.conductivityFromSalinity(SP, t, p), t, p)).toBeCloseTo(SP, 11);
        },
      ),
    );
  });
});
