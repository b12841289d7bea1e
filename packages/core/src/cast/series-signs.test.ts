import { castOf } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import type { Cast } from "./cast.ts";
import { seriesDefaults, seriesSigns } from "./series-signs.ts";

/** Ten days at 10 minutes, a tide of 12.42 h and 2 m, and a drift in dbar per day. */
function series(drift: number, change: (time: number, k: number) => number = (time) => time): Cast {
  const rows = 10 * 144;
  const times = Float64Array.from({ length: rows }, (_, k) => k * 600);
  const conductivity = Float64Array.from(times, (_, k) => (k >= 500 && k < 520 ? 0.02 : 40));
  const cast = castOf(
    {
      pressure: times.map((t) => 5 + 2 * Math.sin((2 * Math.PI * t) / (12.42 * 3600)) + (drift * t) / 86400),
      temperature: times.map(() => 12),
      conductivity,
    },
    times.map(change),
    { kind: "fixed-depth" },
  );
  return { ...cast, segments: [{ kind: "stay", firstRow: 0, lastRow: rows - 1 }] };
}
const recorded = (cast: Cast) => seriesSigns(cast, seriesDefaults).steps.at(-1)!;

describe("signs of a series", () => {
  test("rows in air amid the stay are questionable, rows in water are not", () => {
    const cast = seriesSigns(series(0), seriesDefaults);
    for (const name of ["temperature", "conductivity"]) {
      const flags = cast.columns.get(name)!.tests.get("out_of_water")!;
      expect([flags[499], flags[500], flags[519], flags[520]]).toEqual([1, 3, 3, 1]);
    }
    expect(cast.steps.at(-1)?.counts.outOfWater).toBe(20);
  });

  test.each([0, 0.03, -0.05])("a drift of %d dbar a day under a tide of two metres", (drift) => {
    const step = recorded(series(drift));
    expect(step.parameters.pressureTrend).toBeCloseTo(drift, 1);
    expect(Math.abs(Number(step.parameters.pressureTrend) - drift)).toBeLessThan(0.01);
    expect(step.words.includes("check it")).toBe(drift !== 0);
  });

  test("times that repeat and go back are counted", () => {
    const step = recorded(series(0, (time, k) => (k === 100 ? time - 600 : k === 200 ? time - 5000 : time)));
    expect(step.counts).toMatchObject({ repeatedTimes: 1, timesGoingBack: 1 });
  });

  test("a profile, or a day of data, says nothing of drift", () => {
    expect(seriesSigns({ ...series(0), kind: "profile" }, seriesDefaults).steps).toEqual([]);
    const short = series(0);
    const segments = [{ kind: "stay" as const, firstRow: 0, lastRow: 143 }];
    expect(recorded({ ...short, segments }).parameters.pressureTrend).toBeNull();
  });
});
