import { conservativeTemperature } from "@wherry/core";
import { expect, test } from "vitest";
import { QUICK_ERROR, quickTemperature } from "./quick-temperature.ts";

// The equation itself is compared with the TEOS-10 library in @wherry/core.
const ROWS = 200_000;
const spread = (step: number, least: number, most: number): Float64Array =>
  Float64Array.from({ length: ROWS }, (_, i) => least + ((i * step) % 1) * (most - least));

/** Largest difference from the equation, kelvin. */
function worst(SA: Float64Array, t: Float64Array, p: Float64Array): number {
  const quick = new Float64Array(ROWS);
  quickTemperature({ SP: SA, t, p })(SA, t, p, quick);
  return quick.reduce((most, value, i) => {
    const exact = conservativeTemperature(SA[i]!, t[i]!, p[i]!);
    return Object.is(value, exact) ? most : Math.max(most, Math.abs(value - exact));
  }, 0);
}

const [a, b, c] = [0.6180339887498949, 0.7548776662466927, 0.5698402909980532];

test.each([
  { water: "brackish, shallow", SA: [0, 6], t: [-1, 30], p: [0, 60] },
  { water: "of the sea, shallow", SA: [20, 42], t: [-2, 35], p: [0, 300] },
  { water: "of the deep sea", SA: [34, 36], t: [-1, 5], p: [300, 11_000] },
  { water: "that is no water", SA: [-5, 60], t: [-20, 60], p: [-80, 300] },
])("water $water", ({ SA, t, p }) => {
  const difference = worst(spread(a, SA[0]!, SA[1]!), spread(b, t[0]!, t[1]!), spread(c, p[0]!, p[1]!));
  expect(difference).toBeGreaterThan(0);
  expect(difference).toBeLessThan(QUICK_ERROR / 2);
});

test("NaN in, NaN out; a few rows are computed by the equation", () => {
  const SA = Float64Array.of(35, Number.NaN, 35);
  const t = Float64Array.of(10, 10, Number.NaN);
  const p = Float64Array.of(5, 5, 5);
  const quick = new Float64Array(3);
  quickTemperature({ SP: SA, t, p })(SA, t, p, quick);
  expect([...quick]).toEqual([conservativeTemperature(35, 10, 5), Number.NaN, Number.NaN]);
});
