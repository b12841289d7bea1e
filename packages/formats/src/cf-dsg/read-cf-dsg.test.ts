import { Flag } from "@wherry/core";
import { memoryDataset, parseCdl } from "@wherry/netcdf";
import { describe, expect, test } from "vitest";
import type { UnderstoodFile } from "../understood.ts";
import { readCfDsg } from "./read-cf-dsg.ts";

async function read(cdl: string): Promise<UnderstoodFile> {
  const parsed = parseCdl(`netcdf made {\n${cdl}\n}`);
  if (!parsed.ok) throw new Error(parsed.problems[0].message);
  const file = await readCfDsg(parsed.value, { path: "made.nc", sha256: "0".repeat(64) });
  if (!file.ok) throw new Error(file.problems[0].message);
  return file.value;
}

const codes = ({ findings }: UnderstoodFile) => findings.map(({ code }) => code);

interface Single {
  /** Attributes and data of the variable v, "@" standing for its name. */
  readonly type?: string;
  readonly attributes: string;
  readonly data: string;
  readonly more?: string;
  readonly moreData?: string;
  readonly time?: string;
}

/** A single profile of four levels with one variable beside depth. */
const single = ({
  type = "float",
  attributes,
  data,
  more = "",
  moreData = "",
  time = "2024-05-14",
}: Single) => `
dimensions: z = 4 ;
variables:
  double time ; time:standard_name = "time" ; time:units = "days since ${time}" ;
  double lat ; lat:standard_name = "latitude" ; lat:units = "degrees_north" ;
  double lon ; lon:standard_name = "longitude" ; lon:units = "degrees_east" ;
  float depth(z) ; depth:standard_name = "depth" ; depth:units = "m" ; depth:positive = "down" ;
  ${type} v(z) ; ${attributes.replaceAll("@", "v")}
  ${more}
  :featureType = "profile" ;
data:
  time = 0.5 ; lat = 50 ; lon = 359 ; depth = 0, 1, 2, 3 ; v = ${data} ; ${moreData}`;

const column = async (given: Single, name: string) => {
  const file = await read(single(given));
  return { file, column: file.casts[0]?.columns.get(name) };
};

test("a single profile without an id takes the name of the file, longitudes go to -180 to 180", async () => {
  const file = await read(single({ attributes: "", data: "1, 2, 3, 4" }));
  expect(file.casts[0]).toMatchObject({
    id: "made",
    rows: 4,
    time: Date.UTC(2024, 4, 14, 12) / 1000,
    timeRole: "unknown",
    endTime: Number.NaN,
    start: { latitude: 50, longitude: -1, satellites: null },
    end: null,
    fixedDepth: null,
  });
  expect(file.casts[0]?.lines).toEqual(Uint32Array.of(1, 2, 3, 4));
});

