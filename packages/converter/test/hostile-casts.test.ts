import { type Cast, layerMeans } from "@wherry/core";
import { castOf, inventCast } from "@wherry/testkit";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { processCast } from "../src/recipe/process-cast.ts";
import { defaultSettings, type RecipeSettings } from "../src/recipe/settings.ts";

// Records that no water makes, through every step with every number given.

const everything: RecipeSettings = {
  ...defaultSettings,
  clock: {
    pairs: [
      { instrument: "2023-06-14T00:00:00Z", true: "2023-06-14T00:00:10Z" },
      { instrument: "2023-06-15T00:00:00Z", true: "2023-06-15T00:00:30Z" },
    ],
    largestDrift: 1,
  },
  calibration: {
    temperature: [{ date: "2023-01-01", offset: 0.01 }],
    conductivity: [
      { date: "2023-01-01", slope: 1.001 },
      { date: "2023-12-01", slope: 1.004 },
    ],
    pressure: [{ date: "2023-01-01", offset: -0.02 }],
    salinityOffset: null,
  },
  response: {
    ...defaultSettings.response,
    temperature: { time: 0.4, delay: 0.1 },
    conductivity: { time: 0.1, delay: -0.05 },
  },
  cell: { size: 0.03, relaxationTime: 8 },
  smoothing: { window: 1 },
  quality: {
    ...defaultSettings.quality,
    expectedRanges: { temperature: [0, 25] },
    spikeReturn: { temperature: { floor: 0.1 } },
    tests: {
      climatology: {
        temperature: [{ pressureRange: [0, 10], expectedRange: [5, 20] }],
        salinity: [{ pressureRange: [0, 10], expectedRange: [5, 20] }],
      },
      spike: { temperature: { questionableAbove: 0.5, badAbove: 2 } },
      gradientVertical: { salinity: { shallowLimit: 1.5, deepLimit: 0.5 } },
      endSpike: { temperature: { limit: 10 } },
      digitRollover: { conductivity: { limit: 30 } },
      attenuatedSignal: { temperature: { badBelow: 0.01, questionableBelow: 0.05 } },
      multivariate: {
        temperature: { other: "conductivity", deviations: 3, otherDeviations: 2, windowRows: 5 },
      },
    },
  },
};

/** What must hold of anything that comes out. */
function process(cast: Cast): Cast {
  const processed = processCast(cast, everything);
  let next = 0;
  for (const { firstRow, lastRow } of processed.segments) {
    expect(firstRow).toBe(next);
    next = lastRow + 1;
  }
  expect(next).toBe(cast.rows);
  for (const { name, flags, values } of processed.columns.values())
    for (let k = 0; k < cast.rows; k++) {
      if ((flags[k] === 9) !== Number.isNaN(values[k]!)) expect.fail(`${name}, row ${k}: flag ${flags[k]}`);
      if (Math.abs(values[k]!) === Number.POSITIVE_INFINITY) expect.fail(`${name}, row ${k} is infinite`);
    }
  for (const direction of ["down", "up"] as const)
    layerMeans(processed, { width: null, coordinate: "pressure", direction });
  return processed;
}

const ordinary = inventCast({ seed: 9 }).cast;
const values = (name: string) => ordinary.columns.get(name)!.values;
const changed = (change: Partial<Record<string, Float64Array>>, elapsed = ordinary.elapsed): Cast =>
  castOf(
    {
      pressure: change.pressure ?? values("pressure"),
      temperature: change.temperature ?? values("temperature"),
      conductivity: change.conductivity ?? values("conductivity"),
    },
    elapsed,
  );
const kinds = (cast: Cast) => [...new Set(cast.segments.map(({ kind }) => kind))];

