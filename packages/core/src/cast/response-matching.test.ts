import { castOf, seeded } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import type { Cast, Segment } from "./cast.ts";
import { estimateDelay } from "./delay-estimate.ts";
import { matchResponse, responseDefaults } from "./response-matching.ts";
import { rowTimes } from "./row-times.ts";
import { smoothColumns } from "./smooth-columns.ts";

// A first-order sensor on a straight line lags by slope times response time exactly; a delay is a shift in time.

const rows = 400;
const interval = 0.25;
const elapsed = Float64Array.from({ length: rows }, (_, k) => k * interval);
const down: Segment[] = [{ kind: "down", firstRow: 0, lastRow: rows - 1 }];
const made = (temperature: Float64Array, conductivity: Float64Array): Cast => ({
  ...castOf({ pressure: elapsed.map((t) => t * 0.5), temperature, conductivity }, elapsed),
  segments: down,
});
const given = (time: number | null, delay: number | null) => ({
  ...responseDefaults,
  temperature: { time, delay },
});

/** Steps, hills and noise of a water column, the same at a time for both sensors. */
function water(seed: number): (t: number) => number {
  const random = seeded(seed);
  const hills = Array.from({ length: 40 }, () => [random() * 100, random() * 2 - 1, 0.3 + random()] as const);
  return (t) =>
    12 -
    0.05 * t +
    hills.reduce((sum, [at, size, width]) => sum + size / (1 + Math.exp((at - t) / width)), 0);
}

describe("response matching", () => {
  test("a straight line that lags is put right", () => {
    const lagged = elapsed.map((t) => 10 - 0.2 * (t - 0.4));
    const matched = matchResponse(
      made(
        lagged,
        elapsed.map(() => 30),
      ),
      given(0.4, null),
    );
    for (let k = 1; k < rows - 1; k++)
      expect(matched.columns.get("temperature")!.values[k]).toBeCloseTo(10 - 0.2 * elapsed[k]!, 9);
    expect([...matched.columns.get("temperature_received")!.values]).toEqual([...lagged]);
    expect([...matched.columns.get("conductivity")!.values].every((C) => C === 30)).toBe(true);
  });

  test("a delay of a row and a half is taken back", () => {
    const line = elapsed.map((t) => 10 - 0.2 * (t - 0.375));
    const matched = matchResponse(
      made(
        line,
        elapsed.map(() => 30),
      ),
      given(null, 0.375),
    );
    for (let k = 0; k < rows - 2; k++)
      expect(matched.columns.get("temperature")!.values[k]).toBeCloseTo(10 - 0.2 * elapsed[k]!, 9);
  });

  test("a spike does not spread into its neighbours", () => {
    const line = elapsed.map((t, k) => 10 - 0.2 * t + (k === 50 ? 5 : 0));
    const cast = made(
      line,
      elapsed.map(() => 30),
    );
    const spikes = new Uint8Array(rows).fill(1);
    spikes[50] = 4;
    const column = { ...cast.columns.get("temperature")!, tests: new Map([["spike_return", spikes]]) };
    const flagged = { ...cast, columns: new Map(cast.columns).set("temperature", column) };
    const values = matchResponse(flagged, given(0.4, null)).columns.get("temperature")!.values;
    expect(values[49]).toBeCloseTo(10 - 0.2 * elapsed[49]! - 0.08, 9);
    expect(values[50]).toBe(line[50]);
  });

  test("nothing given: nothing is sharpened, and the record says what that costs", () => {
    const cast = made(
      elapsed.map(() => 10),
      elapsed.map(() => 30),
    );
    const same = matchResponse(cast, responseDefaults);
    expect(same.columns).toBe(cast.columns);
    expect(same.steps[0]?.words).toContain("carries the mismatch");
  });

  test("what the source has done is not done again", () => {
    const cast = made(
      elapsed.map(() => 10),
      elapsed.map(() => 30),
    );
    const done = matchResponse({ ...cast, state: { ...cast.state, lagCorrected: true } }, given(0.4, null));
    expect(done.steps[0]?.words).toContain("the source says");
    const once = matchResponse(cast, given(0.4, null));
    expect(matchResponse(once, given(0.4, null)).columns).toBe(once.columns);
  });
});

describe("the delay that a cast shows", () => {
  test.each([0, 0.5, 0.375, -0.25])("temperature %d s late", (delay) => {
    const truth = water(3);
    const cast = made(
      elapsed.map((t) => truth(t - delay)),
      elapsed.map((t) => 2 * truth(t)),
    );
    const estimate = estimateDelay(cast, rowTimes(elapsed)!, 2)!;
    expect(estimate.delay).toBeCloseTo(delay, 1);
    expect(estimate.correlation).toBeGreaterThan(0.9);
    const matched = matchResponse(cast, { ...responseDefaults, delayFromData: true });
    if (delay !== 0) expect(matched.steps[0]?.parameters["temperature.delay"]).toBeCloseTo(delay, 1);
  });

  test("noise alone shows none that is sure", () => {
    const random = seeded(7);
    const cast = made(
      elapsed.map(() => 10 + 0.002 * random()),
      elapsed.map(() => 30 + 0.002 * random()),
    );
    const left = matchResponse(cast, { ...responseDefaults, delayFromData: true });
    expect(left.steps[0]?.parameters).toMatchObject({ skipped: true, estimateSure: false });
  });
});

describe("smoothing", () => {
  test("a straight line stays, both columns get the same window, a missing row stays missing", () => {
    const line = elapsed.map((t, k) => (k === 20 ? Number.NaN : 10 - 0.2 * t));
    const smooth = smoothColumns(
      made(
        line,
        elapsed.map((_, k) => 30 + (k % 2)),
      ),
      { window: 1 },
    );
    const [T, C] = ["temperature", "conductivity"].map((name) => smooth.columns.get(name)!.values);
    for (let k = 0; k < rows; k++) if (k < 18 || k > 22) expect(T![k]).toBeCloseTo(10 - 0.2 * elapsed[k]!, 9);
    expect(T![20]).toBeNaN();
    // five rows of 30, 31, 30, 31, 30 have the mean 30.4
    expect(C![10]).toBeCloseTo(30.4, 9);
  });
  test("off unless asked for", () => {
    const cast = made(
      elapsed.map(() => 10),
      elapsed.map(() => 30),
    );
    expect(smoothColumns(cast, { window: null })).toBe(cast);
  });
});
