import { readFileSync } from "node:fs";
import { type Cast, type Column, layerMeans } from "@wherry/core";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { binnedDataset } from "../src/writers/binned-dataset.ts";
import { derivedUncertainty, isRiverThinned, type SensorRows } from "../src/writers/derived-uncertainty.ts";
import { fullDataset } from "../src/writers/full-dataset.ts";
import { seriesDataset } from "../src/writers/series-dataset.ts";
import { numbers, referenceCasts } from "./reference-casts.ts";
import { referenceContext } from "./reference-sheet.ts";

type Point = {
  C: number;
  t: number;
  p: number;
  lat: number;
  u: [number, number, number];
  first_order: { SP: number; rho: number; sound_speed: number; depth: number };
};

// made with the TEOS-10 library by tools/make_uncertainty_points.py
const { points } = JSON.parse(readFileSync(testData("reference", "uncertainty-points.json"), "utf8")) as {
  points: Point[];
};

const method = { from: [], equation: "", references: "" };
const source = {
  header: "",
  units: null,
  index: 0,
  decimals: 4,
  significantDigits: 6,
  first: Number.NaN,
  last: Number.NaN,
};
/** Measured columns have a source, computed ones a method. */
const asIfComputed = (cast: Cast): Cast => ({
  ...cast,
  columns: new Map(
    [...cast.columns].map(([name, column]): [string, Column] => [
      name,
      ["conductivity", "temperature", "pressure"].includes(name)
        ? { ...column, source, method: null }
        : { ...column, source: null, method },
    ]),
  ),
});
const casts = (await referenceCasts("full")).map(asIfComputed);
const series = (await referenceCasts("series")).map(asIfComputed);
const [first] = casts;
const inputs =
  ({ C, t, p }: Pick<Point, "C" | "t" | "p">) =>
  (name: string): Float64Array | null =>
    ({
      conductivity: Float64Array.of(C),
      temperature: Float64Array.of(t),
      pressure: Float64Array.of(p),
    })[name] ?? null;
const sensors = ([C, t, p]: readonly (number | null)[]): SensorRows => {
  const row = (u: number | null | undefined) => (u == null ? null : Float64Array.of(u));
  return { C: row(C), t: row(t), p: row(p) };
};

describe.each([
  ["salinity", "SP", 1e-3],
  ["density", "rho", 3e-3],
  ["sound_speed", "sound_speed", 3e-3],
  ["depth", "depth", 1e-3],
] as const)("%s", (name, key, share) => {
  test("derivatives of the TEOS-10 library at 60 points", () => {
    const far = points.filter((point) => {
      const cast = { ...first!, start: { ...first!.start!, latitude: point.lat } };
      const got = derivedUncertainty(name, cast, inputs(point), sensors(point.u))?.[0] ?? Number.NaN;
      return !(Math.abs(got / point.first_order[key] - 1) <= share);
    });
    expect(far).toEqual([]);
  });

  test("none without the figure of a sensor that counts, none of a received column", () => {
    const [point] = points;
    const of = (cast: Cast, u: SensorRows) => derivedUncertainty(name, cast, inputs(point!), u);
    expect(of(first!, sensors([0.01, 0.01, null]))).toBeNull();
    expect(of(first!, sensors([null, 0.01, 0.1])) === null).toBe(name !== "depth");
    const received = new Map(first!.columns).set(name, {
      ...first!.columns.get(name)!,
      source,
      method: null,
    });
    expect(of({ ...first!, columns: received }, sensors([0.01, 0.01, 0.1]))).toBeNull();
  });
});

test("density by a salinity that came from elsewhere gets none: its uncertainty is not known", () => {
  const columns = new Map(first!.columns);
  columns.set("salinity", { ...columns.get("salinity")!, source, method: null });
  const u = sensors([0.01, 0.01, 0.1]);
  expect(derivedUncertainty("density", { ...first!, columns }, inputs(points[0]!), u)).toBeNull();
});

test("river water is known by its salinity, not by its warmth", () => {
  // C(SP 2, 15 deg C) is about 3.1 mS cm-1 (PSS-78)
  expect(isRiverThinned(inputs({ C: 0.5, t: 15, p: 0 }))).toBe(true);
  expect(isRiverThinned(inputs({ C: 4, t: 15, p: 0 }))).toBe(false);
  expect(isRiverThinned(() => null)).toBe(false);
});

describe("in the products", () => {
  const base = referenceContext();
  const context = {
    ...base,
    sheet: {
      ...base.sheet,
      instruments: base.sheet.instruments!.map((instrument) => ({
        ...instrument,
        sensors: {
          temperature: { uncertainty: 5, units: "mK" },
          conductivity: { uncertainty: 0.001, units: "S m-1" },
          pressure: { uncertainty: 0.05, units: "dbar" },
        },
      })),
    },
  };
  const means = new Map(
    casts.map((cast) => [cast.id, layerMeans(cast, { width: 0.5, coordinate: "depth", direction: "down" })]),
  );
  test.each([
    ["full", fullDataset(casts, context)],
    ["binned", binnedDataset(casts, means, context)!],
    ["series", seriesDataset(series[0]!, context)],
  ])("%s", async (kind, dataset) => {
    for (const name of ["salinity", "density", "sound_speed", ...(kind === "binned" ? [] : ["depth"])]) {
      const variable = dataset.variables.get(`${name}_uncertainty`);
      expect(variable?.attributes.get("units")?.value).toBe(
        dataset.variables.get(name)?.attributes.get("units")?.value,
      );
      expect(String(variable?.attributes.get("comment")?.value)).toMatch(/JCGM 100:2008/);
      expect(dataset.variables.get(name)?.attributes.get("ancillary_variables")?.value).toContain(
        `${name}_uncertainty`,
      );
      const values = await numbers(dataset, `${name}_uncertainty`);
      expect(values.some((value) => value > 0)).toBe(true);
      const stored = await numbers(dataset, name);
      expect(values.every((value, row) => Number.isNaN(value) || !Number.isNaN(stored[row]!))).toBe(true);
    }
  });
});
