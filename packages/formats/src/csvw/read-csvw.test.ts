import { describe, expect, test } from "vitest";
import { SHA256 } from "../../test/asking-nobody.ts";
import { readCsvw } from "./read-csvw.ts";

// Tables that other programs may write, by the W3C Recommendation "Metadata Vocabulary for Tabular Data" (2015).
// Products of ours are read back in the converter's tests.

const CONTEXT = "http://www.w3.org/ns/csvw";
const NAMES = "https://vocab.example.org/standard_name";
const COLUMNS = [
  { name: "cast", datatype: "string", required: true },
  { name: "row", datatype: "integer" },
  {
    name: "when",
    datatype: "double",
    propertyUrl: `${NAMES}/time/`,
    "schema:unitText": "seconds since 1970-01-01 00:00:00Z",
  },
  { name: "lat", datatype: "double", propertyUrl: `${NAMES}/latitude`, "schema:unitText": "degrees_north" },
  { name: "lon", datatype: "double", propertyUrl: `${NAMES}/longitude`, "schema:unitText": "degrees_east" },
  { name: "z", datatype: { base: "float" }, propertyUrl: `${NAMES}/depth`, "schema:unitText": "m" },
  {
    name: "t",
    titles: ["temperature of water"],
    datatype: "number",
    null: ["-999", "n/a"],
    propertyUrl: `${NAMES}/sea_water_temperature`,
    "schema:unitText": "degree_C",
  },
];
const TABLE = `cast,row,when,lat,lon,z,temperature of water
A,1,1686726720,51.25,-4.5,1,16.5
A,2,1686726720,51.25,-4.5,2,-999
B,1,1686730320,51.5,-4.25,1,n/a
B,2,1686730320,51.5,-4.25,2,15.25
`;
const DESCRIPTION = {
  "@context": [CONTEXT, { "@language": "en" }],
  url: "t.csv",
  tableSchema: { columns: COLUMNS, primaryKey: ["cast", "row"] },
};

async function read(table: string, description: unknown, path = "t.csv") {
  const bytes = (text: string) => new TextEncoder().encode(text);
  const result = await readCsvw(bytes(table), bytes(JSON.stringify(description)), { path, sha256: SHA256 });
  return result.ok ? result.value : result.problems.map(({ code }) => code);
}

test("standard names by the address of a property, several null markers", async () => {
  const file = await read(TABLE, DESCRIPTION);
  if (Array.isArray(file)) throw new Error(String(file));
  expect(file.casts.map(({ id, rows, time }) => [id, rows, time])).toEqual([
    ["A", 2, 1686726720],
    ["B", 2, 1686730320],
  ]);
  expect(file.casts[1]?.start).toMatchObject({ latitude: 51.5, longitude: -4.25 });
  expect(file.casts.map(({ columns }) => [...(columns.get("temperature")?.values ?? [])])).toEqual([
    [16.5, Number.NaN],
    [Number.NaN, 15.25],
  ]);
  expect([...(file.casts[1]?.lines ?? [])]).toEqual([4, 5]);
  expect(file.missingMarkers).toEqual(["-999", "n/a"]);
});

test("another delimiter, stated in the dialect", async () => {
  const file = await read(TABLE.replaceAll(",", ";"), { ...DESCRIPTION, dialect: { delimiter: ";" } });
  expect(Array.isArray(file) ? file : [file.delimiter, file.casts.length]).toEqual([";", 2]);
});

describe("descriptions that are of another kind", () => {
  test.each<[string, unknown]>([
    ["no object", 7],
    ["no context", { ...DESCRIPTION, "@context": "http://schema.org" }],
    ["no columns", { ...DESCRIPTION, tableSchema: {} }],
    ["two tables", { "@context": CONTEXT, tables: [DESCRIPTION, DESCRIPTION] }],
    ["no header row", { ...DESCRIPTION, dialect: { header: false } }],
    ["a delimiter of two signs", { ...DESCRIPTION, dialect: { delimiter: ";;" } }],
  ])("%s", async (_, description) => expect(await read(TABLE, description)).toEqual(["csvw/metadata"]));
});

test("a required cell that is empty is told with its line", async () => {
  const file = await read(TABLE.replace("A,2,", ",2,"), DESCRIPTION);
  expect(
    Array.isArray(file) ? file : file.findings.map(({ code, where }) => [code, where.line]),
  ).toContainEqual(["csvw/required", 3]);
});

test("a table without a word on what it holds gives no casts, and says so", async () => {
  const columns = [{ name: "a", datatype: "double" }];
  const file = await read("a\n1\n2\n", { "@context": CONTEXT, tableSchema: { columns } });
  expect(Array.isArray(file) ? file : [file.casts, file.findings.map(({ code }) => code)]).toEqual([
    [],
    ["cf-dsg/no-casts"],
  ]);
});
