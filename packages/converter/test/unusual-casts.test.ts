import { type Cast, type Column, layerMeans } from "@wherry/core";
import { expect, test } from "vitest";
import { binnedDataset } from "../src/writers/binned-dataset.ts";
import { fullDataset } from "../src/writers/full-dataset.ts";
import { seriesDataset } from "../src/writers/series-dataset.ts";
import { surveyProducts } from "../src/writers/survey-products.ts";
import type { WritingContext } from "../src/writers/writing-context.ts";
import { numbers, referenceCasts, texts } from "./reference-casts.ts";
import { referenceContext } from "./reference-sheet.ts";

const context = referenceContext();
const casts = await referenceCasts("full");
const [series] = await referenceCasts("series");
const first = casts[0]!;
const second = casts[1]!;

const without = (cast: Cast, ...names: string[]): Cast => ({
  ...cast,
  columns: new Map([...cast.columns].filter(([name]) => !names.includes(name))),
});
const withColumn = (cast: Cast, name: string, change: Partial<Column>): Cast => ({
  ...cast,
  columns: new Map(cast.columns).set(name, { ...cast.columns.get("temperature")!, name, ...change }),
});
const text = (dataset: ReturnType<typeof fullDataset>, variable: string, attribute: string) => {
  const value = dataset.variables.get(variable)?.attributes.get(attribute)?.value;
  return typeof value === "string" ? value : Array.from((value ?? []) as ArrayLike<number>);
};

test("a quantity that only some casts have is missing in the others, flag 9", async () => {
  const dataset = fullDataset([first, without(second, "conductivity", "sound_speed")], context);
  const values = await numbers(dataset, "conductivity");
  const flags = await numbers(dataset, "conductivity_qc");
  expect(values.slice(first.rows).every((value) => Number.isNaN(value))).toBe(true);
  expect(flags.slice(first.rows).every((flag) => flag === 9)).toBe(true);
  expect(values.slice(0, first.rows).some((value) => Number.isNaN(value))).toBe(false);
});

test("a quantity that no cast has is left out", () => {
  const dataset = fullDataset([without(first, "conductivity")], context);
  expect(dataset.variables.has("conductivity")).toBe(false);
  expect(dataset.variables.has("conductivity_qc")).toBe(false);
});

test("depth without pressure, no times, no end, no segments", () => {
  const legacy: Cast = {
    ...without(first, "pressure", "conductivity", "density", "sound_speed"),
    elapsed: null,
    end: null,
    endTime: Number.NaN,
    pressureOffset: Number.NaN,
    segments: [],
    start: { ...first.start!, satellites: null },
  };
  const dataset = fullDataset([legacy], context);
  for (const name of [
    "elapsed",
    "end_time",
    "end_latitude",
    "start_satellites",
    "pressure_offset",
    "segment",
  ])
    expect(dataset.variables.has(name)).toBe(false);
  expect(text(dataset, "temperature", "coordinates")).toBe("time latitude longitude depth profile_id");
  expect(text(dataset, "position_qc", "long_name")).toContain("position");
});

test("pressure is the vertical coordinate where there is no depth", () => {
  const dataset = fullDataset([without(first, "depth")], context);
  expect(text(dataset, "temperature", "coordinates")).toBe("time latitude longitude pressure profile_id");
  expect(text(dataset, "pressure", "positive")).toBe("down");
  expect(dataset.attributes.get("geospatial_vertical_units")?.value).toBe("dbar");
  expect(dataset.attributes.has("geospatial_bounds_vertical_crs")).toBe(false);
});

test("a cast without position or time is written with fill values", async () => {
  const lost = { ...first, id: "lost", start: null, end: null, time: Number.NaN, endTime: Number.NaN };
  const dataset = fullDataset([lost, second], context);
  expect(await texts(dataset, "profile_id")).toEqual([second.id, "lost"]);
  expect((await numbers(dataset, "latitude"))[1]).toBeNaN();
  expect(await numbers(dataset, "position_qc")).toEqual([1, 9]);
  expect((await numbers(dataset, "time_qc"))[1]).toBe(9);
  expect(dataset.attributes.get("geospatial_lat_min")?.value).toEqual(
    Float64Array.of(second.start!.latitude),
  );
});

