import { castOf } from "@wherry/testkit";
import { expect, test } from "vitest";
import { correctClock } from "./clock-correction.ts";

// By hand: 30 s fast at 0, 40 s fast a day later, so 35 s after half a day; a drift of 10 s a day.

const pairs = [
  { instrument: 0, true: -30 },
  { instrument: 86400, true: 86360 },
];
const cast = (time: number) =>
  castOf({ pressure: Float64Array.of(0, 1, 2) }, Float64Array.of(0, 4320, 8640), { time });

test("one pair is an offset", () => {
  const corrected = correctClock(cast(1000), { pairs: pairs.slice(0, 1), largestDrift: 1 });
  expect(corrected.time).toBe(970);
  expect([...corrected.elapsed!]).toEqual([0, 4320, 8640]);
});

test("between two the correction is linear, and rows follow it", () => {
  const corrected = correctClock(cast(43200), { pairs, largestDrift: 1 });
  expect(corrected.time).toBeCloseTo(43200 - 35, 6);
  expect(corrected.elapsed![2]).toBeCloseTo(8640 - 1, 6);
  expect(corrected.steps[0]?.parameters.drift).toBeCloseTo(-10, 6);
  expect(corrected.steps[0]?.words).toContain("check it");
});

test("outside it is constant and says so; a third pair off the line is a residual", () => {
  const corrected = correctClock(cast(864000), { pairs, largestDrift: 100 });
  expect(corrected.time).toBe(864000 - 40);
  expect(corrected.steps[0]?.words).toContain("nearest");
  const three = correctClock(cast(0), {
    pairs: [...pairs, { instrument: 43200, true: 43200 - 37 }],
    largestDrift: 100,
  });
  expect(three.steps[0]?.parameters.largestResidual).toBeCloseTo(2, 6);
});

test("no pairs, no step; no time, a reason; twice, once", () => {
  expect(correctClock(cast(5), { pairs: [], largestDrift: 1 }).steps).toEqual([]);
  expect(correctClock(cast(Number.NaN), { pairs, largestDrift: 1 }).steps[0]?.words).toContain("skipped");
  const once = correctClock(cast(0), { pairs, largestDrift: 100 });
  expect(correctClock(once, { pairs, largestDrift: 100 }).time).toBe(once.time);
});
