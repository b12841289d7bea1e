import { readFileSync } from "node:fs";
import {
  type MemoryVariable,
  memoryDataset,
  numberAttribute,
  openDataset,
  textAttribute,
} from "@wherry/netcdf";
import { testWithShared } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { noAnswers, SHA256 } from "../../test/asking-nobody.ts";
import { mutationsOf } from "../../test/damage.ts";
import { readArgoProfile, recogniseArgoProfile } from "./read-argo-profile.ts";

// The arrangement is that of the Argo user's manual (doi 10.13155/29825); the floats and their values are invented.
const FILL = 99999;

const chars = (texts: readonly string[], length: number) =>
  Uint8Array.from(texts.flatMap((text) => [...text.padEnd(length)]).map((sign) => sign.charCodeAt(0)));

interface Changes {
  readonly modes?: string;
  readonly directions?: string;
  readonly temperature?: readonly number[];
  readonly adjusted?: readonly number[];
  readonly flags?: string;
  readonly latitude?: number;
  readonly juld?: number;
  readonly parameters?: readonly string[];
  readonly without?: readonly string[];
  readonly more?: readonly MemoryVariable[];
}

/** Two profiles of three levels: the second has two. */
function floatFile(changes: Changes = {}) {
  const temperature = changes.temperature ?? [14.25, 13.5, 9.125, 14.75, 14.5, FILL];
  const adjusted = changes.adjusted ?? temperature.map((value) => (value === FILL ? value : value + 0.125));
  const pressure = [5, 10, 20, 0.5, 1, FILL];
  const per = (name: string, text: string): MemoryVariable => ({
    name,
    type: "char",
    dimensions: ["N_PROF"],
    data: chars([...text], 1),
  });
  const level = (
    name: string,
    data: readonly number[],
    attributes: readonly (readonly [string, string])[],
  ): MemoryVariable => ({
    name,
    type: "float",
    dimensions: ["N_PROF", "N_LEVELS"],
    attributes: [
      ...attributes.map(([key, value]) => textAttribute(key, value)),
      numberAttribute("_FillValue", "float", FILL),
      numberAttribute("valid_min", "float", 0.75),
    ],
    data: Float32Array.from(data),
  });
  const flags = (name: string, text: string): MemoryVariable => ({
    name,
    type: "char",
    dimensions: ["N_PROF", "N_LEVELS"],
    attributes: [textAttribute("conventions", "Argo reference table 2")],
    data: chars([...text], 1),
  });
  const number = (name: string, value: number, units: string): MemoryVariable => ({
    name,
    type: "double",
    dimensions: ["N_PROF"],
    attributes: [
      textAttribute("units", units),
      numberAttribute("_FillValue", "double", name === "JULD" ? 999999 : FILL),
    ],
    data: Float64Array.from([value, value]),
  });
  const pres = [
    ["long_name", "Sea water pressure, equals 0 at sea-level"],
    ["standard_name", "sea_water_pressure"],
    ["units", "decibar"],
  ] as const;
  const temp = [
    ["long_name", "Sea temperature in-situ ITS-90 scale"],
    ["standard_name", "sea_water_temperature"],
    ["units", "degree_Celsius"],
  ] as const;
  const variables: MemoryVariable[] = [
    {
      name: "PLATFORM_NUMBER",
      type: "char",
      dimensions: ["N_PROF", "STRING8"],
      data: chars(["9999001", "9999001"], 8),
    },
    { name: "CYCLE_NUMBER", type: "int", dimensions: ["N_PROF"], data: Int32Array.from([7, 7]) },
    {
      name: "STATION_PARAMETERS",
      type: "char",
      dimensions: ["N_PROF", "N_PARAM", "STRING16"],
      data: chars(changes.parameters ?? ["PRES", "TEMP", "PRES", "TEMP"], 16),
    },
    per("DATA_MODE", changes.modes ?? "RR"),
    per("DIRECTION", changes.directions ?? "AA"),
    per("JULD_QC", "11"),
    per("POSITION_QC", "12"),
    // 2023-06-14T07:12 is day 26827.3 since 1950
    number("JULD", changes.juld ?? 26827.3, "days since 1950-01-01 00:00:00 UTC"),
    number("LATITUDE", changes.latitude ?? 51.25, "degree_north"),
    number("LONGITUDE", -4.5, "degree_east"),
    level("PRES", pressure, pres),
    flags("PRES_QC", "11111 "),
    level("PRES_ADJUSTED", pressure, pres),
    flags("PRES_ADJUSTED_QC", "11111 "),
    level("TEMP", temperature, temp),
    flags("TEMP_QC", changes.flags ?? "11311 "),
    level("TEMP_ADJUSTED", adjusted, temp),
    flags("TEMP_ADJUSTED_QC", changes.flags ?? "11211 "),
    level("TEMP_ADJUSTED_ERROR", [0.002, 0.002, 0.002, FILL, FILL, FILL], [["units", "degree_Celsius"]]),
    ...(changes.more ?? []),
  ];
  return memoryDataset({
    dimensions: [
      { name: "N_PROF", length: 2 },
      { name: "N_LEVELS", length: 3 },
      { name: "N_PARAM", length: 2 },
      { name: "STRING8", length: 8 },
      { name: "STRING16", length: 16 },
    ],
    attributes: [textAttribute("Conventions", "Argo-3.1 CF-1.6")],
    variables: variables.filter(({ name }) => !changes.without?.includes(name)),
  });
}