test("a column unknown to CF passes through", async () => {
  const battery = withColumn(first, "battery voltage", {
    standardName: null,
    longName: "Battery",
    units: null,
    method: null,
  });
  const dataset = fullDataset([battery], context);
  expect(text(dataset, "battery_voltage", "long_name")).toBe("Battery");
  expect(text(dataset, "battery_voltage", "units")).toBe("1");
  expect(text(dataset, "battery_voltage", "comment")).toBe("the source tells no unit");
  expect(dataset.variables.get("battery_voltage")?.attributes.has("standard_name")).toBe(false);
  expect(await numbers(dataset, "battery_voltage")).toEqual(await numbers(dataset, "temperature"));
  expect(text(dataset, "battery_voltage", "coverage_content_type")).toBe("auxiliaryInformation");
  const means = new Map([
    [first.id, layerMeans(battery, { width: 0.5, coordinate: "depth", direction: "down" })],
  ]);
  expect(binnedDataset([battery], means, context)!.variables.has("battery_voltage")).toBe(false);
});

test("columns of text pass through, those that were read as times do not", async () => {
  const cells = Array.from({ length: first.rows }, (_, row) => `${row} s`);
  const cast: Cast = {
    ...first,
    texts: new Map([
      ["Remark / note", cells],
      ["Clock", cells],
    ]),
    evidence: [{ fact: "timeColumn:Clock", certainty: "stated", because: "", where: {} }],
  };
  const dataset = fullDataset([cast, second], context);
  expect((await texts(dataset, "text_remark_note")).slice(0, first.rows)).toEqual(cells);
  expect(text(dataset, "text_remark_note", "long_name")).toBe("text of column Remark / note of the source");
  expect(dataset.variables.has("text_clock")).toBe(false);
});

test("names of the layout and names that differ in case only are kept apart", () => {
  const odd = withColumn(withColumn(first, "Time", { standardName: null }), "TEMPERATURE", {
    standardName: null,
  });
  const names = [...fullDataset([odd], context).variables.keys()];
  expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length);
  expect(names).toContain("Time_column");
  expect(names).toContain("TEMPERATURE_2");
});

test("what the source had computed itself stands beside ours", () => {
  const received = withColumn(first, "salinity_received", {
    standardName: "sea_water_practical_salinity",
    longName: "Salinity",
    units: "1",
  });
  const dataset = fullDataset([received], context);
  expect(text(dataset, "salinity_received", "long_name")).toBe("Salinity, as received from the source");
  expect(text(dataset, "salinity_received", "source")).toBe("as received from the source");
});

test("absolute and sea pressure are two variables", () => {
  const pressure = second.columns.get("pressure")!;
  const absolute = {
    ...second,
    pressureOffset: Number.NaN,
    columns: new Map(second.columns).set("pressure", { ...pressure, standardName: "sea_water_pressure" }),
  };
  const dataset = fullDataset([first, absolute], context);
  expect(text(dataset, "pressure", "standard_name")).toBe("sea_water_pressure_due_to_sea_water");
  expect(text(dataset, "pressure_2", "standard_name")).toBe("sea_water_pressure");
});

test("numbers printed too finely for single precision are stored in double", () => {
  const column = first.columns.get("temperature")!;
  const fine = {
    ...column,
    values: column.values.map((value) => value + 1.23e-9),
    source: {
      ...column.source!,
      decimals: 9,
      first: column.values[0]! + 1.23e-9,
      last: column.values.at(-1)! + 1.23e-9,
    },
  };
  const dataset = fullDataset(
    [{ ...first, columns: new Map(first.columns).set("temperature", fine) }],
    context,
  );
  expect(dataset.variables.get("temperature")?.type).toBe("double");
  expect(dataset.variables.get("conductivity")?.type).toBe("float");
});

test.each([
  ["assumed", "ITS-90: the data are younger than 1990", "measured; scale ITS-90 assumed, data after 1990"],
  ["stated", '"t68" says IPTS-68; it is converted to ITS-90', "measured on IPTS-68, converted to ITS-90"],
  ["stated", '"T90" says ITS-90', "measured on ITS-90, as the source states"],
] as const)("temperature scale %s by %s", (certainty, because, want) => {
  const cast = { ...first, evidence: [{ fact: "column:temperature", certainty, because, where: {} }] };
  expect(text(fullDataset([cast], context), "temperature", "source")).toBe(want);
});

const flagged = (scheme: string, values: readonly string[]): Cast =>
  withColumn(first, "temperature", {
    sourceFlags: {
      scheme,
      header: "CTDTMP_FLAG_W",
      values: Array.from({ length: first.rows }, (_, row) => values[row % values.length]!),
    },
  });

