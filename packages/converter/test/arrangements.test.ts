import { type Cast, type LayerMeans, layerMeans } from "@wherry/core";
import type { Dataset } from "@wherry/netcdf";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { binnedDataset } from "../src/writers/binned-dataset.ts";
import { csvProduct } from "../src/writers/csv-product.ts";
import { fullDataset } from "../src/writers/full-dataset.ts";
import { seriesDataset } from "../src/writers/series-dataset.ts";
import { targetNamed } from "../src/writers/target.ts";
import { differences, structure } from "./compare.ts";
import { numbers, referenceCasts, referenceProduct, texts } from "./reference-casts.ts";
import { referenceContext } from "./reference-sheet.ts";

// The same casts arranged for each target: the contiguous ragged array, which the reference files check, is the
// measure of the others.

const general = referenceContext();
const template = { ...general, target: targetNamed("us-template") };
const guide = { ...general, target: targetNamed("ctd-guide") };
const casts = await referenceCasts("full");
const [series] = await referenceCasts("series");
const depths = { coordinate: "depth", direction: "down" } as const;
const means = new Map<string, LayerMeans>(
  casts.map((cast) => [cast.id, layerMeans(cast, { ...depths, width: 0.5 })]),
);
// the same layers twice, an hour later with other temperatures
const later = warmer({
  ...casts[2]!,
  id: "EE24-04",
  time: casts[2]!.time + 3600,
  endTime: casts[2]!.endTime + 3600,
});
const equalLevels = [casts[2]!, later];
means.set(later.id, layerMeans(later, { ...depths, width: 0.5 }));

function warmer(cast: Cast): Cast {
  const column = cast.columns.get("temperature")!;
  const values = column.values.map((value) => value + 1);
  return { ...cast, columns: new Map([...cast.columns, ["temperature", { ...column, values }]]) };
}

const shapeOf = (dataset: Dataset, name: string) => dataset.variables.get(name)?.dimensions.join(" ");

