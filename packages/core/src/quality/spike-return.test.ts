import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type SpikeReturnLimits, spikeReturn } from "./spike-return.ts";

const limits: SpikeReturnLimits = {
  floor: 0.1,
  gradientFactor: 2,
  spacingFloor: 0.02,
  windowRows: 5,
  longest: 2,
  badAbove: 4,
};
const rows = fc.integer({ min: 3, max: 40 }).chain((length) =>
  fc.tuple(
    fc.array(fc.option(fc.integer({ min: -80, max: 80 }), { freq: 10, nil: Number.NaN }), {
      minLength: length,
      maxLength: length,
    }),
    fc.array(fc.integer({ min: 0, max: 8 }), { minLength: length, maxLength: length }),
  ),
);
/** Sixteenths, so that sums and differences are exact and order of reading changes no rounding. */
const exact = (list: readonly number[]) => Float64Array.from(list, (value) => value / 16);

describe("spike_return", () => {
  test("a profile read from the other end has the same spikes", () =>
    fc.assert(
      fc.property(rows, ([list, gains]) => {
        const values = exact(list);
        let depth = 0;
        const pressure = exact(gains.map((gain) => (depth += gain)));
        const forward = spikeReturn(values, pressure, limits);
        const backward = spikeReturn(values.slice().reverse(), pressure.slice().reverse(), limits);
        expect([...backward].reverse()).toEqual([...forward]);
      }),
      { seed: 2 },
    ));

  test("a monotone profile has none, however sharp", () =>
    fc.assert(
      fc.property(rows, ([list, gains]) => {
        const sorted = exact(list.map((x) => (Number.isNaN(x) ? 0 : x)).sort((a, b) => a - b));
        let depth = 0;
        const pressure = exact(gains.map((gain) => (depth += gain)));
        expect(spikeReturn(sorted, pressure, limits).every((flag) => flag < 3)).toBe(true);
      }),
      { seed: 3 },
    ));

  test.each([0, 1, 2])("%i rows are not judged", (length) =>
    expect([...spikeReturn(new Float64Array(length), new Float64Array(length), limits)]).toEqual(
      Array(length).fill(2),
    ),
  );

  test("a window that cannot be kept is our own mistake", () =>
    expect(() => spikeReturn(new Float64Array(3), new Float64Array(3), { ...limits, windowRows: 0 })).toThrow(
      RangeError,
    ));
});
