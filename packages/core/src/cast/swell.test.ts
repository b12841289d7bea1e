import { expect, test } from "vitest";
import { findSwell } from "./swell.ts";

const rows = 400;
const seconds = Float64Array.from({ length: rows }, (_, k) => k / 4);
/** Speed of a package lowered evenly in waves of an amplitude (dbar) and a period (s). */
const speeds = (lowering: number, amplitude: number, period: number) =>
  seconds.map((t) => lowering + ((2 * Math.PI * amplitude) / period) * Math.cos((2 * Math.PI * t) / period));

// The speed of a wave of amplitude a and period P has the amplitude 2 pi a / P.
test.each([
  [0.5, 6],
  [0.3, 3.2],
  [1, 10],
])("waves of %d dbar and %d s", (amplitude, period) => {
  const swell = findSwell(speeds(0.4, amplitude, period), seconds, 0, rows - 1)!;
  expect(swell.period).toBeCloseTo(period, 0);
  const speed = (2 * Math.PI * amplitude) / period;
  // a mean over 10 s keeps sin(x)/x of a wave, x = 10 pi / P; the robust spread of a sine is 1.048 amplitudes
  const x = (10 * Math.PI) / period;
  expect(swell.speed / speed).toBeCloseTo(1.048 * (1 - Math.sin(x) / x), 1);
});

test("an even lowering, and too short a piece, hold no waves", () => {
  expect(findSwell(speeds(0.4, 0, 6), seconds, 0, rows - 1)).toBeNull();
  expect(findSwell(speeds(0.4, 0.5, 6), seconds, 0, 15)).toBeNull();
});
