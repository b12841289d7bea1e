import { layerMeans } from "@wherry/core";
import type { Dataset } from "@wherry/netcdf";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { binnedDataset } from "../src/writers/binned-dataset.ts";
import { csvProduct } from "../src/writers/csv-product.ts";
import { fullDataset } from "../src/writers/full-dataset.ts";
import { seriesDataset } from "../src/writers/series-dataset.ts";
import { numbers, referenceCasts, texts } from "./reference-casts.ts";
import { referenceContext } from "./reference-sheet.ts";

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

interface Metadata {
  "@context": unknown;
  url: string;
  dialect: { header: boolean };
  tableSchema: {
    columns: { name: string; titles: string; datatype: string; null: string }[];
    primaryKey: string[];
  };
}

describe.each(Object.entries(products))("%s product as CSV", async (name, dataset) => {
  const { csv, metadata } = await csvProduct(dataset, `s_${name}.csv`);
  const parsed = Papa.parse<string[]>(csv, { header: false, skipEmptyLines: false });
  const [header, ...rows] = parsed.data.slice(0, -1) as [string[], ...string[][]];
  const column = (title: string) => rows.map((row) => row[header.indexOf(title)]!);

  test("an independent parser reads one table of whole rows", () => {
    expect(parsed.errors).toEqual([]);
    expect(parsed.meta.linebreak).toBe("\r\n");
    expect(parsed.data.at(-1)).toEqual([""]);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([header.length]));
    expect(new Set(header).size).toBe(header.length);
  });

  test("every number and text is that of the data set", async () => {
    const counts = dataset.variables.has("row_size") ? await numbers(dataset, "row_size") : [rows.length];
    const castOf = counts.flatMap((count, cast) => Array<number>(count).fill(cast));
    const compared: string[] = [];
    for (const [title, variable] of dataset.variables) {
      const isBounds = title.endsWith("_bounds");
      if (title === "row_size" || !header.includes(isBounds ? `${title}_lower` : title)) continue;
      compared.push(title);
      const perRow = ["obs", "time"].includes(variable.dimensions[0] ?? "");
      const at = (row: number) => (perRow ? row : castOf[row]!);
      if (variable.type === "char") {
        const wanted = await texts(dataset, title);
        expect(column(title)).toEqual(rows.map((_, row) => wanted[at(row)]));
        continue;
      }
      const wanted = await numbers(dataset, title);
      const read = (text: string) => (text === "" ? Number.NaN : Number(text));
      const stored = (value: number) => (variable.type === "float" ? Math.fround(value) : value);
      for (const [edge, suffix] of (isBounds ? ["_lower", "_upper"] : [""]).entries())
        expect([title, column(title + suffix).map((text) => stored(read(text)))]).toEqual([
          title,
          rows.map((_, row) => wanted[isBounds ? 2 * at(row) + edge : at(row)]!),
        ]);
    }
    const containers = [...dataset.variables.keys()].filter((title) =>
      /^(crs|platform\d|instrument\d)$/.test(title),
    );
    expect(
      [...compared, ...containers, ...(dataset.variables.has("row_size") ? ["row_size"] : [])].sort(),
    ).toEqual([...dataset.variables.keys()].sort());
  });

  test("the metadata describe the table as CSVW asks", () => {
    // rules of the W3C Recommendation "Metadata Vocabulary for Tabular Data" (2015), sections 5.1 to 5.6
    const document = JSON.parse(metadata) as Metadata;
    expect(document["@context"]).toEqual(["http://www.w3.org/ns/csvw", { "@language": "en" }]);
    expect(document.url).toBe(`s_${name}.csv`);
    const { columns, primaryKey } = document.tableSchema;
    expect(columns.map(({ titles }) => titles)).toEqual(header);
    for (const { name: own, datatype, null: marker } of columns) {
      expect(own).toMatch(/^[A-Za-z0-9%][A-Za-z0-9_.%]*$/);
      expect(["string", "float", "double", "byte", "int", "dateTime"]).toContain(datatype);
      expect(marker).toBe("");
    }
    const keys = rows.map((row) => primaryKey.map((key) => row[header.indexOf(key)]).join("\n"));
    expect(primaryKey.every((key) => header.includes(key))).toBe(true);
    expect(new Set(keys).size).toBe(rows.length);
    expect(keys.every((key) => !key.split("\n").includes(""))).toBe(true);
  });

  test("common properties have a prefix that CSVW knows", () => {
    const known = /^(@|dc:|rdfs:|schema:)/;
    const plain = new Set([
      "url",
      "dialect",
      "tableSchema",
      "columns",
      "primaryKey",
      "name",
      "titles",
      "datatype",
      "null",
      "required",
    ]);
    const dialect = new Set([
      "encoding",
      "lineTerminators",
      "delimiter",
      "quoteChar",
      "doubleQuote",
      "header",
      "headerRowCount",
    ]);
    const unknown: string[] = [];
    JSON.parse(metadata, (key, value) => {
      const isIndex = /^\d+$/.test(key) || key === "";
      if (!isIndex && !known.test(key) && !plain.has(key) && !dialect.has(key)) unknown.push(key);
      return value;
    });
    expect(unknown).toEqual([]);
  });
});

test("commas, quotes and line ends inside a cell survive", async () => {
  const [cast] = casts;
  const notes = [...cast!.lines].map((line) => ` a,"b"\n${line} `);
  const { csv } = await csvProduct(
    fullDataset([{ ...cast!, texts: new Map([["Note", notes]]) }], context),
    "x.csv",
  );
  const parsed = Papa.parse<Record<string, string>>(csv, { header: true, skipEmptyLines: true });
  expect(parsed.data.map(({ text_note }) => text_note)).toEqual(notes);
});
