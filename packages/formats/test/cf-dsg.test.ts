import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import type { Cast } from "@wherry/core";
import { type Dataset, openDataset, parseCdl } from "@wherry/netcdf";
import { testData, testWithShared } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { readCfDsg, type UnderstoodFile } from "../src/index.ts";

const SHA256 = "0".repeat(64);

async function open(path: string): Promise<Dataset> {
  const opened = path.endsWith(".cdl")
    ? parseCdl(readFileSync(path, "utf8"))
    : await openDataset(readFileSync(path));
  if (!opened.ok) throw new Error(`${path}: ${opened.problems[0].message}`);
  return opened.value;
}

async function understood(dataset: Dataset, path = "here.nc"): Promise<UnderstoodFile> {
  const read = await readCfDsg(dataset, { path, sha256: SHA256 });
  if (!read.ok) throw new Error(read.problems[0].message);
  return read.value;
}

interface ExpectedColumn {
  readonly variable: string;
  readonly rows: number;
  readonly missing: number;
  readonly first: number;
  readonly last: number;
  readonly sum: number;
  readonly sumOfSquares: number;
}

interface ExpectedCast {
  readonly id: string;
  readonly time: number;
  readonly latitude: number;
  readonly longitude: number;
  readonly fixedDepth: number | null;
  readonly columns: Readonly<Record<string, ExpectedColumn>>;
  readonly flags: Readonly<Record<string, Readonly<Record<string, number>>>>;
}

// netCDF C library with Python, layouts named by hand: tools/make_cf_dsg_expected.py
const { files: expected } = JSON.parse(readFileSync(testData("cf-dsg", "expected.json"), "utf8")) as {
  readonly files: Readonly<Record<string, readonly ExpectedCast[]>>;
};

function summary(cast: Cast): ExpectedCast {
  const columns: Record<string, ExpectedColumn> = {};
  const flags: Record<string, Record<string, number>> = {};
  for (const name of HOUSE) {
    const column = cast.columns.get(name);
    if (!column) continue;
    const there = column.values.filter((value) => !Number.isNaN(value));
    columns[name] = {
      variable: column.source?.header ?? "",
      rows: cast.rows,
      missing: cast.rows - there.length,
      first: there[0] ?? Number.NaN,
      last: there.at(-1) ?? Number.NaN,
      sum: there.reduce((sum, value) => sum + value, 0),
      sumOfSquares: there.reduce((sum, value) => sum + value * value, 0),
    };
    if (!column.sourceFlags) continue;
    const counts: Record<string, number> = {};
    for (const code of column.sourceFlags.values) if (code !== "") counts[code] = (counts[code] ?? 0) + 1;
    flags[name] = counts;
  }
  return {
    id: cast.id,
    time: cast.time,
    latitude: cast.start?.latitude ?? Number.NaN,
    longitude: cast.start?.longitude ?? Number.NaN,
    fixedDepth: cast.fixedDepth?.depth ?? null,
    columns,
    flags,
  };
}

const HOUSE = ["depth", "pressure", "temperature", "conductivity", "salinity", "density", "sound_speed"];

/** Sums may be taken in another order: equal to 12 digits. */
const rounded = (value: unknown): unknown =>
  typeof value === "number"
    ? Number(value.toPrecision(12))
    : Array.isArray(value)
      ? value.map(rounded)
      : typeof value === "object" && value !== null
        ? Object.fromEntries(Object.entries(value).map(([key, each]) => [key, rounded(each)]))
        : value;

describe("every layout, against the netCDF C library", () => {
  test("the expected casts are those of 24 files", () => expect(Object.keys(expected)).toHaveLength(24));

  test.each(Object.entries(expected))("%s", async (name, casts) => {
    const file = await understood(await open(testData(...name.split("/"))), name);
    expect(file.findings).toEqual([]);
    // ids have no blanks
    const wanted = casts.map((cast) => ({ ...cast, id: cast.id.replaceAll(" ", "-") }));
    expect(rounded(file.casts.map(summary))).toEqual(rounded(wanted));
    for (const cast of file.casts) {
      expect(cast.kind).toBe(casts[0]?.fixedDepth === null ? "profile" : "fixed-depth");
      expect(cast.lines).toHaveLength(cast.rows);
      for (const { values, flags, sourceFlags } of cast.columns.values()) {
        expect(values).toHaveLength(cast.rows);
        for (const [row, flag] of flags.entries()) {
          expect(flag === 9).toBe(Number.isNaN(values[row]));
          if (sourceFlags && flag !== 9) expect(String(flag)).toBe(sourceFlags.values[row]);
        }
        if (sourceFlags) expect(sourceFlags.scheme).toBe("IODE primary level");
      }
    }
  });

  test.each([
    ["profile_single.nc", "CF netCDF, profile, single feature"],
    ["profile_orth.nc", "CF netCDF, profile, orthogonal multidimensional array"],
    ["profile_incomplete.nc", "CF netCDF, profile, incomplete multidimensional array"],
    ["profile_contig.nc", "CF netCDF, profile, contiguous ragged array"],
    ["profile_indexed.nc", "CF netCDF, profile, indexed ragged array"],
    ["ts_single.nc", "CF netCDF, timeSeries, single feature"],
    ["ts_multi.nc", "CF netCDF, timeSeries, orthogonal multidimensional array"],
    ["trajprof_ragged.nc", "CF netCDF, trajectoryProfile, contiguous ragged array"],
  ])("%s is called %s", async (name, format) => {
    const {
      format: said,
      encoding,
      delimiter,
      missingMarkers,
    } = await understood(await open(testData("samples", "dsg_own", name)));
    expect(said).toBe(format);
    expect([encoding, delimiter]).toEqual([null, null]);
    expect(missingMarkers).toEqual(["-9999"]);
  });
});