async function read(changes: Changes = {}, path = "R9999001_007.nc") {
  const result = await readArgoProfile(floatFile(changes), { path, sha256: SHA256 });
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}
const values = (
  cast: { columns: ReadonlyMap<string, { values: Float64Array }> } | undefined,
  name: string,
) => [...(cast?.columns.get(name)?.values ?? [])];

test("each profile is a cast, without the padding of arrays", async () => {
  const file = await read();
  expect(file.findings).toEqual([]);
  expect(file.casts.map(({ id, rows }) => [id, rows])).toEqual([
    ["9999001_007", 3],
    ["9999001_007-2", 2],
  ]);
  const [primary, further] = file.casts;
  expect(values(primary, "pressure")).toEqual([5, 10, 20]);
  // below the stated valid_min, and kept: the flag is there to judge it
  expect(values(further, "pressure")).toEqual([0.5, 1]);
  expect(primary?.columns.get("pressure")?.standardName).toBe("sea_water_pressure_due_to_sea_water");
  expect(primary?.time).toBeCloseTo(Date.UTC(2023, 5, 14, 7, 12) / 1000, 3);
  expect(primary?.timeRole).toBe("unknown");
  expect(primary?.start).toMatchObject({ latitude: 51.25, longitude: -4.5, quality: "POSITION_QC 1 (Argo)" });
  expect(primary?.columns.get("temperature")?.sourceFlags).toEqual({
    scheme: "Argo",
    header: "TEMP_QC",
    values: ["1", "1", "3"],
  });
});

