import { readFileSync } from "node:fs";
import { openDataset, parseCdl } from "@wherry/netcdf";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { DatasetView } from "./dataset-view.ts";
import { featureRuns } from "./feature-runs.ts";
import { shippedVocabulary } from "./vocabulary.ts";

const context = { path: "a.nc", edition: "1.13", now: 0, vocabulary: shippedVocabulary() } as const;

function viewOf(cdl: string): DatasetView {
  const parsed = parseCdl(cdl);
  if (!parsed.ok) throw new Error(parsed.problems[0].message);
  return new DatasetView(parsed.value, context);
}

// Layouts as their manifest names them, by the sections of CF appendix H.
describe("the layout is recognised", () => {
  test.each([
    ["profile_single.nc", "profile", "single", null],
    ["profile_orth.nc", "profile", "multidimensional", "profile"],
    ["profile_incomplete.nc", "profile", "incomplete", "profile"],
    ["profile_contig.nc", "profile", "contiguous", "profile"],
    ["profile_indexed.nc", "profile", "indexed", "profile"],
    ["ts_single.nc", "timeseries", "single", null],
    ["ts_multi.nc", "timeseries", "multidimensional", "station"],
    ["trajprof_single.nc", "trajectoryprofile", "single", null],
    ["trajprof_ragged.nc", "trajectoryprofile", "two-level", "trajectory"],
    ["tsprof_single.nc", "timeseriesprofile", "single", null],
  ])("%s", async (name, featureType, form, instance) => {
    const opened = await openDataset(readFileSync(testData("samples", "dsg_own", name)));
    if (!opened.ok) throw new Error("cannot be read");
    expect(new DatasetView(opened.value, context).layout).toMatchObject({ featureType, form, instance });
  });
});

test("roles and axes", async () => {
  const view = viewOf(`dimensions: p = 2 ; o = 3 ; n = 2 ; nv = 2 ; variables:
    char id(p, n) ; id:cf_role = "profile_id" ; int rows(p) ; rows:sample_dimension = "o" ;
    double lat(p) ; lat:units = "degree_N" ; float z(o) ; z:units = "dbar" ; z:bounds = "zb" ; float zb(o, nv) ;
    float t(o) ; t:coordinates = "lat z id" ; t:grid_mapping = "crs" ; t:ancillary_variables = "q" ;
    byte q(o) ; q:flag_values = 1b ; int crs ; double o(o) ;`);
  const roles = Object.fromEntries(view.all.map(({ name, role }) => [name, role]));
  expect(roles).toEqual({
    id: "label",
    rows: "count",
    lat: "auxiliary",
    z: "auxiliary",
    zb: "bounds",
    t: "data",
    q: "flag",
    crs: "container",
    o: "coordinate",
  });
  expect(view.variables.get("lat")?.axis).toBe("Y");
  expect(view.variables.get("z")?.axis).toBe("Z");
  expect(view.sampled.map(({ name }) => name)).toEqual(["t", "q"]);
  expect([...view.ancillary].map(({ name }) => name)).toEqual(["q"]);
});

test("missing values are NaN, texts lose their padding", async () => {
  const view =
    viewOf(`dimensions: n = 3 ; k = 3 ; variables: short a(n) ; a:_FillValue = -1s ; a:missing_value = -2s ;
    char s(n, k) ; int b(n) ; data: a = 5, -1, -2 ; s = "ab", "", "xyz" ; b = 1, -2147483647, 3 ;`);
  expect([...((await view.data.numbers("a")) ?? [])]).toEqual([5, Number.NaN, Number.NaN]);
  // what the netCDF library leaves where nothing was written
  expect([...((await view.data.numbers("b")) ?? [])]).toEqual([1, Number.NaN, 3]);
  expect(await view.data.texts("s")).toEqual(["ab", "", "xyz"]);
  expect(await view.data.numbers("s")).toBeNull();
  expect(await view.data.numbers("none")).toBeNull();
});

test("values come feature by feature", async () => {
  const counted =
    viewOf(`dimensions: p = 3 ; o = 4 ; variables: int rows(p) ; rows:sample_dimension = "o" ; float t(o) ;
    data: rows = 1, 0, 3 ;`);
  const indexed =
    viewOf(`dimensions: p = 2 ; o = 4 ; variables: int which(o) ; which:instance_dimension = "p" ;
    float t(o) ; data: which = 0, 1, 0, 1 ;`);
  const padded = viewOf("dimensions: p = 2 ; o = 2 ; variables: float t(p, o) ;");
  const runs = async (view: DatasetView) =>
    (await featureRuns(view, view.variables.get("t")!)).map((run) => [...run]);
  expect(await runs(counted)).toEqual([[0], [], [1, 2, 3]]);
  expect(await runs(indexed)).toEqual([
    [0, 2],
    [1, 3],
  ]);
  expect(await runs(padded)).toEqual([
    [0, 1],
    [2, 3],
  ]);
});
