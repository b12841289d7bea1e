import { describe, expect, test } from "vitest";
import type { CastSummary } from "./cast-summary.ts";
import { stationLines } from "./station-line.ts";

const levels = { place: Float64Array.of(1, 2), values: new Map() } as unknown as CastSummary["levels"];

const castsAt = (...places: readonly (readonly [latitude: number, longitude: number])[]) =>
  places.map(([latitude, longitude], k): CastSummary => {
    const start = { latitude, longitude, satellites: null, quality: null };
    return {
      ...{ id: `c${k}`, kind: "profile", file: "f", time: 1000 * k, timeRole: "start", start, end: null },
      ...{ rows: 2, deepest: 2, quantities: new Map(), levels, steps: [] },
    };
  });

const idsOf = (casts: readonly CastSummary[]) =>
  stationLines(casts).map(({ stations }) => stations.map(({ cast }) => cast.id).join(" "));

describe("stations form a line", () => {
  test("along a parallel, in whatever order they were made: from west to east", () => {
    expect(idsOf(castsAt([50, 3], [50, 1], [50, 2], [50, 4]))).toEqual(["c1 c2 c0 c3"]);
  });

  test("a degree of the equator is 111.2 km, also across the date line", () => {
    const [line] = stationLines(castsAt([0, 178], [0, 179], [0, 180], [0, -179], [0, -178]));
    // 6371.0088 km times a degree in radians
    expect(line!.length).toBeCloseTo(4 * 111.195, 1);
    expect(line!.stations.map(({ distance }) => Math.round(distance / 111.195))).toEqual([0, 1, 2, 3, 4]);
  });

  test("a second cast at a place is left out, and told", () => {
    const [line] = stationLines(castsAt([50, 1], [50, 2], [50, 3], [50, 4], [50.001, 2.001]));
    expect(line!.stations).toHaveLength(4);
    expect(line!.repeated.map(({ id }) => id)).toEqual(["c4"]);
  });

  test("rows of a grid are lines of their own", () => {
    const grid = [0, 1, 2].flatMap((row) =>
      [0, 1, 2, 3, 4].map((k) => [50 + row, row % 2 === 0 ? k : 4 - k] as const),
    );
    expect(idsOf(castsAt(...grid))).toEqual(["c0 c1 c2 c3 c4", "c9 c8 c7 c6 c5", "c10 c11 c12 c13 c14"]);
  });
});

describe("stations form no line", () => {
  test("when there are three", () => expect(idsOf(castsAt([50, 1], [50, 2], [50, 3]))).toEqual([]));

  test("when one lies off by more than a tenth of the length", () =>
    expect(idsOf(castsAt([50, 1], [50.5, 2], [50, 3], [50.5, 4]))).toEqual([]));

  test("when all lie at one place", () =>
    expect(idsOf(castsAt([50, 1], [50, 1], [50, 1], [50, 1], [50, 1]))).toEqual([]));
});