describe("our own products tell more than CF asks", () => {
  test("full.cdl: ends, satellites, offset, time of rows and segments", async () => {
    const { casts } = await understood(await open(testData("reference-products", "full.cdl")));
    const [first, second] = casts;
    // read off the CDL by eye
    expect(first).toMatchObject({
      timeRole: "start",
      endTime: 1715672545.5,
      start: { satellites: 9 },
      end: { latitude: 50.34138, longitude: 3.11871, satellites: 8 },
      state: { pressureZeroed: true, direction: "both" },
      instrument: { model: "hand-held profiler with logger", serialNumber: "T-0417" },
      segments: [
        { kind: "air", firstRow: 0, lastRow: 2 },
        { kind: "soak", firstRow: 3, lastRow: 6 },
        { kind: "down", firstRow: 7, lastRow: 22 },
        { kind: "bottom", firstRow: 23, lastRow: 25 },
        { kind: "up", firstRow: 26, lastRow: 30 },
        { kind: "other", firstRow: 31, lastRow: 31 },
      ],
    });
    expect(first?.pressureOffset).toBeCloseTo(0.12, 6);
    expect(first?.elapsed?.slice(0, 4)).toEqual(Float64Array.of(0, 0.5, 1, 1.5));
    expect(second?.end).toBeNull();
    expect(second?.columns.get("conductivity")?.source).toMatchObject({ units: "S m-1", decimals: 4 });
  });

  test("binned.cdl: means are the quantities, spreads and counts are not", async () => {
    const { casts } = await understood(await open(testData("reference-products", "binned.cdl")));
    expect(casts[0]?.columns.get("temperature_sd")).toMatchObject({ standardName: null, units: "degree_C" });
    expect(casts[0]?.columns.get("temperature_count")).toMatchObject({
      standardName: "number_of_observations",
    });
    expect(casts[0]?.state.processing).toBe("averaged");
  });

  test("what is believed says which variable and attribute said so", async () => {
    const { casts } = await understood(await open(testData("reference-products", "full.cdl")), "full.nc");
    expect(casts[0]?.evidence).toContainEqual({
      fact: "column:conductivity",
      certainty: "stated",
      because:
        "variable conductivity: standard_name says sea_water_electrical_conductivity, units says S m-1",
      where: { file: "full.nc", variable: "conductivity", attribute: "standard_name" },
    });
  });
});

describe("files that nobody here made", () => {
  testWithShared(["samples", "real"], "each is told what it holds, and none throws", async (real) => {
    const names = readdirSync(real, { recursive: true, encoding: "utf8" }).filter(
      (name) => /\.nc\d?$/.test(name) && statSync(join(real, name)).isFile(),
    );
    expect(names.length).toBeGreaterThan(10);
    const formats = new Map<string, string>();
    for (const name of names) {
      const opened = await openDataset(readFileSync(join(real, name)));
      if (!opened.ok) continue;
      const file = await understood(opened.value, name);
      formats.set(name, file.format);
      expect(file.casts, name).toEqual([]);
      const said = file.findings.find(({ code }) => code === "cf-dsg/no-casts");
      expect(said?.message, name).toMatch(/No casts were made of it: ./);
      expect(said?.message, name).toMatch(/\d+ variables?, (?:no )?dimensions/);
      opened.value.close?.();
    }
    const of = (ending: string) =>
      [...formats].filter(([name]) => name.endsWith(ending)).map(([, format]) => format);
    expect(of("D1900857_029.nc")).toEqual(["Argo netCDF"]);
    expect(of("R6903247_203.nc")).toEqual(["Argo netCDF"]);
    expect(of("wod_ragged_OSD.nc")).toEqual(["netCDF, a ragged array for each variable"]);
    expect(of("glider_template_v2.0.nc")).toEqual(["CF netCDF, trajectory"]);
    expect(of("example_1.nc")).toEqual(["netCDF"]);
    expect(of("tiny.nc")).toEqual(["netCDF"]);
  });
});

test.each([
  "profile_contig.nc",
  "profile_indexed.nc",
  "profile_incomplete.nc",
  "ts_multi.nc",
  "trajprof_ragged.nc",
])("%s with damaged bytes never throws", async (name) => {
  const sound = readFileSync(testData("samples", "dsg_own", name));
  let seed = 1;
  const next = (below: number) => {
    seed = (seed * 48271) % 2147483647; // Lehmer, "minimal standard"
    return seed % below;
  };
  const runs = name.startsWith("trajprof") ? 40 : 120; // netCDF-4 takes longer to open
  let read = 0;
  for (let run = 0; run < runs; run++) {
    const bytes = Uint8Array.from(sound);
    const reach = run % 3 === 0 ? bytes.length : 9000;
    for (let n = next(6); n >= 0; n--) bytes[next(Math.min(reach, bytes.length))] = next(256);
    const opened = await openDataset(bytes);
    if (!opened.ok) continue;
    await understood(opened.value, name);
    opened.value.close?.();
    read++;
  }
  expect(read).toBeGreaterThan(runs / 6);
});

test("files with planted faults give casts or a statement, and never throw", async () => {
  const folder = testData("samples", "planted");
  for (const name of readdirSync(folder).filter((each) => each.endsWith(".nc"))) {
    const file = await understood(await open(join(folder, name)), name);
    if (file.casts.length === 0)
      expect(
        file.findings.map(({ code }) => code),
        name,
      ).toContain("cf-dsg/no-casts");
  }
});
