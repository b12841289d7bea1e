import { copyFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { completeSheet, readSheet } from "@wherry/converter";
import type { Cast } from "@wherry/core";
import { inTemporaryFolder, testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { convert } from "../src/convert.ts";
import { holdBack } from "../src/hold-back.ts";
import { look } from "../src/look.ts";
import { processSurvey } from "../src/process-survey.ts";
import { makeSheet } from "../src/sheet.ts";
import { readExports } from "../src/understand-files.ts";
import { startWorkers } from "../src/workers.ts";

const demo = testData("demo");
const sheetPath = testData("demo", "survey.yaml");
const sample = testData("samples", "dsg_own", "ts_single.nc");

/** The casts as they go into the writers. */
async function castsOfDemo(): Promise<readonly Cast[]> {
  const sheet = readSheet(readFileSync(sheetPath, "utf8"), sheetPath);
  if (!sheet.ok) throw new Error(sheet.problems[0].message);
  const { exports } = await readExports(
    [demo],
    { answers: sheet.value.answers ?? [], names: [] },
    "relative",
    {},
  );
  const files = exports.map(({ understood }) => understood);
  const completed = completeSheet(
    sheet.value,
    files.flatMap(({ casts }) => casts),
    sheetPath,
  );
  return (
    await processSurvey(completed.sheet, holdBack(files, completed.casts).ready, await startWorkers(1), {})
  ).casts;
}

describe("what was written is read back", () => {
  test.each([
    { target: "general", format: "classic", perCast: false },
    { target: "us-template", format: "netcdf4", perCast: false },
    { target: "ctd-guide", format: "netcdf4", perCast: true },
    { target: "us-template", format: "classic", perCast: true },
  ] as const)("the demo's products hold the numbers of its casts: $target, $format, $perCast", (way) =>
    inTemporaryFolder(async (folder) => {
      const out = join(folder, "out");
      const options = { ...way, sheet: sheetPath, out, products: ["full", "series"] as const };
      const done = await convert([demo], { ...options, force: false, version: "0" });
      expect(done.ok).toBe(true);
      const { files, problems } = await look([out]);
      expect(problems).toEqual([]);
      const netcdf = files.filter(({ path }) => path.endsWith(".nc"));
      expect(netcdf.flatMap(({ findings }) => findings)).toEqual([]);
      const read = new Map(netcdf.flatMap(({ casts }) => casts).map((cast) => [cast.id, cast]));
      const written = await castsOfDemo();
      expect(written.length).toBeGreaterThanOrEqual(15);
      expect([...read.keys()].sort()).toEqual(written.map(({ id }) => id).sort());
      for (const cast of written) sameNumbers(read.get(cast.id)!, cast);
    }),
  );
});

function sameNumbers(read: Cast, written: Cast) {
  const { id } = written;
  expect([id, read.kind, read.rows]).toEqual([id, written.kind, written.rows]);
  expect(read.time, id).toBeCloseTo(written.time, 3);
  expect(read.start?.latitude, id).toBeCloseTo(written.start?.latitude ?? Number.NaN, 9);
  expect(read.start?.longitude, id).toBeCloseTo(written.start?.longitude ?? Number.NaN, 9);
  let compared = 0;
  for (const name of [
    "depth",
    "pressure",
    "temperature",
    "conductivity",
    "salinity",
    "density",
    "sound_speed",
  ]) {
    const [there, here] = [written.columns.get(name), read.columns.get(name)];
    if (!there) continue;
    expect(here, `${id} ${name}`).toBeDefined();
    expect(here?.units, `${id} ${name}`).toBe(there.units);
    expect([...(here?.flags ?? [])], `${id} ${name}`).toEqual([...there.flags]);
    for (const [row, value] of there.values.entries()) {
      const stored = here?.values[row] ?? Number.NaN;
      // single precision keeps 24 bits; a missing value is missing in both
      const near = Object.is(stored, value) || Math.abs(stored - value) <= 1.2e-7 * Math.abs(value);
      if (!near) expect([id, name, row, stored]).toEqual([id, name, row, value]);
      compared++;
    }
  }
  expect(compared, id).toBeGreaterThan(written.rows * 4);
}

describe("netCDF files as input", () => {
  test("look knows one by its first bytes, whatever it is called, and finds it in folders", () =>
    inTemporaryFolder(async (folder) => {
      copyFileSync(sample, join(folder, "series.nc"));
      copyFileSync(sample, join(folder, "series.csv"));
      const { files, problems, skipped } = await look([folder]);
      expect(problems).toEqual([]);
      expect(skipped).toEqual([]);
      expect(files.map(({ format }) => format)).toEqual([
        "CF netCDF, timeSeries, single feature",
        "CF netCDF, timeSeries, single feature",
      ]);
      expect(new Set(files.map(({ sha256 }) => sha256)).size).toBe(1);
    }));

  test("text that is called .nc is read as text", () =>
    inTemporaryFolder(async (folder) => {
      const [export1] = readdirSync(demo).filter((name) => name.endsWith(".csv"));
      copyFileSync(join(demo, export1!), join(folder, "cast.nc"));
      const { files } = await look([join(folder, "cast.nc")]);
      expect(files.map(({ format }) => format)).toEqual(["delimited text"]);
    }));

  test("a damaged one is a problem that names the file", () =>
    inTemporaryFolder(async (folder) => {
      const path = join(folder, "cut.nc");
      writeFileSync(path, readFileSync(sample).subarray(0, 100));
      const { files, problems } = await look([path]);
      expect(files).toEqual([]);
      expect(problems[0]).toMatchObject({ where: { file: path } });
      expect(problems[0]?.code).toMatch(/^netcdf\//);
    }));

  test("convert takes them, named or in a folder, and a sheet is filled from them", () =>
    inTemporaryFolder(async (folder) => {
      const options = { sheet: sheetPath, products: ["series"] as const, perCast: false, version: "0" };
      const mixed = join(folder, "in");
      const [export1] = readdirSync(demo).filter((name) => name.endsWith(".csv"));
      mkdirSync(mixed);
      copyFileSync(join(demo, export1!), join(mixed, export1!));
      copyFileSync(sample, join(mixed, "series.nc"));
      const out = join(folder, "out");
      const done = await convert([mixed], { ...options, out, force: false });
      expect(done).toMatchObject({ ok: true, value: { casts: 2, skipped: [] } });
      const made = await makeSheet([sample], { out: join(folder, "s.yaml"), now: 0, force: false });
      expect(made).toMatchObject({ ok: true, value: { casts: 1, questions: 0 } });
    }));

  test("the result of an earlier run is passed over in folders, and refused where named", () =>
    inTemporaryFolder(async (folder) => {
      const options = { sheet: sheetPath, products: ["series"] as const, perCast: false, version: "0" };
      const exports = join(folder, "exports");
      mkdirSync(exports);
      copyFileSync(sample, join(exports, "series.nc"));
      const out = join(exports, "result");
      const first = await convert([exports], { ...options, out, force: false });
      expect(first).toMatchObject({ ok: true, value: { casts: 1, skipped: [] } });
      const second = await convert([exports], { ...options, out, force: true });
      expect(second).toMatchObject({ ok: true, value: { casts: 1, skipped: [out] } });
      const named = await convert([out], { ...options, out: join(folder, "again"), force: false });
      expect(named).toMatchObject({ ok: false, problems: [{ code: "input/result" }] });
    }));
});
