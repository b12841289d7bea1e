import type { Place } from "@wherry/core";
import { type DataArray, type Dataset, openDataset, parseCdl, writeClassic } from "@wherry/netcdf";
import { describe, expect, test } from "vitest";
import type { Edition } from "../engine/edition.ts";
import { allRules } from "../engine/registry.ts";
import { mendDataset } from "./mend-dataset.ts";
import { MENDERS } from "./menders.ts";

const NOW = Date.UTC(2030, 0, 1) / 1000;
// asked for by name, ACDD is held against files that do not claim it
const context = { path: "example.nc", now: NOW, ruleSets: ["cf", "acdd", "flags", "physics"] };

function cdl(text: string): Dataset {
  const parsed = parseCdl(/^\s*netcdf\b/.test(text) ? text : `netcdf example { ${text} }`);
  if (!parsed.ok) throw new Error(parsed.problems[0].message);
  return parsed.value;
}

async function bytesOf(dataset: Dataset): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  const written = await writeClassic(dataset, { version: 1 }, (chunk) => void chunks.push(chunk.slice()));
  if (!written.ok) throw new Error(written.problems[0].message);
  return Uint8Array.from(chunks.flatMap((chunk) => [...chunk]));
}

async function valuesOf(dataset: Dataset): Promise<Record<string, DataArray>> {
  const values: Record<string, DataArray> = {};
  for (const name of dataset.variables.keys()) {
    const read = await dataset.read(name);
    if (!read.ok) throw new Error(read.problems[0].message);
    values[name] = read.value;
  }
  return values;
}

test("every rule that has a mend is a rule", () => {
  const ids = new Set(allRules.map(({ id }) => id));
  expect([...MENDERS.keys()].filter((id) => !ids.has(id))).toEqual([]);
});

const NAMED = (
  more: string,
) => `:Conventions = "CF-1.13, ACDD-1.3" ; :featureType = "point" ; dimensions: n = 2 ; variables:
  double time(n) ; time:standard_name = "time" ; time:units = "hours since 2029-05-04" ; time:calendar = "standard" ;
  double y(n) ; y:standard_name = "latitude" ; y:units = "degrees_north" ;
  double x(n) ; x:standard_name = "longitude" ; x:units = "degrees_east" ;
  float z(n) ; z:standard_name = "depth" ; z:units = "m" ; z:positive = "down" ; z:axis = "Z" ;
  float t(n) ; t:coordinates = "time y x z" ; t:standard_name = "sea_water_temperature" ; t:units = "degC" ; ${more}
  data: time = 3.5, 5 ; y = 50.5, 50.25 ; x = -4.5, -4.25 ; z = 1.5, 20 ; t = 9, 10 ;`;

/** Damage that no failing example of a rule has in a form that can be mended. */
const DAMAGED: readonly [rule: string, where: Place, text: string][] = [
  ["acdd/conventions", { attribute: "Conventions" }, ':Conventions = "CF-1.13, ACDD 1.3" ;'],
  ...[
    "geospatial_lat_min",
    "geospatial_lat_max",
    "geospatial_lat_units",
    "geospatial_lon_min",
    "geospatial_lon_max",
    "geospatial_lon_units",
    "geospatial_vertical_min",
    "geospatial_vertical_max",
    "time_coverage_start",
    "time_coverage_end",
    "time_coverage_duration",
  ].map((attribute): [string, Place, string] => [
    `acdd/${attribute.replaceAll("_", "-")}`,
    { attribute },
    NAMED(""),
  ]),
  ["acdd/content-type", { variable: "z", attribute: "coverage_content_type" }, NAMED("")],
  ["acdd/long-name", { variable: "t", attribute: "long_name" }, NAMED("")],
  ["acdd/longitude-limits", { attribute: "geospatial_lon_min" }, NAMED(":geospatial_lon_min = 4.5 ;")],
  [
    "cf/ancillary-exist",
    { variable: "t", attribute: "ancillary_variables" },
    NAMED('t:ancillary_variables = "T_QC" ; byte t_qc(n) ;'),
  ],
  [
    "cf/calendar-known",
    { variable: "time", attribute: "calendar" },
    NAMED("").replace('"standard"', '"360 day"'),
  ],
  [
    "cf/cf-role",
    { variable: "id", attribute: "cf_role" },
    NAMED('int id(n) ; id:cf_role = "Profile ID" ;').replace('"point"', '"profile"'),
  ],
  [
    "cf/coordinate-fill",
    { variable: "z", attribute: "_FillValue" },
    'dimensions: z = 3 ; variables: float z(z) ; z:units = "dbar" ; z:_FillValue = -9.f ; data: z = 1, 2, 3 ;',
  ],
  [
    "cf/coordinates-exist",
    { variable: "t", attribute: "coordinates" },
    NAMED("").replace('"time y x z"', '"time, y, x, z"'),
  ],
  ["cf/feature-type", { attribute: "featureType" }, ':featureType = "time series" ;'],
  [
    "cf/modifier-deprecated",
    { variable: "q", attribute: "standard_name" },
    NAMED(
      't:ancillary_variables = "q" ; byte q(n) ; q:standard_name = "sea_water_temperature status_flag" ;',
    ),
  ],
  ["cf/positive-value", { variable: "z", attribute: "positive" }, NAMED("").replace('"down"', '"down."')],
  ["cf/temperature-metadata", { variable: "t", attribute: "units_metadata" }, NAMED("")],
];

