import { inventCast } from "@wherry/testkit";
import { expect, test } from "vitest";
import { processCast } from "../src/recipe/process-cast.ts";
import { defaultSettings } from "../src/recipe/settings.ts";

// A package that soaks well below the surface and goes down from there, in still water and in waves.

const cases = [0.35, 0.6, 1].flatMap((speed) =>
  [
    { deepest: 40, soakPressure: 8, soak: 60, swell: 0, period: 5 },
    { deepest: 40, soakPressure: 8, soak: 60, swell: 0.4, period: 9 },
    { deepest: 60, soakPressure: 12, soak: 30, swell: 0.3, period: 6 },
    { deepest: 30, soakPressure: 6, soak: 25, swell: 0.1, period: 4 },
    { deepest: 20, soakPressure: 5, soak: 60, swell: 0.3, period: 4 },
  ].map((lowering) => ({ ...lowering, speed })),
);

test.each(cases)(
  "to $deepest dbar at $speed dbar/s, soak at $soakPressure, waves $swell dbar, $period s",
  (lowering) => {
    const { cast, downFrom, truePressure } = inventCast({ ...lowering, waitPressure: lowering.soakPressure });
    const { segments, steps } = processCast(cast, defaultSettings);
    expect(steps.find(({ step }) => step === "segmentation")?.parameters).toMatchObject({
      style: "soaked",
      deepSoak: true,
    });
    const { firstRow } = segments.find(({ kind }) => kind === "down")!;
    // early is free up to a wave or two of the soak, late costs water
    const late = firstRow > downFrom ? truePressure[firstRow]! - truePressure[downFrom]! : 0;
    expect(late).toBeLessThanOrEqual(0.3);
    expect(cast.elapsed![downFrom]! - cast.elapsed![firstRow]!).toBeLessThanOrEqual(8);
  },
);

test("a slow lowering in waves without any stay has no deep soak", () => {
  const { cast } = inventCast({ deepest: 30, speed: 0.2, swell: 0.3, period: 6 });
  const step = processCast(cast, defaultSettings).steps.find((each) => each.step === "segmentation");
  expect(step?.parameters).toMatchObject({ style: "soaked", deepSoak: false });
});