describe("what means missing", () => {
  // CF Conventions 1.13, sections 2.5.1 and 8.1; default fill values of the netCDF library
  test.each([
    ["_FillValue", "float", "@:_FillValue = -1.f ;", "-1, 2, 3, 4", [Number.NaN, 2, 3, 4]],
    [
      "missing_value, several",
      "float",
      "@:missing_value = 2.f, 3.f ;",
      "1, 2, 3, 4",
      [1, Number.NaN, Number.NaN, 4],
    ],
    ["a double that is no float", "float", "@:missing_value = 0.1 ;", "0.1, 2, 3, 4", [Number.NaN, 2, 3, 4]],
    ["NaN", "float", "", "NaN, 2, 3, 4", [Number.NaN, 2, 3, 4]],
    ["never written", "float", "", "9.96921e+36, 2, 3, 4", [Number.NaN, 2, 3, 4]],
    ["never written, short", "short", "", "-32767, 2, 3, 4", [Number.NaN, 2, 3, 4]],
    ["a byte has no default", "byte", "", "-127, 2, 3, 4", [-127, 2, 3, 4]],
    ["a default that is not used", "float", "@:_FillValue = 5.f ;", "1, 2, 5, 4", [1, 2, Number.NaN, 4]],
  ])("%s", async (_, type, attributes, data, want) => {
    const { column: v, file } = await column({ type, attributes, data }, "v");
    expect([...(v?.values ?? [])]).toEqual(want);
    expect([...(v?.flags ?? [])]).toEqual(want.map((value) => (Number.isNaN(value) ? 9 : 2)));
    expect(codes(file)).toEqual([]);
  });

  test.each([
    ["valid_min and valid_max", "@:valid_min = 2.f ; @:valid_max = 3.f ;"],
    ["valid_range", "@:valid_range = 2.f, 3.f ;"],
  ])("outside %s, and it is said", async (_, attributes) => {
    const { column: v, file } = await column({ attributes, data: "1, 2, 3, 4" }, "v");
    expect([...(v?.values ?? [])]).toEqual([Number.NaN, 2, 3, Number.NaN]);
    expect(file.findings).toMatchObject([
      { code: "cf-dsg/outside-valid-range", where: { file: "made.nc", variable: "v", index: 0 } },
    ]);
    expect(file.findings[0]?.message).toContain("2 values");
  });

  test("packed values: missing and range are meant for what is stored", async () => {
    const attributes =
      "@:scale_factor = 0.5 ; @:add_offset = 10. ; @:_FillValue = -1s ; @:valid_max = 100s ;";
    const { column: v } = await column({ type: "short", attributes, data: "-1, 0, 100, 101" }, "v");
    expect([...(v?.values ?? [])]).toEqual([Number.NaN, 10, 60, Number.NaN]);
  });

  test("_Unsigned bytes", async () => {
    const { column: v } = await column(
      { type: "byte", attributes: '@:_Unsigned = "true" ;', data: "-1, 1, 2, 3" },
      "v",
    );
    expect(v?.values[0]).toBe(255);
  });
});

