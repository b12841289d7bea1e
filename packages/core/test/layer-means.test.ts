import { castOf } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import type { Cast, Segment } from "../src/cast/cast.ts";
import { layerMeans } from "../src/cast/layer-means.ts";
import { layerWidthFor } from "../src/cast/layer-width.ts";

// Expected values are worked by hand from the rules: centres at multiples of the width, layer c from c - w/2
// (included) to c + w/2, rows above w/2 left out and counted.

function down(
  pressure: readonly number[],
  temperature: readonly number[],
  flags: { pressure?: readonly number[]; temperature?: readonly number[] } = {},
  other: Partial<Cast> = {},
): Cast {
  const cast = castOf(
    { pressure: Float64Array.from(pressure), temperature: Float64Array.from(temperature) },
    Float64Array.from(pressure, (_, k) => k),
  );
  const columns = new Map(
    [...cast.columns].map(([name, column]) => {
      const given = flags[name as "pressure" | "temperature"];
      const own = Uint8Array.from(column.values, (value, k) => (Number.isNaN(value) ? 9 : (given?.[k] ?? 1)));
      return [name, { ...column, flags: own }];
    }),
  );
  const segments: Segment[] = [{ kind: "down", firstRow: 0, lastRow: cast.rows - 1 }];
  return { ...cast, columns, segments, ...other };
}

const one = { width: 1, coordinate: "pressure", direction: "down" } as const;

describe("layer means", () => {
  test("edges: the upper belongs to the layer, the lower to the next", () => {
    const cast = down([0.2, 0.5, 1.49, 1.5, 2.4, 2.5], [90, 10, 12, 20, 22, 30]);
    const means = layerMeans(cast, one);
    expect([...means.centres]).toEqual([1, 2, 3]);
    expect([...means.bounds]).toEqual([0.5, 1.5, 1.5, 2.5, 2.5, 3.5]);
    const T = means.columns.get("temperature")!;
    expect([...T.mean]).toEqual([11, 21, 30]);
    expect([...T.count]).toEqual([2, 2, 1]);
    expect(T.sd[0]).toBeCloseTo(Math.SQRT2, 12);
    expect(T.sd[2]).toBeNaN();
    expect(means.rowsAboveLayers).toBe(1);
  });

  test("flags 3, 4 and 9 keep a row out of its own quantity, pressure's out of all", () => {
    const cast = down([0.6, 0.8, 1, 1.2, 1.4], [10, 11, 12, 13, Number.NaN], {
      pressure: [1, 3, 1, 1, 1],
      temperature: [1, 1, 4, 2, 9],
    });
    const { columns } = layerMeans(cast, one);
    expect([...columns.get("temperature")!.mean]).toEqual([11.5]);
    expect(columns.get("temperature")!.count[0]).toBe(2);
    expect(columns.get("pressure")!.count[0]).toBe(4);
  });

  test("a layer is 1 if at least half of its rows are, else 2, 9 without a row", () => {
    const cast = down([1, 1.1, 2, 2.1, 2.2, 3], [1, 1, 1, 1, 1, 1], { temperature: [1, 2, 1, 2, 2, 4] });
    const T = layerMeans(cast, one).columns.get("temperature")!;
    expect([...T.flags]).toEqual([1, 2, 9]);
    expect(T.mean[2]).toBeNaN();
  });

  test("an empty layer between others stays, missing", () => {
    const T = layerMeans(down([1, 3], [5, 7]), one).columns.get("temperature")!;
    expect([...T.mean]).toEqual([5, Number.NaN, 7]);
    expect([...T.flags]).toEqual([1, 9, 1]);
  });

  test("rated pressure keeps no row out, but the pressure of the layer is questionable", () => {
    const cast = down([99, 100.2], [5, 6], { pressure: [1, 3] });
    const pressure = {
      ...cast.columns.get("pressure")!,
      tests: new Map([["rated_pressure", Uint8Array.of(1, 3)]]),
    };
    const { columns } = layerMeans(
      { ...cast, columns: new Map(cast.columns).set("pressure", pressure) },
      one,
    );
    expect([...columns.get("temperature")!.mean]).toEqual([5, 6]);
    expect([...columns.get("temperature")!.flags]).toEqual([1, 1]);
    expect([...columns.get("pressure")!.flags]).toEqual([1, 3]);
  });

  test("a row that a second test questions stays out", () => {
    const cast = down([99, 100.2], [5, 6], { pressure: [1, 3] });
    const tests = new Map([
      ["rated_pressure", Uint8Array.of(1, 3)],
      ["pressure_increasing", Uint8Array.of(1, 3)],
    ]);
    const pressure = { ...cast.columns.get("pressure")!, tests };
    const means = layerMeans({ ...cast, columns: new Map(cast.columns).set("pressure", pressure) }, one);
    expect([...means.centres]).toEqual([99]);
  });

  test("a cast without a downcast, and one without rows, have no layers", () => {
    const cast = down([1, 2], [5, 6], {}, { segments: [{ kind: "up", firstRow: 0, lastRow: 1 }] });
    expect(layerMeans(cast, one).centres.length).toBe(0);
    expect([...layerMeans(cast, { ...one, direction: "up" }).centres]).toEqual([1, 2]);
    expect(layerMeans(castOf({}, null), one).centres.length).toBe(0);
  });

  test("an absurd place makes no million layers", () =>
    expect(layerMeans(down([1, 1e9], [5, 6]), one).step.counts).toMatchObject({
      layers: 1,
      rowsBeyondLayers: 1,
    }));

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("a width of %d is our own mistake", (width) =>
    expect(() => layerMeans(down([1], [1]), { ...one, width })).toThrow(RangeError),
  );
});

describe("width of layers", () => {
  const even = (spacing: number, rows = 200) =>
    down(
      Array.from({ length: rows }, (_, k) => 0.5 + k * spacing),
      Array(rows).fill(10),
    );
  test.each([
    [0.06, 0.25, "four rows in a quarter"],
    [0.11, 0.5, "two in a quarter, four in a half"],
    [0.3, 1, "three in one"],
    [0.6, 2, "three in two"],
    [1.9, 2, "no width reaches three"],
    [5, 5, "never finer than the source"],
  ])("rows every %d: %d (%s)", (spacing, want) =>
    expect(layerWidthFor([even(spacing)], { coordinate: "pressure", direction: "down" })).toBe(want),
  );

  test("no rows at all: 2", () =>
    expect(layerWidthFor([], { coordinate: "pressure", direction: "down" })).toBe(2));
});

test("why the upcast is averaged is told with the layers; without a reason that is told", () => {
  const cast = down([1, 2, 3], [10, 11, 12]);
  const up = { ...cast, segments: [{ kind: "up", firstRow: 0, lastRow: 2 }] } as Cast;
  const of = (reason?: string) =>
    layerMeans(up, { width: 1, coordinate: "pressure", direction: "up", ...(reason ? { reason } : {}) }).step;
  expect(of("a bubble on the way down").words).toContain("upcast (a bubble on the way down)");
  expect(of("a bubble on the way down").parameters.reason).toBe("a bubble on the way down");
  expect(of().words).toContain("no reason given");
  expect(layerMeans(cast, one).step.parameters).not.toHaveProperty("reason");
});