test("flags of the source are kept, numbers with the meanings of their scheme", async () => {
  const dataset = fullDataset([flagged("WOCE CTD", ["2", "3", "6"]), second], context);
  const variable = dataset.variables.get("temperature_source_flag")!;
  expect(variable.type).toBe("byte");
  expect(text(dataset, "temperature_source_flag", "flag_values")).toEqual([2, 3, 6]);
  expect(text(dataset, "temperature_source_flag", "flag_meanings")).toBe(
    "acceptable questionable interpolated",
  );
  expect(text(dataset, "temperature", "ancillary_variables")).toBe("temperature_qc temperature_source_flag");
  const codes = await numbers(dataset, "temperature_source_flag");
  expect(codes.slice(0, 4)).toEqual([2, 3, 6, 2]);
  expect(codes[first.rows]).toBeNaN();
});

test("letters are kept as ASCII codes, longer words as text", async () => {
  const letters = fullDataset([flagged("unknown", ["A", "b"])], context);
  expect((await numbers(letters, "temperature_source_flag")).slice(0, 2)).toEqual([65, 98]);
  expect(text(letters, "temperature_source_flag", "comment")).toBe(
    "scheme: not told by the source; column CTDTMP_FLAG_W of the source",
  );
  const words = fullDataset([flagged("unknown", ["good", "poor"])], context);
  expect((await texts(words, "temperature_source_flag")).slice(0, 2)).toEqual(["good", "poor"]);
});

const [probe] = context.sheet.instruments!;
const withSheet = (change: Partial<WritingContext["sheet"]>): WritingContext => ({
  ...context,
  sheet: { ...context.sheet, ...change },
});

test("sensor uncertainties stand beside measured quantities in the unit of the product", async () => {
  const uncertain = withSheet({
    instruments: [
      {
        ...probe!,
        sensors: {
          temperature: { uncertainty: 0.002, units: "K" },
          conductivity: { uncertainty: 0.01, units: "mS cm-1" },
          pressure: { accuracy: 0.05, units: "dbar" },
        },
      },
    ],
  });
  const dataset = fullDataset([second], uncertain);
  const conductivity = await numbers(dataset, "conductivity");
  expect(await numbers(dataset, "conductivity_uncertainty")).toEqual(
    conductivity.map((value) => (Number.isNaN(value) ? Number.NaN : Math.fround(0.001))),
  );
  expect((await numbers(dataset, "temperature_uncertainty"))[0]).toBe(Math.fround(0.002));
  expect(text(dataset, "temperature_uncertainty", "units_metadata")).toBe("temperature: difference");
  expect(text(dataset, "temperature", "ancillary_variables")).toBe("temperature_qc temperature_uncertainty");
  expect(dataset.variables.has("pressure_uncertainty")).toBe(false);
  expect(dataset.variables.has("salinity_uncertainty")).toBe(false);
});

test("several instruments and platforms are told cast by cast", async () => {
  const two = withSheet({
    instruments: [probe!, { id: "other", name: "second profiler", serial_number: "T-2" }],
    casts: [
      { id: first.id, file: "a.csv" },
      { id: second.id, file: "b.csv", platform: "pier", notes: "calm" },
    ],
  });
  const dataset = fullDataset(
    [first, { ...second, instrument: { model: null, serialNumber: "T-2", ratedPressure: null } }],
    two,
  );
  expect(text(dataset, "temperature", "instrument")).toBe("instrument1 instrument2");
  expect(text(dataset, "instrument2", "long_name")).toBe("second profiler");
  expect(await numbers(dataset, "cast_instrument")).toEqual([1, 2]);
  expect(await numbers(dataset, "cast_platform")).toEqual([1, 2]);
  expect(await texts(dataset, "remarks")).toEqual(["", "calm"]);
  expect(dataset.attributes.get("instrument")?.value).toBe(
    "conductivity temperature pressure profiler, second profiler",
  );
});

test("an instrument that the sheet does not list is told as the file tells it", () => {
  const other = { ...first, instrument: { model: "M1", serialNumber: "X-9", ratedPressure: 100 } };
  const dataset = fullDataset([other], context);
  expect(text(dataset, "instrument1", "serial_number")).toBe("X-9");
  expect(text(dataset, "instrument1", "make_model")).toBe("M1");
  expect(dataset.variables.get("instrument1")?.attributes.has("calibration_date")).toBe(false);
});