interface Damaged {
  readonly name: string;
  readonly rule: string;
  readonly where: Place;
  readonly cdl: string;
  readonly edition?: Edition;
}

/** Failing examples of the rules that have a mend, and the damage above: each is a small damaged file. */
const examples: readonly Damaged[] = [
  ...allRules.flatMap((rule) =>
    MENDERS.has(rule.id)
      ? rule.failing.map((example, index) => ({ ...example, rule: rule.id, name: `${rule.id} ${index}` }))
      : [],
  ),
  ...DAMAGED.map(([rule, where, text]) => ({
    name: `${rule} at ${where.variable ?? "the file"}:${where.attribute}`,
    rule,
    where,
    cdl: text,
  })),
];

describe.each(examples)("$name", ({ cdl: text, edition, rule, where }) => {
  const judged = { ...context, ...(edition === undefined ? {} : { edition }) };

  test("what is mended is clean of the rule, all else is the same, and a second time nothing changes", async () => {
    const before = cdl(text);
    const { dataset, mended, verdict } = await mendDataset(before, judged, "wherry 0");
    const there = (each: { variable: string | null; attribute: string }) =>
      each.variable === (where.variable ?? null) && each.attribute === where.attribute;
    if (mended.some((each) => each.rule === rule && there(each)))
      expect(
        verdict.findings.filter(
          (finding) => finding.rule === rule && finding.where.variable === where.variable,
        ),
      ).toEqual([]);
    expect(await valuesOf(dataset)).toEqual(await valuesOf(before));
    expect([...dataset.dimensions]).toEqual([...before.dimensions]);
    for (const [name, variable] of before.variables) {
      const after = dataset.variables.get(name)!;
      expect([after.type, after.dimensions, after.shape]).toEqual([
        variable.type,
        variable.dimensions,
        variable.shape,
      ]);
      const changed = new Set(mended.filter((each) => each.variable === name).map((each) => each.attribute));
      for (const [attribute, value] of variable.attributes)
        if (!changed.has(attribute)) expect(after.attributes.get(attribute)).toEqual(value);
    }
    const again = await mendDataset(dataset, { ...judged, now: NOW + 1e6 }, "wherry 1");
    expect(again.mended).toEqual([]);
    expect(again.dataset).toBe(dataset);
  });
});

test("every mend was seen at work", async () => {
  const mendedRules = new Set<string>();
  for (const { cdl: text, edition, rule } of examples) {
    const { mended } = await mendDataset(
      cdl(text),
      { ...context, ...(edition === undefined ? {} : { edition }) },
      "wherry 0",
    );
    if (mended.some((each) => each.rule === rule)) mendedRules.add(rule);
  }
  expect([...MENDERS.keys()].filter((id) => !mendedRules.has(id))).toEqual([]);
});

const mendedText = async (text: string, variable: string | null, attribute: string): Promise<unknown> => {
  const { dataset } = await mendDataset(cdl(text), context, "wherry 0");
  const of = variable === null ? dataset.attributes : dataset.variables.get(variable)?.attributes;
  return of?.get(attribute)?.value;
};

