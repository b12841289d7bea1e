import { castOf } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { correctionAt, correctSensors, driftUncertainty } from "./calibration.ts";
import type { Cast } from "./cast.ts";

const day = (text: string) => Date.parse(`${text}T00:00:00Z`) / 1000;
const entry = (date: string, slope: number, offset: number, afterCleaning = false) => ({
  date: day(date),
  slope,
  offset,
  afterCleaning,
});
const spring = entry("2025-03-01", 1, 0.02);
const autumn = entry("2025-09-01", 1.002, 0.06);
const none = { temperature: [], conductivity: [], pressure: [], salinityOffset: null };

describe("correction in force", () => {
  test("between two: linear in time", () => {
    const half = (day("2025-03-01") + day("2025-09-01")) / 2;
    const found = correctionAt([autumn, spring], half)!;
    expect(found.how).toBe("between two");
    expect(found.slope).toBeCloseTo(1.001, 12);
    expect(found.offset).toBeCloseTo(0.04, 12);
  });
  test("one only: constant before and after", () =>
    expect(correctionAt([spring], day("2020-01-01"))).toEqual({ slope: 1, offset: 0.02, how: "one only" }));
  test("outside: the nearer one, and it says so", () =>
    expect(correctionAt([spring, autumn], day("2026-01-01"))).toMatchObject({
      offset: 0.06,
      how: "nearest",
    }));
  test("one made after cleaning says nothing about earlier data", () => {
    const cleaned = { ...autumn, afterCleaning: true };
    expect(correctionAt([spring, cleaned], day("2025-08-31"))).toMatchObject({
      offset: 0.02,
      how: "nearest",
    });
    expect(correctionAt([cleaned], day("2025-08-31"))).toBeNull();
  });
  test("a cast without a time has no place between two", () =>
    expect(correctionAt([spring, autumn], Number.NaN)).toBeNull());
});

describe("correcting sensors", () => {
  const cast = castOf(
    {
      pressure: Float64Array.of(0, 1),
      temperature: Float64Array.of(10, 11),
      conductivity: Float64Array.of(30, 31),
    },
    Float64Array.of(0, 1),
    { time: day("2025-05-01") },
  );
  test("the raw column stays beside the corrected one, and the numbers stand in the record", () => {
    const corrected = correctSensors(cast, { ...none, conductivity: [entry("2025-03-01", 1.01, 0.1)] });
    expect([...corrected.columns.get("conductivity")!.values]).toEqual([30 * 1.01 + 0.1, 31 * 1.01 + 0.1]);
    expect([...corrected.columns.get("conductivity_received")!.values]).toEqual([30, 31]);
    expect(corrected.steps[0]?.parameters).toMatchObject({
      "conductivity.slope": 1.01,
      "conductivity.offset": 0.1,
    });
  });
  test("nothing given: no step, the same cast", () => expect(correctSensors(cast, none)).toBe(cast));
  test("salinity is not corrected where there is a conductivity", () => {
    const corrected = correctSensors(cast, {
      ...none,
      salinityOffset: { value: 0.034, from: "cruise report" },
    });
    expect(corrected.steps[0]?.words).toContain("skipped");
  });
  test("legacy salinity takes a named offset, once", () => {
    const legacy = castOf({ pressure: Float64Array.of(0), salinity: Float64Array.of(34) }, null);
    const once = correctSensors(legacy, { ...none, salinityOffset: { value: 0.034, from: "cruise report" } });
    const twice = correctSensors(once as Cast, {
      ...none,
      salinityOffset: { value: 0.034, from: "cruise report" },
    });
    expect(once.columns.get("salinity")!.values[0]).toBeCloseTo(34.034, 12);
    expect(twice.columns.get("salinity")!.values[0]).toBeCloseTo(34.034, 12);
    expect(once.steps[0]?.words).toContain("cruise report");
  });
});

describe("uncertainty of a drift", () => {
  const conductivity = [
    { date: day("2025-03-01"), slope: 1, offset: 0, afterCleaning: false },
    { date: day("2025-09-01"), slope: 1.004, offset: 0.02, afterCleaning: false },
  ];
  const cast = (time: number) =>
    correctSensors(castOf({ conductivity: Float64Array.of(0, 30) }, Float64Array.of(0, 1), { time }), {
      ...none,
      conductivity,
    });
  const of = (corrected: Cast) =>
    driftUncertainty(corrected, "conductivity", corrected.columns.get("conductivity")!.values);

  test("half of what the reading changed by, over the root of three", () => {
    const found = of(cast((day("2025-03-01") + day("2025-09-01")) / 2))!;
    // readings 0 and 30 changed by 0.02 and by 0.004 x 30 + 0.02 = 0.14
    expect(found.values[0]).toBeCloseTo(0.01 / Math.sqrt(3), 12);
    expect(found.values[1]).toBeCloseTo(0.07 / Math.sqrt(3), 12);
    expect([found.from, found.to]).toEqual(["2025-03-01T00:00:00Z", "2025-09-01T00:00:00Z"]);
  });

  test("none outside of both, without any correction, and of a sensor that was not corrected", () => {
    const between = cast(day("2025-05-01"));
    expect(of(cast(day("2026-05-01")))).toBeNull();
    expect(driftUncertainty(between, "pressure", Float64Array.of(1))).toBeNull();
    expect(of({ ...between, steps: [] })).toBeNull();
  });
});