test("layers of several widths, and a cast without layers", async () => {
  const means = new Map([
    [first.id, layerMeans(first, { width: 0.5, coordinate: "depth", direction: "down" })],
    [second.id, layerMeans(second, { width: 1, coordinate: "depth", direction: "down" })],
  ]);
  const dataset = binnedDataset(casts, means, context)!;
  expect((await numbers(dataset, "row_size"))[2]).toBe(0);
  expect((await numbers(dataset, "rows_above_layers"))[2]).toBeNaN();
  expect(dataset.attributes.has("geospatial_vertical_resolution")).toBe(false);
  expect(text(dataset, "temperature", "cell_methods")).toContain(
    "layers of the thickness that their bounds give",
  );
  expect(binnedDataset(casts, new Map(), context)).toBeNull();
});

test("layers in pressure have pressure as their coordinate and the mean depth beside it", () => {
  const means = new Map([
    [first.id, layerMeans(first, { width: 1, coordinate: "pressure", direction: "up" })],
  ]);
  const dataset = binnedDataset([first], means, context)!;
  expect(text(dataset, "temperature", "coordinates")).toBe("time latitude longitude pressure profile_id");
  expect(text(dataset, "pressure", "bounds")).toBe("pressure_bounds");
  expect(text(dataset, "temperature", "cell_methods")).toBe(
    "pressure: mean (upcast rows flagged 1 or 2, layers 1 dbar thick)",
  );
  expect(dataset.variables.has("depth_count")).toBe(true);
});

test("a series whose clock stands still has its rows along obs", async () => {
  const elapsed = Float64Array.from(series!.elapsed!);
  elapsed[5] = elapsed[4]!;
  const dataset = seriesDataset({ ...series!, elapsed }, context);
  expect(dataset.variables.get("time")?.dimensions).toEqual(["obs"]);
  expect(dataset.attributes.has("time_coverage_resolution")).toBe(false);
  expect(text(dataset, "temperature", "cell_methods")).toBe("latitude: longitude: nominal_depth: point");
});

test("a series without times and without a stated depth", async () => {
  const dataset = seriesDataset({ ...series!, elapsed: null, fixedDepth: null }, context);
  expect((await numbers(dataset, "time")).every((time) => Number.isNaN(time))).toBe(true);
  expect(text(dataset, "nominal_depth", "comment")).toBe(
    "median of the depths of the rows at the fixed position",
  );
});

test("products are named after the survey, or after each cast", () => {
  const means = new Map(
    casts.map((cast) => [cast.id, layerMeans(cast, { width: 0.5, coordinate: "depth", direction: "down" })]),
  );
  const input = { casts: [...casts, series!], layers: means, context };
  const stems = (more: object) => [...surveyProducts({ ...input, ...more })].map(({ stem }) => stem);
  expect(stems({})).toEqual([
    "example-estuary-2024_full",
    "example-estuary-2024_binned",
    "example-estuary-2024_series_EE24-PIER-A",
  ]);
  expect(stems({ perCast: true, products: new Set(["full", "series"]) })).toEqual([
    "example-estuary-2024_EE24-01_full",
    "example-estuary-2024_EE24-02_full",
    "example-estuary-2024_EE24-03_full",
    "example-estuary-2024_EE24-PIER-A_series",
  ]);
  expect(stems({ casts: [] })).toEqual([]);
});

test("the order in which casts are given changes nothing", () => {
  const uuid = (order: readonly Cast[]) => fullDataset(order, context).attributes.get("uuid")?.value;
  expect(uuid([...casts].reverse())).toBe(uuid(casts));
  expect(uuid(casts)).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  expect(uuid([first, second])).not.toBe(uuid(casts));
});

test("a row of a series whose time repeats is flagged, and the file says how many", async () => {
  const elapsed = series!.elapsed!.slice();
  elapsed[7] = elapsed[6]!;
  const dataset = seriesDataset({ ...series!, elapsed }, context);
  const flags = await numbers(dataset, "time_qc");
  expect(flags[7]).toBe(3);
  expect(flags.filter((flag) => flag === 3)).toHaveLength(1);
  expect(text(dataset, "time", "comment")).toBe("rows that have the time of an earlier row: 1, flagged 3");
  expect(dataset.variables.get("time")?.dimensions).toEqual(["obs"]);
});