describe("hostile casts", () => {
  test("an ordinary cast with every number given has its parts and its raw columns", () => {
    const cast = process(ordinary);
    expect(kinds(cast)).toEqual(expect.arrayContaining(["air", "soak", "down", "bottom", "up"]));
    for (const name of ["temperature", "conductivity", "pressure"])
      expect([...cast.columns.get(`${name}_received`)!.values]).toEqual([...values(name)]);
    const steps = cast.steps.map(({ step }) => step).filter((step, k, all) => all.indexOf(step) === k);
    expect(steps).toEqual([
      "clock correction",
      "calibration corrections",
      "atmospheric offset",
      "despiking",
      "segmentation",
      "response matching",
      "cell thermal inertia",
      "pressure reversals",
      "smoothing",
      "computed quantities",
      "quality tests",
      "comparison of downcast and upcast",
    ]);
  });

  test("constant pressure is no cast", () =>
    expect(kinds(process(changed({ pressure: values("pressure").map(() => 5) })))).not.toContain("down"));

  test("one sample, and none", () => {
    for (const rows of [0, 1, 2]) {
      const part = (name: string) => values(name).slice(0, rows);
      process(
        castOf(
          {
            pressure: part("pressure"),
            temperature: part("temperature"),
            conductivity: part("conductivity"),
          },
          ordinary.elapsed!.slice(0, rows),
        ),
      );
    }
  });

  test.each([
    ["all the same", () => 0],
    ["backwards", (t: number) => 1000 - t],
    ["in whole seconds", Math.floor],
    ["with a jump back in the middle", (t: number) => (t > 60 ? t - 50 : t)],
    ["with holes", (t: number) => (t % 7 < 2 ? Number.NaN : t)],
    ["missing", () => Number.NaN],
  ])("times %s", (_, change) => {
    const cast = process(changed({}, ordinary.elapsed!.map(change)));
    expect(cast.rows).toBe(ordinary.rows);
  });

  test.each(["pressure", "temperature", "conductivity"])("runs of missing %s", (name) => {
    const holed = values(name).map((x, k) => (k % 40 < 12 ? Number.NaN : x));
    const cast = process(changed({ [name]: holed }));
    expect(kinds(cast)).toContain("down");
    expect(process(changed({ [name]: holed.map(() => Number.NaN) })).rows).toBe(ordinary.rows);
  });

  test.each([1, 2])("a pressure spike of %d rows deeper than the bottom is not the deepest row", (rows) => {
    const pressure = values("pressure").slice();
    const at = ordinary.rows - 60;
    for (let k = at; k < at + rows; k++) pressure[k] = 300;
    const cast = process(changed({ pressure }));
    const found = cast.steps.find(({ step }) => step === "segmentation")?.counts;
    expect(found?.maxPressure).toBeCloseTo(20, 0);
    expect(cast.columns.get("pressure")!.flags[at]).toBeGreaterThanOrEqual(3);
  });

  test("10 rows a second for three hours", () => {
    const rows = 3 * 3600 * 10;
    const at = (k: number) => k / rows;
    const cast = castOf(
      {
        pressure: Float64Array.from(
          { length: rows },
          (_, k) => 60 * Math.sin(Math.PI * at(k)) + 0.01 * (k % 3),
        ),
        temperature: Float64Array.from(
          { length: rows },
          (_, k) => 15 - 5 * Math.sin(Math.PI * at(k)) + 0.001 * (k % 7),
        ),
        conductivity: Float64Array.from(
          { length: rows },
          (_, k) => 40 - 3 * Math.sin(Math.PI * at(k)) + 0.001 * (k % 5),
        ),
      },
      Float64Array.from({ length: rows }, (_, k) => k / 10),
    );
    expect(kinds(process(cast))).toEqual(expect.arrayContaining(["down", "up"]));
  });

  test("whatever numbers come: nothing throws, segments cover the rows, 9 is exactly what is missing", () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 60 }),
        fc.infiniteStream(
          fc.oneof(
            { weight: 6, arbitrary: fc.double({ min: -5, max: 60, noNaN: true }) },
            { weight: 1, arbitrary: fc.constantFrom(Number.NaN, 0, -1e6, 1e9, 1e-300) },
          ),
        ),
        fc.boolean(),
        (rows, stream, fixed) => {
          const next = () => Float64Array.from({ length: rows }, () => stream.next().value as number);
          process(
            castOf({ pressure: next(), temperature: next(), conductivity: next() }, next(), {
              kind: fixed ? "fixed-depth" : "profile",
            }),
          );
        },
      ),
      { numRuns: 150 },
    ));
});