describe("DATA_MODE chooses the values, and says so", () => {
  test.each([
    ["R", "TEMP", [14.25, 13.5, 9.125], ["1", "1", "3"]],
    ["A", "TEMP_ADJUSTED", [14.375, 13.625, 9.25], ["1", "1", "2"]],
    ["D", "TEMP_ADJUSTED", [14.375, 13.625, 9.25], ["1", "1", "2"]],
  ])("%s", async (mode, header, want, flags) => {
    const [cast] = (await read({ modes: `${mode}R` })).casts;
    expect(values(cast, "temperature")).toEqual(want);
    const column = cast?.columns.get("temperature");
    expect([column?.source?.header, column?.sourceFlags?.values]).toEqual([header, flags]);
    const because = cast?.evidence
      .filter(({ fact }) => fact === `column:${header}`)
      .map((each) => each.because);
    expect(because?.join()).toContain(`DATA_MODE is ${mode}`);
    expect(cast?.columns.has("temperature_source_uncertainty")).toBe(mode !== "R");
  });

  test("a parameter may have a mode of its own", async () => {
    const more: MemoryVariable = {
      name: "PARAMETER_DATA_MODE",
      type: "char",
      dimensions: ["N_PROF", "N_PARAM"],
      data: chars([..."DRRR"], 1),
    };
    const [cast] = (await read({ modes: "DR", more: [more] })).casts;
    expect(cast?.columns.get("pressure")?.source?.header).toBe("PRES_ADJUSTED");
    expect(cast?.columns.get("temperature")?.source?.header).toBe("TEMP");
  });

  test("a parameter without adjusted values keeps those received, and that is said", async () => {
    const [cast] = (await read({ modes: "DD", without: ["TEMP_ADJUSTED"] })).casts;
    expect(values(cast, "temperature")).toEqual([14.25, 13.5, 9.125]);
    expect(cast?.evidence.find(({ because }) => because.includes("no adjusted values"))).toBeDefined();
  });

  test("rejected values are missing, and that is told", async () => {
    const file = await read({ modes: "DD", adjusted: Array(6).fill(FILL), flags: "44444 " });
    expect(values(file.casts[0], "temperature")).toEqual([Number.NaN, Number.NaN, Number.NaN]);
    expect(file.findings.map(({ code }) => code)).toEqual(Array(2).fill("argo-profile/all-rejected"));
  });
});

describe("what is missing or contradictory is told", () => {
  test("fill values of time and position", async () => {
    const [cast] = (await read({ juld: 999999, latitude: FILL })).casts;
    expect([cast?.time, cast?.start]).toEqual([Number.NaN, null]);
  });

  test("which are asked where there is somebody to ask", async () => {
    const context = { path: "R9999001_007.nc", sha256: SHA256 };
    const dataset = floatFile({ juld: 999999, latitude: FILL });
    const nobody = noAnswers();
    await readArgoProfile(dataset, { ...context, asking: nobody });
    const both = ["9999001_007", "9999001_007-2"];
    expect(nobody.asked.map(({ topic, holds }) => [topic, ...holds])).toEqual(
      both.flatMap((id) => [
        ["time", id],
        ["position", id],
      ]),
    );
    const asking = noAnswers({ time: "2023-06-14T07:12:00Z", position: "51.25, -4.5" });
    const answered = await readArgoProfile(dataset, { ...context, asking });
    expect(answered.ok && answered.value.casts[0]).toMatchObject({
      time: Date.UTC(2023, 5, 14, 7, 12) / 1000,
      timeRole: "start",
      start: { latitude: 51.25, longitude: -4.5 },
    });
    expect(asking.asked).toEqual([]);
    const role = noAnswers();
    await readArgoProfile(floatFile(), { ...context, asking: role });
    expect(role.asked).toMatchObject([{ topic: "timeRole", holds: both }]);
  });

  test.each([
    ["R9999001_007D.nc", "DD", "down", []],
    ["R9999001_007.nc", "AA", "up-reversed", []],
    ["R9999001_007D.nc", "AA", "unknown", ["argo-profile/direction", "argo-profile/direction"]],
    ["R9999001_007D.nc", "  ", "down", []],
    ["float.nc", "  ", "unknown", []],
  ])("direction of %s with DIRECTION %s", async (path, directions, want, codes) => {
    const file = await read({ directions }, path);
    expect(file.casts[0]?.state.direction).toBe(want);
    expect(file.findings.map(({ code }) => code)).toEqual(codes);
  });

  test("flag 9 on a value, and a good flag on none", async () => {
    const file = await read({ flags: "91111 " });
    expect(file.findings).toMatchObject([
      { code: "argo-profile/flag-and-value", where: { variable: "TEMP", index: 0 } },
    ]);
    expect(file.casts[0]?.columns.get("temperature")?.flags[0]).toBe(2);
    const missing = await read({ temperature: [14.25, FILL, 9.125, 1, 1, FILL] });
    expect(missing.findings).toMatchObject([{ code: "argo-profile/flag-and-value", where: { index: 1 } }]);
  });

  test("a flag that is no digit", async () =>
    expect((await read({ flags: "1x1111" })).findings.map(({ code }) => code)).toContain(
      "argo-profile/flag",
    ));

  test("a parameter that has no array", async () => {
    const file = await read({ parameters: ["PRES", "DOXY", "PRES", ""] });
    expect(file.findings).toMatchObject([{ code: "argo-profile/parameter", where: { index: 0 } }]);
    expect([...file.casts[0]!.columns.keys()]).toEqual(["pressure"]);
  });

  test("nothing measured: no casts, in words", async () =>
    expect((await read({ parameters: ["", "", "", ""] })).findings.map(({ code }) => code)).toEqual([
      "cf-dsg/no-casts",
    ]));
});