describe("incomplete arrays beside their reference file", async () => {
  const wanted = referenceProduct("binned_incomplete");
  const found = binnedDataset(casts, means, template)!;
  const added = /^(position|time)_qc$/;

  test("dimensions, variables and types", () => {
    expect([...found.dimensions.values()]).toEqual([...wanted.dimensions.values()]);
    const lines = structure(found).variables.filter((line) => !/ (position|time)_qc\(/.test(line));
    expect(lines).toEqual(structure(wanted).variables);
  });

  test("attributes, except what is told here", () => {
    const mine = new Map(
      [...structure(found).attributes].filter(([name]) => !added.test(name.split(":")[0]!)),
    );
    const quantities = ["pressure", "temperature", "conductivity", "salinity", "density", "sound_speed"];
    const ranges = /:(actual_range|geospatial_vertical_(min|max))$/;
    expect(differences(mine, structure(wanted).attributes).filter((line) => !ranges.test(line))).toEqual(
      [
        "+ instrument1:rated_pressure",
        "+ latitude:ancillary_variables",
        "+ longitude:ancillary_variables",
        "+ time:ancillary_variables",
        // the sheet of the test names no sea
        "- :sea_name",
        "~ :history",
        "~ :references",
        "~ :source",
        "~ :summary",
        "~ :uuid",
        ...quantities.map((name) => `~ ${name}:cell_methods`),
        ...["temperature", "conductivity", "salinity"].map((name) => `~ ${name}_sd:cell_methods`),
      ].sort(),
    );
  });

  test("what the reference fixes of the numbers", async () => {
    for (const name of ["profile", "depth", "rows_above_layers", "time", "end_latitude"])
      expect([name, await numbers(found, name)]).toEqual([name, await numbers(wanted, name)]);
    expect(await texts(found, "cast_id")).toEqual(await texts(wanted, "cast_id"));
  });
});

describe("arrangement by target", () => {
  test.each<[string, Dataset, string, string]>([
    ["several casts", fullDataset(casts, general), "obs", ""],
    ["several casts for a guide", fullDataset(casts, guide), "obs", ""],
    ["one cast alone", fullDataset(casts.slice(0, 1), general, "full", true), "obs", ""],
    ["layers of one cast alone", binnedDataset(casts.slice(0, 1), means, guide, "b", true)!, "depth", ""],
    ["layers for a template", binnedDataset(casts, means, template)!, "profile z", "Profile_Incomplete"],
    ["equal levels", binnedDataset(equalLevels, means, template)!, "profile depth", "Profile_Orthogonal"],
    [
      "layers of one cast for a template",
      binnedDataset(casts.slice(0, 1), means, template, "b", true)!,
      "profile depth",
      "Profile_Orthogonal",
    ],
    ["rows for a template", fullDataset(casts, template), "profile z", "Profile_Incomplete"],
    ["series", seriesDataset(series!, general), "time", ""],
    ["series for a template", seriesDataset(series!, template), "timeSeries time", "TimeSeries_Orthogonal"],
    [
      "series without increasing times",
      seriesDataset({ ...series!, elapsed: series!.elapsed!.map(() => 0) }, template),
      "timeSeries obs",
      "TimeSeries_Incomplete",
    ],
  ])("%s", (_, dataset, shape, version) => {
    expect(shapeOf(dataset, "temperature")).toBe(shape);
    expect(dataset.attributes.get("ncei_template_version")?.value).toBe(
      version === "" ? undefined : `NCEI_NetCDF_${version}_Template_v2.0`,
    );
    const roles = [...dataset.variables.values()].filter(({ attributes }) => attributes.has("cf_role"));
    expect(roles).toHaveLength(1);
    for (const { name, dimensions, attributes } of dataset.variables.values())
      if (dimensions[0] === name) expect([name, attributes.has("_FillValue")]).toEqual([name, false]);
    // every name in a list of names is there
    for (const { name, attributes } of dataset.variables.values())
      for (const list of ["coordinates", "ancillary_variables", "bounds"])
        for (const other of String(attributes.get(list)?.value ?? "")
          .split(" ")
          .filter(Boolean))
          expect([name, list, other, dataset.variables.has(other)]).toEqual([name, list, other, true]);
  });

  test("files of one target differ by their uuid from those of another", () => {
    const uuids = [general, template, guide].map(
      (context) => fullDataset(casts, context).attributes.get("uuid")?.value,
    );
    expect(new Set(uuids).size).toBe(3);
  });
});

test("layers of different thickness tell it where bounds can't", async () => {
  const mixed = new Map(means);
  mixed.set(casts[1]!.id, layerMeans(casts[1]!, { ...depths, width: 0.25 }));
  const dataset = binnedDataset(casts, mixed, template)!;
  expect(shapeOf(dataset, "layer_thickness")).toBe("profile z");
  const thickness = await numbers(dataset, "layer_thickness");
  const { length } = dataset.dimensions.get("z")!;
  const [first, second] = [thickness.slice(0, length), thickness.slice(length, 2 * length)];
  expect(new Set(first.filter((value) => !Number.isNaN(value)))).toEqual(new Set([0.5]));
  expect(new Set(second.filter((value) => !Number.isNaN(value)))).toEqual(new Set([0.25]));
});

describe("the tables hold the same numbers", () => {
  interface Table {
    readonly header: readonly string[];
    readonly columns: ReadonlyMap<string, readonly string[]>;
  }
  async function table(dataset: Dataset): Promise<Table> {
    const { csv } = await csvProduct(dataset, "t.csv");
    const [header, ...rows] = Papa.parse<string[]>(csv, { skipEmptyLines: true }).data;
    const columns = new Map(header!.map((name, k) => [name, rows.map((row) => row[k]!)]));
    return { header: header!, columns };
  }
  const RENAMED: Readonly<Record<string, string>> = { cast_id: "profile_id", station_name: "station_id" };
  const ADDED = new Set(["profile", "timeSeries", "row"]);

  test.each<[string, Dataset, Dataset]>([
    ["full, incomplete", fullDataset(casts, general), fullDataset(casts, template)],
    [
      "full, single",
      fullDataset(casts.slice(1, 2), general),
      fullDataset(casts.slice(1, 2), general, "full", true),
    ],
    ["binned, incomplete", binnedDataset(casts, means, general)!, binnedDataset(casts, means, template)!],
    [
      "binned, orthogonal",
      binnedDataset(equalLevels, means, general)!,
      binnedDataset(equalLevels, means, template)!,
    ],
    [
      "binned, single",
      binnedDataset(casts.slice(0, 1), means, general)!,
      binnedDataset(casts.slice(0, 1), means, general, "binned", true)!,
    ],
    ["series, orthogonal", seriesDataset(series!, general), seriesDataset(series!, template)],
  ])("%s", async (name, ragged, arranged) => {
    const wanted = await table(ragged);
    const found = await table(arranged);
    expect(found.columns.get("row")).toEqual(wanted.columns.get("row"));
    const compared = new Set<string>();
    for (const [own, cells] of found.columns) {
      if (ADDED.has(own)) continue;
      const other = RENAMED[own] ?? own;
      compared.add(other);
      expect([own, cells]).toEqual([own, wanted.columns.get(other)]);
    }
    const left = wanted.header.filter((column) => !compared.has(column) && column !== "row");
    expect(left).toEqual(name === "binned, incomplete" ? ["depth_bounds_lower", "depth_bounds_upper"] : []);
  });
});
