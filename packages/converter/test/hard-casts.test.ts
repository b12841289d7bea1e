import { readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { processCast } from "../src/recipe/process-cast.ts";
import { hardCasts, hardTruth, measureHard, readHard, settingsFor } from "./hard-casts.ts";

// Casts that break simple processing, with known truth (tools/make_hard_casts.py). test-data/hard-casts/bounds.json
// holds what was reached when it was last measured: a run above it fails, one that beats it threefold is annotated.

interface Recorded {
  readonly units: Readonly<Record<string, string>>;
  readonly casts: Readonly<
    Record<
      string,
      { readonly style: string; readonly sign: string; readonly bounds: Readonly<Record<string, number>> }
    >
  >;
}
const recorded = JSON.parse(readFileSync(testData("hard-casts", "bounds.json"), "utf8")) as Recorded;

test("every cast has bounds, every bound a cast", () =>
  expect(Object.keys(recorded.casts).sort()).toEqual(hardCasts));

test.each(hardCasts.filter((name) => !["bubble", "weed", "mud"].includes(name)))(
  "%s, sensors matched or not: a clean cell is not called dirty",
  (name) => {
    for (const matched of [false, true]) {
      const cast = processCast(readHard(name), settingsFor(hardTruth(name), matched));
      const step = cast.steps.find((each) => each.step === "comparison of downcast and upcast");
      expect(String(step?.parameters.sign)).not.toMatch(/cell/);
    }
  },
);

for (const name of hardCasts)
  describe(`${name}: ${hardTruth(name).story}`, () => {
    const { style, sign, measures } = measureHard(name);
    const own = recorded.casts[name]!;

    test("style of lowering", () => expect(style).toBe(own.style));
    test("what the difference of both ways looks like", () => {
      expect(sign).toBe(own.sign);
      const { comparison } = hardTruth(name);
      if (comparison !== null) expect(sign).toBe(comparison);
    });
    test("every measure has a unit and a bound", () => {
      expect(Object.keys(own.bounds).sort()).toEqual(Object.keys(measures).sort());
      expect(Object.keys(recorded.units).sort()).toEqual(Object.keys(measures).sort());
    });
    for (const [what, value] of Object.entries(measures))
      test(`${what}, ${recorded.units[what]}`, async ({ annotate }) => {
        const bound = own.bounds[what]!;
        expect(value).toBeLessThanOrEqual(bound);
        if (value < bound / 3) await annotate(`${value} beats the bound of ${bound} threefold: tighten it`);
      });
    test("known responses never make salinity worse", () =>
      expect(measures.salinityRmsMatched!).toBeLessThanOrEqual(measures.salinityRms!));
  });
