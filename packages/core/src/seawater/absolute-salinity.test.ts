import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { testData } from "@wherry/testkit";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  absoluteSalinity,
  absoluteSalinityColumn,
  absoluteSalinityRule,
  salinityFromAbsolute,
  salinityFromAbsoluteColumn,
} from "./absolute-salinity.ts";
import { anomalyRatio } from "./anomaly-ratio.ts";
import { anomalyTable, LEVELS } from "./anomaly-ratio-table.ts";
import { referenceSalinity } from "./reference-salinity.ts";

const readJson = (name: string) => JSON.parse(readFileSync(testData("reference", name), "utf8"));

describe("the packed table", () => {
  const grid = JSON.parse(
    gunzipSync(readFileSync(testData("reference", "saar-grid.json.gz"))).toString("utf8"),
  ) as { p_dbar: number[]; columns: (number | null)[][]; cell_depth: number[] };
  const { ratios, cellLevels } = anomalyTable();

  test("has the levels and cells of the sampled table", () => {
    expect(LEVELS).toEqual(grid.p_dbar);
    expect([...cellLevels]).toEqual(grid.cell_depth);
  });

  test("has every value of the sampled table and none besides", () => {
    const want = grid.columns.flatMap((column) =>
      LEVELS.map((_, k) => (column[k] === null || column[k] === undefined ? Number.NaN : column[k] * 1e-9)),
    );
    expect([...ratios]).toEqual(want);
  });
});

test.each(
  (
    readJson("check-values.json").entries as {
      quantity: string;
      inputs: Record<string, number>;
      expected: number;
      tolerance: number;
      source: string;
    }[]
  ).filter((entry) => entry.quantity === "absolute_salinity_from_SP_g_kg"),
)("$inputs gives $expected ($source)", ({ inputs, expected, tolerance }) => {
  const value = absoluteSalinity(inputs.SP!, inputs.p_dbar!, inputs.lon_degE!, inputs.lat_degN!);
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance);
});

describe("grid of the TEOS-10 library", () => {
  const points = readJson("gsw-grid.json").points as {
    p: number;
    lon: number;
    lat: number;
    out: { SP: number; SA: number; SAAR: number; SP_from_SA: number };
  }[];
  // the table is stored to 1e-9 in the ratio: 1.8e-8 g kg-1 at SP 35
  test("Absolute Salinity", () => {
    const far = points.filter(
      ({ p, lon, lat, out }) => !(Math.abs(absoluteSalinity(out.SP, p, lon, lat) - out.SA) <= 5e-8),
    );
    expect(far).toEqual([]);
  });
  test("back to Practical Salinity", () => {
    const far = points.filter(
      ({ p, lon, lat, out }) =>
        !(Math.abs(salinityFromAbsolute(out.SA, p, lon, lat) - out.SP_from_SA) <= 5e-8),
    );
    expect(far).toEqual([]);
  });
  test("anomaly ratio", () => {
    const far = points.filter(
      ({ p, lon, lat, out }) => !(Math.abs(anomalyRatio(p, lon, lat) - out.SAAR) <= 6e-10),
    );
    expect(far).toEqual([]);
  });
});

test("random places at coasts, in Central America and about the Baltic (TEOS-10 library)", () => {
  const { points } = readJson("anomaly-ratio-points.json") as { points: number[][] };
  expect(points.length).toBeGreaterThan(2000);
  const far = points.filter(([lon, lat, p, SP, ratio, SA]) => {
    const ratioIsNear = Math.abs(anomalyRatio(p!, lon!, lat!) - ratio!) <= 6e-10;
    return !(ratioIsNear && Math.abs(absoluteSalinity(SP!, p!, lon!, lat!) - SA!) <= 5e-8);
  });
  expect(far).toEqual([]);
});

test("a column at one place has the bits of its single rows, at every level and between", () => {
  const { points } = readJson("anomaly-ratio-points.json") as { points: number[][] };
  const p = Float64Array.from([
    ...LEVELS.flatMap((level) => [level - 0.001, level, level + 4]),
    ...[-3, -0, 9_000, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
  ]);
  const S = p.map((_, i) => i / 4);
  const out = new Float64Array(p.length);
  for (const [lon, lat] of [...points.filter((_, i) => i % 10 === 0), [20, 59], [90, 48], [0, -87]]) {
    absoluteSalinityColumn(S, p, lon!, lat!, out);
    expect(out).toEqual(S.map((SP, i) => absoluteSalinity(SP, p[i]!, lon!, lat!)));
    salinityFromAbsoluteColumn(S, p, lon!, lat!, out);
    expect(out).toEqual(S.map((SA, i) => salinityFromAbsolute(SA, p[i]!, lon!, lat!)));
  }
});

describe("places", () => {
  test("Baltic: fresh river water has 0.087 g kg-1 (Feistel et al. 2010)", () => {
    expect(absoluteSalinityRule(20, 59)).toBe("baltic");
    expect(absoluteSalinity(0, 0, 20, 59)).toBeCloseTo(0.087, 12);
    expect(absoluteSalinity(35, 0, 20, 59)).toBeCloseTo(35.16504, 12);
  });
  test("far from the sea Absolute Salinity is Reference Salinity", () => {
    expect(absoluteSalinityRule(90, 48)).toBe("reference");
    expect(absoluteSalinity(10, 0, 90, 48)).toBe(referenceSalinity(10));
  });
  test("both sides of Central America differ", () => {
    expect(absoluteSalinityRule(-79.5, 8.8)).toBe("atlas");
    expect(anomalyRatio(0, -79.5, 8.0)).not.toBe(anomalyRatio(0, -79.5, 9.8));
  });
  test("outside the atlas and without a number there is no value", () => {
    expect(absoluteSalinity(35, 0, 0, -87)).toBeNaN();
    for (const missing of [0, 1, 2, 3]) {
      const inputs = [35, 0, 20, 30].map((value, i) => (i === missing ? Number.NaN : value));
      const [SP, p, lon, lat] = inputs as [number, number, number, number];
      expect(absoluteSalinity(SP, p, lon, lat)).toBeNaN();
      expect(salinityFromAbsolute(SP, p, lon, lat)).toBeNaN();
    }
    expect(absoluteSalinity(35, Number.NaN, 20, 59)).toBeNaN();
    expect(absoluteSalinity(35, 0, Number.POSITIVE_INFINITY, 59)).toBeNaN();
  });
  test("the poles, the dateline and below the deepest level have one", () => {
    for (const [p, lon, lat] of [
      [0, 0, 90],
      [0, 180, -86],
      [9000, -160, 20],
      [-1, -180, 10],
    ] as const) {
      expect(absoluteSalinity(35, p, lon, lat)).toBeGreaterThan(35);
    }
  });
});

const place = [
  fc.double({ min: 0, max: 7000, noNaN: true }),
  fc.integer({ min: -180 * 8, max: 180 * 8 }).map((eighths) => eighths / 8),
  fc.double({ min: -86, max: 90, noNaN: true }),
] as const;

test("a full turn of longitude changes nothing", () => {
  fc.assert(
    fc.property(...place, (p, lon, lat) => {
      expect(absoluteSalinity(30, p, lon + 360, lat)).toBe(absoluteSalinity(30, p, lon, lat));
    }),
  );
});

test("there and back", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 42, noNaN: true }), ...place, (SP, p, lon, lat) => {
      expect(salinityFromAbsolute(absoluteSalinity(SP, p, lon, lat), p, lon, lat)).toBeCloseTo(SP, 11);
    }),
  );
});
