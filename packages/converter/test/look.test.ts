import { readdirSync } from "node:fs";
import { lookSchema } from "@wherry/contracts";
import { testData, testWithShared } from "@wherry/testkit";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { lookDocument } from "../src/understand/report/look-document.ts";
import { lookText } from "../src/understand/report/look-text.ts";
import { sameCasts } from "../src/understand/same-casts.ts";
import { plainExport, understood, understoodPath } from "./understand-samples.ts";

const validate = new Ajv2020({ allErrors: true }).compile(lookSchema);
const samples = (folder: string, names: RegExp) =>
  readdirSync(testData(folder))
    .filter((name) => names.test(name))
    .map((name) => understoodPath(testData(folder, name)));
const files = [
  ...samples("samples/messy", /^exp_/),
  ...samples("samples/openformats", /^whp_/),
  ...samples("demo", /^oe25_/),
];

test("the document of all samples is valid by its schema", () => {
  const document: unknown = JSON.parse(JSON.stringify(lookDocument(files)));
  validate(document);
  expect(validate.errors).toBeNull();
});

test("findings, casts that stand twice and warnings are in it, valid by the schema", () => {
  const cut = understood(`${plainExport({})}1.0,2.0\n`, "cut.csv");
  const again = understood(plainExport({}), "again.csv");
  const pairs = sameCasts([cut, again].flatMap(({ casts }) => casts));
  const warning = { code: "notes/not-needed", message: "1 of 1 answer settled nothing", where: {} };
  const document = lookDocument([cut, again], pairs, [warning]);
  validate(JSON.parse(JSON.stringify(document)));
  expect(validate.errors).toBeNull();
  expect(document.files[0]?.findings).toMatchObject([
    { code: "understand/row-width", where: { file: "cut.csv" } },
  ]);
  expect(document.sameCasts).toMatchObject([
    { how: "exact", casts: [{ path: "cut.csv" }, { path: "again.csv" }] },
  ]);
  expect(document.warnings).toEqual([{ ...warning, remedy: null }]);
});

test("what is not known is null and the schema refuses inventions", () => {
  const [file] = lookDocument([
    understood(plainExport({ start: "station: pier", lat: "x: 1" }), "cast.csv"),
  ]).files;
  expect(file?.casts[0]).toMatchObject({
    start: null,
    time: null,
    timeRole: "unknown",
    latitude: null,
    longitude: null,
  });
  expect(validate({ version: 1, files: [{ ...file, colour: "red" }] })).toBe(false);
});

test("units are those of the products", () => {
  const [file] = lookDocument([understood(plainExport(), "cast.csv")]).files;
  const column = (header: string) => file?.casts[0]?.columns.find((each) => each.header === header);
  expect(column("conductivity [mS/cm]")).toMatchObject({
    units: "S m-1",
    sourceUnits: "mS/cm",
    sourceFirst: 20.39,
    first: 2.039,
    sourceLast: 23.67,
  });
  expect(column("pressure [dbar]")).toMatchObject({ units: "dbar", first: 0.1, last: 2.02, missing: 0 });
  expect(column("elapsed [s]")).toMatchObject({ standardName: null, sourceFirst: 0, sourceLast: 4 });
});

describe("the text reads like a note", () => {
  const open = understood(plainExport({ start: "start: 2023-06-02 08:30:00" }), "cast.csv");

  test("questions come last, with the line to copy", () => {
    const text = lookText([open], { explain: false });
    expect(text.trimEnd().split("\n").at(-1)?.trim()).toBe(`- ${open.questions[0]?.answerWith}`);
    expect(text).not.toContain("How it is known");
  });

  test("evidence line by line on request", () => {
    const text = lookText([open], { explain: true });
    for (const { because } of open.casts[0]?.evidence ?? [])
      expect(text).toContain(because.replace(/^line \d+ says /, ""));
    const told = [...text.matchAll(/^ {6}line (\d+) /gm)].map(([, line]) => Number(line));
    expect(told.length).toBeGreaterThanOrEqual(2);
    expect(told).toEqual([...new Set(told)].sort((a, b) => a - b));
  });

  test("no colour, no trailing blanks, no stray values", () => {
    const text = lookText(files, { explain: true });
    expect(text).not.toContain("\u001b");
    expect(text).not.toMatch(/[ \t]\n|undefined|NaN|Invalid/);
  });
});

testWithShared(
  ["samples", "real", "whp", "318M20130321_00001_00002_ct1.csv"],
  "a real WHP-Exchange cast makes a valid document",
  (path) => {
    validate(JSON.parse(JSON.stringify(lookDocument([understoodPath(path)]))));
    expect(validate.errors).toBeNull();
  },
);
