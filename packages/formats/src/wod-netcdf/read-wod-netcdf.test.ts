import { readFileSync } from "node:fs";
import { type Dataset, openDataset, parseCdl } from "@wherry/netcdf";
import { testWithShared } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { noAnswers } from "../../test/asking-nobody.ts";
import { readNetcdfCasts } from "../read-netcdf-casts.ts";
import type { UnderstoodFile } from "../understood.ts";

// Invented casts in the arrangement of the World Ocean Database's files of many casts: 7 has temperature and salinity,
// 8 temperature alone, 9 neither the time of day nor as many salinities as levels.

const cdl = (changes: Readonly<Record<string, string>> = {}) => {
  const data: Record<string, string> = {
    GMT_time: "6.5, 7, 9.96921e+36",
    z_row_size: "3, 2, 2",
    Temperature_row_size: "3, 2, 2",
    Salinity_row_size: "3, 0, 1",
    Salinity: "35.1, 35.2, 35.3, 34.9",
    ...changes,
  };
  return `netcdf many {
dimensions: casts = 3 ; z_obs = 7 ; Temperature_obs = 7 ; Salinity_obs = 4 ;
variables:
  int wod_unique_cast(casts) ;
  float lat(casts) ; lat:standard_name = "latitude" ; lat:units = "degrees_north" ;
  float lon(casts) ; lon:standard_name = "longitude" ; lon:units = "degrees_east" ;
  double time(casts) ; time:standard_name = "time" ; time:units = "days since 1770-01-01 00:00:00 UTC" ;
  float GMT_time(casts) ; GMT_time:units = "hours" ;
  float z(z_obs) ; z:standard_name = "depth" ; z:units = "m" ; z:ancillary_variables = "z_WODflag" ;
  byte z_WODflag(z_obs) ; z_WODflag:flag_values = 0b, 1b, 2b ;
    z_WODflag:flag_meanings = "accepted duplicate_or_inversion density_inversion" ;
  int z_row_size(casts) ; z_row_size:sample_dimension = "z_obs" ;
  float Temperature(Temperature_obs) ; Temperature:standard_name = "sea_water_temperature" ;
    Temperature:units = "degree_C" ; Temperature:ancillary_variables = "Temperature_WODflag" ;
    Temperature:_FillValue = -1.e10f ;
  byte Temperature_WODflag(Temperature_obs) ;
    Temperature_WODflag:flag_values = 0b, 1b, 2b, 3b, 4b ;
    Temperature_WODflag:flag_meanings = "accepted range_out inversion gradient anomaly" ;
  int Temperature_row_size(casts) ; Temperature_row_size:sample_dimension = "Temperature_obs" ;
  float Salinity(Salinity_obs) ; Salinity:standard_name = "sea_water_salinity" ;
  int Salinity_row_size(casts) ; Salinity_row_size:sample_dimension = "Salinity_obs" ;
  :featureType = "Profile" ; :Conventions = "CF-1.6" ;
data:
  wod_unique_cast = 7, 8, 9 ;
  lat = 50, 51, 52 ; lon = -5, -6, -7 ;
  time = 85000.2708333333, 85001.2916666667, 85002 ;
  GMT_time = ${data.GMT_time} ;
  z = 0, 10, 20, 0, 5, 0, 8 ;
  z_WODflag = 0, 0, 1, 0, 0, 0, 0 ;
  z_row_size = ${data.z_row_size} ;
  Temperature = 12, 11, 10, 13, 12.5, 9, 8 ;
  Temperature_WODflag = 0, 0, 3, 0, 0, 0, 0 ;
  Temperature_row_size = ${data.Temperature_row_size} ;
  Salinity = ${data.Salinity} ;
  Salinity_row_size = ${data.Salinity_row_size} ;
}`;
};

async function readOf(dataset: Dataset): Promise<UnderstoodFile> {
  const read = await readNetcdfCasts(dataset, {
    path: "many.nc",
    sha256: "0".repeat(64),
    asking: noAnswers(),
  });
  if (!read.ok) throw new Error(read.problems[0].message);
  return read.value;
}

function parsed(text: string): Dataset {
  const dataset = parseCdl(text);
  if (!dataset.ok) throw new Error(dataset.problems[0].message);
  return dataset.value;
}

describe("a file in which every variable has rows of its own", () => {
  test("becomes casts with their values side by side", async () => {
    const { format, casts, findings } = await readOf(parsed(cdl()));
    expect(format).toBe("World Ocean Database netCDF");
    expect(casts.map(({ id, rows }) => [id, rows])).toEqual([
      ["7", 3],
      ["8", 2],
      ["9", 2],
    ]);
    const values = (cast: number, name: string) => [...(casts[cast]!.columns.get(name)?.values ?? [])];
    expect(values(0, "depth")).toEqual([0, 10, 20]);
    expect(values(0, "salinity")).toEqual([35.1, 35.2, 35.3].map(Math.fround));
    expect(values(1, "temperature")).toEqual([13, 12.5]);
    expect(values(1, "salinity")).toEqual([NaN, NaN]);
    // 85000 days after 1770-01-01 are 2002-09-22 (datetime of Python)
    expect(casts[0]!.time).toBeCloseTo(Date.UTC(2002, 8, 22, 6, 30) / 1000, 0);
    expect(findings.map(({ code, where }) => [code, where.variable])).toEqual([
      ["wod-netcdf/unfit", "Salinity"],
    ]);
  });

  test("keeps the flags under the name of their scheme", async () => {
    const { casts } = await readOf(parsed(cdl()));
    expect(casts[0]!.columns.get("temperature")?.sourceFlags).toMatchObject({
      scheme: "WOD",
      values: ["0", "0", "3"],
    });
    expect(casts[0]!.columns.get("depth")?.sourceFlags).toMatchObject({
      scheme: "WOD depth",
      values: ["0", "0", "1"],
    });
  });

  test("a date without a time of day is no time", async () => {
    const { casts } = await readOf(parsed(cdl()));
    expect(casts[2]!.time).toBeNaN();
  });

  test.each([
    ["more rows counted than there are", { z_row_size: "3, 2, 3" }],
    ["a negative count", { Salinity_row_size: "5, 0, -1" }],
  ])("%s: refused", async (_, changes) => {
    const read = await readNetcdfCasts(parsed(cdl(changes)), { path: "many.nc", sha256: "0".repeat(64) });
    expect(read).toMatchObject({
      ok: false,
      problems: [{ code: "wod-netcdf/counts", where: { file: "many.nc" } }],
    });
  });
});

testWithShared(["samples", "real", "wod", "wod_ragged_OSD.nc"], "a real file of 105 casts", async (path) => {
  const opened = await openDataset(new Uint8Array(readFileSync(path)));
  if (!opened.ok) throw new Error(opened.problems[0].message);
  const { casts } = await readOf(opened.value);
  opened.value.close?.();
  // five casts have no levels; the first as the netCDF C library reads it with Python
  expect(casts).toHaveLength(100);
  expect(casts[0]).toMatchObject({ id: "67017", rows: 4 });
  expect([...casts[0]!.columns.get("temperature")!.values]).toEqual(
    [27.5, 27.5, 24.9, 22.6].map(Math.fround),
  );
  expect(casts.every(({ columns }) => columns.has("depth"))).toBe(true);
});