describe("quantities by standard name, in house units", () => {
  test.each([
    ["temperature", "sea_water_temperature", "K", "273.15, 283.15, 284, 285", 0],
    ["conductivity", "sea_water_electrical_conductivity", "S m-1", "3.5, 3.6, 3.7, 3.8", 35],
    ["conductivity", "sea_water_electrical_conductivity", "uS/cm", "35000, 36000, 1, 1", 35],
    ["pressure", "sea_water_pressure_due_to_sea_water", "Pa", "10000, 20000, 1, 1", 1],
    ["pressure", "sea_water_pressure", "decibar", "10.1, 11, 12, 13", 10.1],
    ["salinity", "sea_water_practical_salinity", "1", "30, 31, 32, 33", 30],
    ["density", "sea_water_density", "g cm-3", "1.02, 1.03, 1, 1", 1020],
  ])("%s from %s in %s", async (name, standard, units, data, first) => {
    const attributes = `@:standard_name = "${standard}" ; @:units = "${units}" ;`;
    const { column: v, file } = await column({ type: "double", attributes, data }, name);
    expect(v?.values[0]).toBeCloseTo(first, 9);
    expect(v?.source).toMatchObject({ header: "v", units });
    expect(v?.standardName).toBe(standard);
    expect(codes(file)).toEqual([]);
  });

  test("a salinity in psu is Practical Salinity if the data are younger than 1978, and only then", async () => {
    const attributes = '@:standard_name = "sea_water_salinity" ; @:units = "psu" ;';
    const young = await column({ attributes, data: "30, 31, 32, 33" }, "salinity");
    expect(young.column?.standardName).toBe("sea_water_practical_salinity");
    expect(young.file.casts[0]?.evidence.find(({ fact }) => fact === "column:v")?.certainty).toBe("assumed");
    const old = await column({ attributes, data: "30, 31, 32, 33", time: "1970-01-01" }, "salinity");
    expect(old.column).toBeUndefined();
    expect(old.file.casts[0]?.columns.get("v")).toMatchObject({
      standardName: "sea_water_salinity",
      units: null,
    });
  });

  test("a temperature that says IPTS-68 is brought to ITS-90", async () => {
    // Saunders (1990): t68 = 1.00024 t90
    const attributes =
      '@:standard_name = "sea_water_temperature" ; @:units = "degC" ; @:reference_scale = "IPTS-68" ;';
    const { column: v } = await column(
      { type: "double", attributes, data: "10.0024, 1, 2, 3" },
      "temperature",
    );
    expect(v?.values[0]).toBeCloseTo(10, 9);
    expect(v?.source?.first).toBe(10.0024);
  });

  test.each([
    ["no unit", '@:standard_name = "sea_water_temperature" ;', "cf-dsg/quantity"],
    [
      "a unit of another kind",
      '@:standard_name = "sea_water_temperature" ; @:units = "m" ;',
      "cf-dsg/quantity",
    ],
    [
      "a spelling that UDUNITS does not know",
      '@:standard_name = "sea_water_temperature" ; @:units = "deg C" ;',
      "cf-dsg/quantity",
    ],
    [
      "a standard name in wrong case",
      '@:standard_name = "Sea_Water_Temperature" ; @:units = "degC" ;',
      "cf-dsg/quantity",
    ],
  ])("%s: kept as it is, and said", async (_, attributes, code) => {
    const { file } = await column({ attributes, data: "1, 2, 3, 4" }, "v");
    expect(codes(file)).toEqual([code]);
    expect(file.casts[0]?.columns.has("temperature")).toBe(false);
    expect([...(file.casts[0]?.columns.get("v")?.values ?? [])]).toEqual([1, 2, 3, 4]);
  });

  test("a name alone makes no quantity", async () => {
    const cdl = single({ attributes: '@:units = "degC" ;', data: "1, 2, 3, 4" }).replaceAll(
      /\bv\b/g,
      "temperature",
    );
    const { casts } = await read(cdl);
    expect([...(casts[0]?.columns.keys() ?? [])]).toEqual(["depth", "other_temperature"]);
    expect(casts[0]?.evidence).toContainEqual({
      fact: "column:temperature",
      certainty: "unknown",
      because: "variable temperature: there is no standard_name, units says degC",
      where: { file: "made.nc", variable: "temperature" },
    });
  });

  test("two sensors: one is taken, and it is said which", async () => {
    const sensor = 'standard_name = "sea_water_temperature"';
    const file = await read(
      single({
        attributes: `@:${sensor} ; @:units = "degC" ;`,
        data: "1, 2, 3, 4",
        more: `float second(z) ; second:${sensor} ; second:units = "degC" ;`,
        moreData: "second = 5, 6, 7, 8 ;",
      }),
    );
    expect(codes(file)).toEqual(["cf-dsg/several"]);
    expect(file.casts[0]?.columns.get("temperature")?.source?.header).toBe("v");
    expect(file.casts[0]?.columns.get("second")?.values[0]).toBe(5);
  });

  test("depth that counts upwards is no depth", async () => {
    const file = await read(single({ attributes: "", data: "1, 2, 3, 4" }).replace('"down"', '"up"'));
    expect(codes(file)).toEqual(["cf-dsg/no-vertical", "cf-dsg/quantity"]);
    expect(file.casts[0]?.columns.has("depth")).toBe(false);
  });
});

describe("the source's own flags", () => {
  const flagged = (type: string, values: string, meanings: string, data: string) =>
    column(
      {
        attributes:
          '@:standard_name = "sea_water_temperature" ; @:units = "degC" ; @:ancillary_variables = "f" ;',
        data: "1, 2, 3, NaN",
        more: `${type} f(z) ; f:flag_values = ${values} ; f:flag_meanings = "${meanings}" ;`,
        moreData: `f = ${data} ;`,
      },
      "temperature",
    );

  test.each([
    [
      "IODE primary level",
      "1b, 2b, 3b, 4b, 9b",
      "good not_evaluated questionable bad missing",
      "1, 2, 3, 9",
      [Flag.good, Flag.notEvaluated, Flag.questionable, Flag.missing],
    ],
    [
      "WOCE CTD", // WHP-Exchange Format 1.2.1: 2 is acceptable
      "1b, 2b, 3b, 4b, 5b, 6b, 7b, 9b",
      "not_calibrated acceptable questionable bad not_reported interpolated despiked not_sampled",
      "2, 3, 1, 9",
      [Flag.good, Flag.questionable, Flag.notEvaluated, Flag.missing],
    ],
    [
      "Argo and OceanSITES reference table 2",
      "0b, 1b, 2b, 3b, 4b, 9b",
      "no_qc_performed good_data probably_good_data bad_data_that_are_potentially_correctable bad_data missing_value",
      "1, 2, 4, 9",
      [Flag.good, Flag.notEvaluated, Flag.bad, Flag.missing],
    ],
    [
      "unknown",
      "1b, 2b, 3b, 4b, 9b",
      "red green blue white black",
      "1, 2, 3, 9",
      [Flag.notEvaluated, Flag.notEvaluated, Flag.notEvaluated, Flag.missing],
    ],
  ])("%s", async (scheme, values, meanings, data, want) => {
    const { column: v } = await flagged("byte", values, meanings, data);
    expect(v?.sourceFlags).toEqual({ scheme, header: "f", values: data.split(", ") });
    expect([...(v?.flags ?? [])]).toEqual(want);
  });

  test("letters", async () => {
    const { column: v } = await flagged("char", '"1349"', "good questionable bad missing", '"1349"');
    expect(v?.sourceFlags?.values).toEqual(["1", "3", "4", "9"]);
  });

  test("a flag variable that no variable names is kept as text", async () => {
    const file = await read(
      single({
        attributes: "",
        data: "1, 2, 3, 4",
        more: 'byte f(z) ; f:flag_values = 0b, 1b ; f:flag_meanings = "off on" ;',
        moreData: "f = 0, 1, 1, 0 ;",
      }),
    );
    expect(file.casts[0]?.texts.get("f")).toEqual(["0", "1", "1", "0"]);
  });
});