const T = 'variables: float t ; t:standard_name = "sea_water_temperature" ;';
const V = (name: string) => `variables: float t ; t:standard_name = "${name}" ;`;
const TIME = (units: string) =>
  `variables: double t ; t:standard_name = "time" ; t:units = "${units}" ; t:calendar = "standard" ;`;

describe("what has one meaning is mended, what has several is left", () => {
  test.each([
    [`${T} t:units = "deg C" ;`, "units", "degC"],
    [`${T} t:units = "C (ITS-90)" ;`, "units", "C (ITS-90)"],
    [`${V("sea_water_practical_salinity")} t:units = "PSU" ;`, "units", "1"],
    [`${V("sea_water_practical_salinity")} t:units = "ppt" ;`, "units", "ppt"],
    [`${V("sea_water_turbidity")} t:units = "NTU" ;`, "units", "NTU"],
    [`${V("sea_water_electrical_conductivity")} t:units = "mmho/cm" ;`, "units", "mS cm-1"],
    [`${V("sea_water_electrical_conductivity")} t:units = "deg C" ;`, "units", "deg C"],
    [`${V("speed_of_sound_in_sea_water")} t:units = "m s -1" ;`, "units", "m s-1"],
    [`${V("latitude")} t:units = "degrees" ;`, "units", "degrees_north"],
    [`${V("longitude")} t:units = "degrees west" ;`, "units", "degrees west"],
    [`${V("Sea Water Temperature")} t:units = "degC" ;`, "standard_name", "sea_water_temperature"],
    [`${V("sea_water_temprature")} t:units = "degC" ;`, "standard_name", "sea_water_temprature"],
    [TIME("days since 2001-2-3T4:05:06Z"), "units", "days since 2001-02-03 04:05:06 Z"],
    [TIME("days since 2001-02-03 04:05:06 UTC"), "units", "days since 2001-02-03 04:05:06 Z"],
    [TIME("days since 2001-02-03 04:05:06 -0600"), "units", "days since 2001-02-03 04:05:06 -0600"],
  ])("%s", async (text, attribute, value) => {
    expect(await mendedText(text, "t", attribute)).toBe(value);
  });

  test.each([
    [':Conventions = "CF1.8" ;', "CF-1.8"],
    [':Conventions = "cf-1.10, ACDD 1.3" ;', "CF-1.10, ACDD-1.3"],
    [':Conventions = "CF-1.8, CF1.7" ;', "CF-1.8, CF1.7"],
    [':Conventions = "COARDS" ;', "COARDS"],
  ])("%s", async (text, value) => expect(await mendedText(text, null, "Conventions")).toBe(value));

  test("a fill value goes only where nothing is missing", async () => {
    const coordinate = (values: string) =>
      `dimensions: z = 3 ; variables: float z(z) ; z:units = "dbar" ; z:_FillValue = -9.f ; data: z = ${values} ;`;
    expect(await mendedText(coordinate("1, 2, 3"), "z", "_FillValue")).toBeUndefined();
    expect(await mendedText(coordinate("1, -9, 3"), "z", "_FillValue")).toEqual(Float32Array.of(-9));
  });
});

test("a line of history tells who changed what, and when", async () => {
  const { dataset, mended } = await mendDataset(
    cdl(
      `:Conventions = "CF-1.13" ; :history = "made by hand" ; ${T} t:units = "deg C" ; t:units_metadata = "temperature: on_scale" ; t:long_name = "any" ;`,
    ),
    { ...context, ruleSets: ["cf"] },
    "wherry 9.9.9",
  );
  expect(mended).toMatchObject([
    { rule: "cf/units-readable", variable: "t", attribute: "units", from: "deg C", to: "degC" },
  ]);
  expect(dataset.attributes.get("history")?.value).toBe(
    'made by hand\n2030-01-01T00:00:00Z wherry 9.9.9 mend: t:units from "deg C" to "degC"',
  );
});

test("the bytes of a mended file are mended to themselves", async () => {
  const first = await mendDataset(cdl(`${T} t:units = "deg C" ;`), context, "wherry 0");
  const bytes = await bytesOf(first.dataset);
  const opened = await openDataset(bytes);
  if (!opened.ok) throw new Error(opened.problems[0].message);
  const second = await mendDataset(opened.value, { ...context, now: NOW + 1e6 }, "wherry 0");
  expect(await bytesOf(second.dataset)).toEqual(bytes);
});
