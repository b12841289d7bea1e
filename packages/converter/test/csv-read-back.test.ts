import { type Cast, layerMeans } from "@wherry/core";
import { readCfDsg, readCsvw } from "@wherry/formats";
import type { Dataset } from "@wherry/netcdf";
import { describe, expect, test } from "vitest";
import { mutationsOf } from "../../formats/test/damage.ts";
import { binnedDataset } from "../src/writers/binned-dataset.ts";
import { csvProduct } from "../src/writers/csv-product.ts";
import { fullDataset } from "../src/writers/full-dataset.ts";
import { seriesDataset } from "../src/writers/series-dataset.ts";
import { referenceCasts } from "./reference-casts.ts";
import { referenceContext } from "./reference-sheet.ts";

// A product as CSV and the same as netCDF are read by two readers; the casts must be the same.

const context = referenceContext();
const casts = await referenceCasts("full");
const [series] = await referenceCasts("series");
const means = new Map(
  casts.map((cast) => [cast.id, layerMeans(cast, { width: 0.5, coordinate: "depth", direction: "down" })]),
);
const products: Record<string, Dataset> = {
  full: fullDataset(casts, context),
  binned: binnedDataset(casts, means, context)!,
  series: seriesDataset(series!, context),
};

const facts = ({ id, kind, rows, time, timeRole, endTime, start, end, fixedDepth, segments }: Cast) => ({
  id,
  kind,
  rows,
  time,
  timeRole,
  endTime,
  start,
  end,
  fixedDepth,
  segments,
});

const columnsOf = (cast: Cast) =>
  [...cast.columns.values()]
    // bounds of layers are columns of their own in a table
    .filter(({ name }) => !/_bounds_(?:lower|upper)$/.test(name))
    .map(({ name, standardName, longName, units, values, flags, sourceFlags }) => ({
      name,
      standardName,
      longName,
      units,
      values: [...values],
      flags: [...flags],
      sourceFlags: sourceFlags && { scheme: sourceFlags.scheme, values: sourceFlags.values },
    }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));

const bytesOf = (text: string) => new TextEncoder().encode(text);
const SHA256 = "0".repeat(64);

async function readBack(csv: string, metadata: string, path: string) {
  const read = await readCsvw(bytesOf(csv), bytesOf(metadata), { path, sha256: SHA256 });
  return read.ok ? read.value : read.problems.map(({ code }) => code);
}

describe.each(Object.entries(products))("%s product", async (name, dataset) => {
  const path = `s_${name}.csv`;
  const { csv, metadata } = await csvProduct(dataset, path);
  const fromNetcdf = await readCfDsg(dataset, { path: `s_${name}.nc`, sha256: SHA256 });
  const fromCsv = await readBack(csv, metadata, path);
  if (!fromNetcdf.ok || Array.isArray(fromCsv)) throw new Error(String(fromCsv));

  test("the same casts", () => {
    expect(fromCsv.casts.map(facts)).toEqual(fromNetcdf.value.casts.map(facts));
    expect(fromCsv.casts.length).toBeGreaterThan(0);
  });

  test("the same columns, values and flags", () =>
    expect(fromCsv.casts.map(columnsOf)).toEqual(fromNetcdf.value.casts.map(columnsOf)));

  test("layout and lines of the text", () => {
    expect(fromCsv).toMatchObject({ encoding: "utf-8", lineEnding: "CRLF", delimiter: ",", findings: [] });
    // a product of rows tells the lines of its own source, layer means have only those of the table
    const [cast] = fromNetcdf.value.casts;
    expect(fromCsv.casts[0]?.lines[0]).toBe(name === "binned" ? 2 : cast?.lines[0]);
    expect(fromCsv.format).toBe(`CSV with metadata, ${name === "series" ? "timeSeries" : "profile"}`);
  });
});

describe("tables and descriptions that do not agree", async () => {
  const { csv, metadata } = await csvProduct(products.full!, "x.csv");

  test.each<[string, string, string, string[]]>([
    ["no JSON", csv, metadata.slice(0, 200), ["csvw/metadata"]],
    ["another context", csv, metadata.replace("ns/csvw", "ns/other"), ["csvw/metadata"]],
    ["a column renamed", csv.replace("temperature", "temp"), metadata, ["csvw/header"]],
    ["a column more", csv.replace("\r\n", ",more\r\n"), metadata, ["csvw/header"]],
    ["no rows", csv.slice(0, csv.indexOf("\r\n") + 2), metadata, ["csvw/no-rows"]],
    ["rows of a cast apart", `${csv}${csv.split("\r\n")[1]}\r\n`, metadata, ["csvw/scattered"]],
  ])("%s", async (_, table, description, codes) =>
    expect(await readBack(table, description, "x.csv")).toEqual(codes),
  );

  const findings = async (table: string, path = "x.csv") => {
    const read = await readBack(table, metadata, path);
    return Array.isArray(read) ? read : read.findings.map(({ code, where }) => [code, where.line]);
  };

  test("a cell that is no number is missing, and told", async () => {
    const lines = csv.split("\r\n");
    const column = lines[0]!.split(",").indexOf("temperature");
    const cells = lines[3]!.split(",");
    cells[column] = "17,3".replace(",", "o");
    lines[3] = cells.join(",");
    expect(await findings(lines.join("\r\n"))).toEqual([["csvw/cell", 4]]);
  });

  test("a row cut short is kept out, and told", async () => {
    const lines = csv.trimEnd().split("\r\n");
    const cut = [...lines.slice(0, -1), lines.at(-1)!.slice(0, 20)].join("\r\n");
    expect(await findings(cut)).toEqual([["csvw/row-width", lines.length]]);
  });

  test("another name than the description has", async () =>
    expect(await findings(csv, "renamed.csv")).toEqual([["csvw/url", undefined]]));
});

test("100 damaged tables and 100 damaged descriptions never throw", async () => {
  const { csv, metadata } = await csvProduct(products.full!, "x.csv");
  let read = 0;
  let told = 0;
  const attempt = async (table: Uint8Array, description: Uint8Array) => {
    const result = await readCsvw(table, description, { path: "x.csv", sha256: SHA256 });
    if (!result.ok) told++;
    else
      for (const cast of result.value.casts)
        for (const { values } of cast.columns.values()) expect(values).toHaveLength(cast.rows);
    if (result.ok) read++;
  };
  for (const { bytes } of mutationsOf(bytesOf(csv), 100)) await attempt(bytes, bytesOf(metadata));
  for (const { bytes } of mutationsOf(bytesOf(metadata), 100)) await attempt(bytesOf(csv), bytes);
  expect(read).toBeGreaterThan(30);
  expect(told).toBeGreaterThan(30);
});