describe("times", () => {
  test.each([
    ["a calendar that is not computed", 'time:calendar = "noleap" ;'],
    ["units that are none", 'time:units = "fortnightly" ;'],
  ])("%s: not known, and said", async (_, attribute) => {
    const cdl = single({ attributes: "", data: "1, 2, 3, 4" });
    const changed = attribute.startsWith("time:units")
      ? cdl.replace(/time:units = "[^"]*" ;/, attribute)
      : cdl.replace("double lat ;", `${attribute}\n  double lat ;`);
    const file = await read(changed);
    expect(codes(file)).toEqual(["cf-dsg/time"]);
    expect(file.casts[0]?.time).toBeNaN();
  });

  test("rows with times of their own", async () => {
    const file = await read(
      single({
        attributes: '@:standard_name = "time" ; @:units = "seconds since 2024-05-14 00:00:00 Z" ;',
        type: "double",
        data: "100, 101, 102, 104",
      })
        .replace(/double time ;.*\n/, "")
        .replace("time = 0.5 ;", ""),
    );
    const [cast] = file.casts;
    expect(cast?.elapsed).toEqual(Float64Array.of(0, 1, 2, 4));
    expect(cast).toMatchObject({ timeRole: "start", time: Date.UTC(2024, 4, 14) / 1000 + 100 });
    expect(cast?.endTime).toBe(Date.UTC(2024, 4, 14) / 1000 + 104);
    expect(cast?.columns.has("v")).toBe(false);
  });
});

test("a position that is no place on Earth is left out, and said", async () => {
  const file = await read(single({ attributes: "", data: "1, 2, 3, 4" }).replace("lat = 50", "lat = 95"));
  expect(codes(file)).toEqual(["cf-dsg/position"]);
  expect(file.casts[0]?.start).toBeNull();
});

/** Three casts on obs = 6. */
const ragged = (layout: string, data: string) => `
dimensions: profile = 3 ; obs = 6 ;
variables:
  int profile(profile) ; profile:cf_role = "profile_id" ;
  ${layout}
  float depth(obs) ; depth:standard_name = "depth" ; depth:units = "m" ;
  :featureType = "Profile" ;
data: profile = 7, 8, 7 ; depth = 0, 1, 2, 3, 4, 5 ; ${data}`;