test("is recognised by its dimensions and conventions", () => {
  expect(recogniseArgoProfile(floatFile())?.because).toContain("N_PROF");
  expect(recogniseArgoProfile(memoryDataset({}))).toBeNull();
});

interface RawVariable {
  readonly first?: number;
  readonly min?: number;
}

// Raw values as the reference netCDF library reads them (real/inventory.json).
testWithShared(["samples", "real"], "real files hold the values of the inventory", async (folder) => {
  const { files } = JSON.parse(readFileSync(`${folder}/inventory.json`, "utf8")) as {
    files: Record<string, { variables: Record<string, RawVariable>; dimensions: Record<string, [number]> }>;
  };
  const adjusted = { D1900857_029: true, D5900865_011: true, R13857_004: false, R6903247_203: false };
  for (const [stem, isAdjusted] of Object.entries(adjusted)) {
    const name = `argo/${stem}.nc`;
    const { variables, dimensions } = files[name]!;
    const opened = await openDataset(readFileSync(`${folder}/${name}`));
    if (!opened.ok) throw new Error(name);
    expect(recogniseArgoProfile(opened.value), name).not.toBeNull();
    const result = await readArgoProfile(opened.value, { path: name, sha256: SHA256 });
    const file = result.ok ? result.value : null;
    // the salinity of its unpumped near-surface profile was rejected in delayed mode
    expect(
      file?.findings.map(({ code, where }) => [code, where.variable, where.index]),
      name,
    ).toEqual(stem === "D1900857_029" ? [["argo-profile/all-rejected", "PSAL_ADJUSTED", 1]] : []);
    expect(file?.casts, name).toHaveLength(dimensions.N_PROF![0]);
    const [primary] = file!.casts;
    const juld = variables.JULD!.first!;
    expect(primary?.time).toBeCloseTo(Date.UTC(1950, 0, 1) / 1000 + juld * 86400, 2);
    expect(primary?.start).toMatchObject({
      latitude: variables.LATITUDE!.first,
      longitude: variables.LONGITUDE!.first,
    });
    for (const [parameter, column] of [
      ["PRES", "pressure"],
      ["TEMP", "temperature"],
      ["PSAL", "salinity"],
    ] as const) {
      const raw = variables[isAdjusted ? `${parameter}_ADJUSTED` : parameter];
      if (!raw) {
        expect(primary?.columns.has(column)).toBe(false);
        continue;
      }
      expect(values(primary, column)[0], `${name} ${parameter}`).toBe(raw.first);
      const all = file!.casts.flatMap((cast) => values(cast, column)).filter((value) => !Number.isNaN(value));
      expect(Math.min(...all), `${name} ${parameter}`).toBe(raw.min);
      expect(Math.max(...all), `${name} ${parameter}`).toBeLessThan(12000);
    }
  }
});

testWithShared(
  ["samples", "real", "argo", "R13857_004.nc"],
  "300 damaged copies never throw",
  async (path) => {
    let casts = 0;
    for (const { bytes } of mutationsOf(readFileSync(path), 300)) {
      const opened = await openDataset(bytes);
      if (!opened.ok || !recogniseArgoProfile(opened.value)) continue;
      const result = await readArgoProfile(opened.value, { path: "R13857_004.nc", sha256: SHA256 });
      if (!result.ok) continue;
      for (const cast of result.value.casts) {
        casts++;
        for (const { values: column, flags } of cast.columns.values())
          expect([column.length, flags.length]).toEqual([cast.rows, cast.rows]);
      }
    }
    expect(casts).toBeGreaterThan(50);
  },
);
