import { describe, expect, test } from "vitest";
import { processCast } from "../src/recipe/process-cast.ts";
import { defaultSettings } from "../src/recipe/settings.ts";
import { asked, plainExport, understood } from "./understand-samples.ts";

/** A lowering to 10 dbar and back at 1 row a second, after 10 s in air, by a sensor that reads `inAir` there. */
function rows(inAir: number): string {
  const lines: string[] = [];
  for (let k = 0; k < 70; k++) {
    const sea = k < 10 || k > 60 ? 0 : k <= 35 ? (k - 10) * 0.4 : (60 - k) * 0.4;
    const wet = k >= 10 && k <= 60;
    lines.push(
      `${k},${(inAir + sea + 0.004 * ((7 * k) % 5)).toFixed(3)},${wet ? 12 : 15}.${k % 10}0,${wet ? 30.1 + 0.01 * (k % 7) : 0}`,
    );
  }
  return lines.join("\n");
}

const answer = (value: string) => [{ about: "pressureKind", where: "*", value }];
const offsetOf = (value: string, inAir: number) => {
  const file = understood(plainExport({ rows: rows(inAir) }), "air.csv", answer(value));
  expect(file.questions).toEqual([]);
  return processCast(file.casts[0]!, defaultSettings).pressureOffset;
};

describe("what pressure counts from", () => {
  test("a reading in air below 1 dbar asks nothing", () =>
    expect(asked(understood(plainExport({ rows: rows(0.3) }), "air.csv"))).toEqual([]));

  test("2 dbar in air is neither a zero error nor the weight of the air: asked, the cast waits", () => {
    const file = understood(plainExport({ rows: rows(2) }), "air.csv");
    expect(asked(file)).toEqual(["pressureKind"]);
    expect(file.questions[0]).toMatchObject({ casts: ["air"], candidates: ["absolute", "sea"] });
    expect(file.questions[0]?.text).toContain("2.01 dbar in air");
  });

  test("the line that the question prints answers it, and the reading in air is subtracted", () => {
    expect(offsetOf("sea", 2)).toBeCloseTo(2, 1);
    expect(offsetOf("absolute", 10.2)).toBeCloseTo(10.2, 1);
  });

  test("one question, not two, where every row is deep enough for absolute pressure", () =>
    expect(asked(understood(plainExport({ rows: rows(10.2) }), "air.csv"))).toEqual(["pressureKind"]));
});