describe("counts and indices that do not fit", () => {
  const counted = 'int n(profile) ; n:sample_dimension = "obs" ;';
  const indexed = 'int at(obs) ; at:instance_dimension = "profile" ;';

  test("ids that are not unique are numbered", async () => {
    const { casts } = await read(ragged(counted, "n = 1, 2, 3 ;"));
    expect(casts.map(({ id, rows }) => [id, rows])).toEqual([
      ["7", 1],
      ["8", 2],
      ["7-2", 3],
    ]);
    expect(casts[2]?.lines).toEqual(Uint32Array.of(4, 5, 6));
  });

  test.each([
    ["more rows than there are", "n = 1, 2, 2147483647 ;"],
    ["a negative count", "n = 1, -2, 3 ;"],
  ])("%s: no casts", async (_, data) => {
    const file = await read(ragged(counted, data));
    expect(file.casts).toEqual([]);
    expect(file.findings).toMatchObject([{ code: "cf-dsg/no-casts", where: { variable: "n" } }]);
  });

  test("rows that belong to no cast are said", async () => {
    const file = await read(ragged(counted, "n = 1, 2, 0 ;"));
    expect(codes(file)).toEqual(["cf-dsg/rows-left", "cf-dsg/no-rows"]);
    expect(file.casts.map(({ rows }) => rows)).toEqual([1, 2, 0]);
  });

  test("an index that points to no cast", async () => {
    const file = await read(ragged(indexed, "at = 0, 1, 0, 9, -1, 2 ;"));
    expect(file.findings).toMatchObject([{ code: "cf-dsg/index", where: { variable: "at", index: 3 } }]);
    expect([...(file.casts[0]?.columns.get("depth")?.values ?? [])]).toEqual([0, 2]);
    expect(file.casts.map(({ lines }) => [...lines])).toEqual([[1, 3], [2], [6]]);
  });

  test("a file that claims more numbers than are read at once is not read", async () => {
    const claimed = memoryDataset({
      dimensions: [
        { name: "profile", length: 20_000 },
        { name: "z", length: 20_000 },
      ],
      attributes: [{ name: "featureType", type: "char", value: "profile" }],
      variables: [],
    });
    const huge = {
      ...claimed,
      variables: new Map([
        ["lat", variable("lat", ["profile"], [20_000], "latitude")],
        ["depth", variable("depth", ["profile", "z"], [20_000, 20_000], "depth")],
      ]),
      read: () => Promise.reject(new Error("must not be read")),
    };
    const file = await readCfDsg(huge, { path: "huge.nc", sha256: "0".repeat(64) });
    expect(file.ok && codes(file.value)).toEqual(["cf-dsg/no-casts"]);
    expect(file.ok && file.value.findings[0]?.message).toContain("400020000 numbers");
  });
});

const variable = (name: string, dimensions: string[], shape: number[], standardName: string) => ({
  name,
  type: "float" as const,
  dimensions,
  shape,
  attributes: new Map([
    ["standard_name", { name: "standard_name", type: "char" as const, value: standardName }],
  ]),
});

describe("files that hold no casts", () => {
  test.each([
    ["an empty dataset", "", "netCDF", "no featureType, no cf_role"],
    ["points", ':featureType = "point" ;', "CF netCDF, point", "are no casts"],
    ["a word that CF does not know", ':featureType = "swath" ;', "netCDF", "which CF does not know"],
    ["COARDS", ':Conventions = "COARDS" ;', "COARDS netCDF", "COARDS"],
    [
      "a profile without rows",
      ':featureType = "profile" ;',
      "CF netCDF, profile",
      "no variable has a dimension",
    ],
  ])("%s", async (_, attribute, format, because) => {
    const file = await read(attribute);
    expect(file.format).toBe(format);
    expect(file.casts).toEqual([]);
    expect(codes(file)).toEqual(["cf-dsg/no-casts"]);
    expect(file.findings[0]?.message).toContain(because);
    expect(file.findings[0]?.message).toContain("0 variables, no dimensions");
  });

  test("WOCE", async () => {
    const file = await read('dimensions: p = 2 ; variables: short q(p) ; q:units = "woce_flags" ;');
    expect(file.format).toBe("WOCE netCDF");
  });

  test("an old name of a feature type is understood, and a missing one follows from the roles", async () => {
    const old = await read(
      single({ attributes: "", data: "1, 2, 3, 4" }).replace('"profile"', '"stationProfile"'),
    );
    expect(old.format).toContain("timeSeriesProfile");
    const without = await read(
      ragged('int n(profile) ; n:sample_dimension = "obs" ;', "n = 1, 2, 3 ;").replace(
        ':featureType = "Profile" ;',
        "",
      ),
    );
    expect(codes(without)).toEqual(["cf-dsg/feature-type"]);
    expect(without.casts).toHaveLength(3);
  });
});
