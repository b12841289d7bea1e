import { castOf } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { burstDefaults, burstMeans } from "./burst-means.ts";
import type { Cast } from "./cast.ts";

// Expected values are worked by hand: bursts of rows a second apart, ten minutes from start to start.

function series(
  times: readonly number[],
  temperature: readonly number[],
  flags: readonly number[] = times.map(() => 1),
): Cast {
  const values = Float64Array.from(temperature);
  const cast = castOf({ pressure: values.map(() => 2), temperature: values }, Float64Array.from(times), {
    kind: "fixed-depth",
    time: 1_700_000_000,
  });
  const columns = new Map(
    [...cast.columns].map(([name, column]) => [
      name,
      name === "temperature" ? { ...column, flags: Uint8Array.from(flags) } : column,
    ]),
  );
  return { ...cast, columns, segments: [{ kind: "stay", firstRow: 0, lastRow: cast.rows - 1 }] };
}
const asked = { ...burstDefaults, mean: true };
const times = [0, 1, 2, 3, 600, 601, 602, 603, 1200, 1201];

describe("burst means", () => {
  test("a pause of more than five intervals parts bursts", () => {
    const found = burstMeans(series(times, [10, 12, 14, 16, 20, 20, 20, 24, 30, 31]), asked);
    expect([...found.times]).toEqual([1.5, 601.5, 1200.5]);
    expect([...found.bounds]).toEqual([0, 3, 600, 603, 1200, 1201]);
    const T = found.columns.get("temperature")!;
    expect([...T.mean]).toEqual([13, 21, 30.5]);
    expect([...T.count]).toEqual([4, 4, 2]);
    expect(T.sd[0]).toBeCloseTo(Math.sqrt(20 / 3), 12);
    expect(T.sd[1]).toBeCloseTo(2, 12);
    expect(found.step.counts).toEqual({ bursts: 3, rows: 10, fewestRows: 2, mostRows: 4 });
    expect(found.step.parameters).toMatchObject({ pause: 5, medianInterval: 1, found: true });
  });

  test("rows flagged 3 or 4 stay out; a burst without any row is 9, one with half not evaluated still 1", () => {
    const flags = [1, 3, 1, 4, 2, 2, 1, 1, 3, 4];
    const found = burstMeans(series(times, [10, 99, 14, 99, 20, 20, 20, 24, 99, 99], flags), asked);
    const T = found.columns.get("temperature")!;
    expect([...T.mean]).toEqual([12, 21, Number.NaN]);
    expect([...T.count]).toEqual([2, 4, 0]);
    expect([...T.flags]).toEqual([1, 1, 9]);
  });

  test("only rows at the fixed depth, and only those with a time, take part", () => {
    const cast = series([0, 1, Number.NaN, 3, 600, 601, 602, 603], [1, 2, 99, 3, 4, 6, 5, 99]);
    const stay = [{ kind: "stay", firstRow: 0, lastRow: 6 }] as const;
    const found = burstMeans({ ...cast, segments: stay }, asked);
    expect([...found.columns.get("temperature")!.mean]).toEqual([2, 5]);
    expect([...found.columns.get("temperature")!.count]).toEqual([3, 3]);
  });

  test("a time that an earlier row has counts as questionable", () => {
    const found = burstMeans(series([0, 1, 2, 3, 4, 600, 600, 601], [1, 1, 1, 1, 1, 1, 1, 1]), asked);
    expect([...found.timeFlags]).toEqual([1, 1]);
    const worse = burstMeans(series([0, 1, 2, 3, 4, 5, 600, 600], [1, 1, 1, 1, 1, 1, 1, 1]), asked);
    expect([...worse.timeFlags]).toEqual([1, 3]);
  });

  test("a given pause decides where the clock is coarser than the rows", () => {
    const minutes = [0, 0, 0, 0, 60, 60, 600, 600, 600];
    const values = [1, 1, 1, 1, 4, 4, 7, 7, 10];
    expect(burstMeans(series(minutes, values), asked).step.parameters.skipped).toBe(true);
    const found = burstMeans(series(minutes, values), { ...asked, pause: 120 });
    expect([...found.columns.get("temperature")!.mean]).toEqual([2, 8]);
    expect([...found.bounds]).toEqual([0, 60, 600, 600]);
  });

  test.each([
    { what: "rows without a pause", of: [0, 60, 120, 180, 250], reason: /without a pause/ },
    { what: "one row", of: [0], reason: /fewer than two rows/ },
    { what: "no row", of: [], reason: /fewer than two rows/ },
  ])("$what: no bursts, and the step says why", ({ of, reason }) => {
    const found = burstMeans(series(of, of), asked);
    expect(found.times).toHaveLength(0);
    expect(found.step.words).toMatch(reason);
  });

  test("wrong calls", () => {
    expect(() => burstMeans({ ...series(times, times), kind: "profile" }, asked)).toThrow(RangeError);
    expect(() => burstMeans(series(times, times), { ...asked, pause: 0 })).toThrow(RangeError);
  });
});
