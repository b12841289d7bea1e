import { checkSchema } from "@wherry/contracts";
import { parseCdl } from "@wherry/netcdf";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { judgeDataset } from "../engine/check-dataset.ts";
import { type CheckedFile, checkedFile, checkFile } from "../engine/check-file.ts";
import { checkDocument, documentPieces } from "./check-document.ts";

const isCheckOutput = new Ajv2020({ strict: false }).compile(checkSchema);

async function judged(cdl: string): Promise<CheckedFile> {
  const parsed = parseCdl(cdl);
  if (!parsed.ok) throw new Error("no CDL");
  const { edition, ruleSets, findings } = await judgeDataset(parsed.value, { path: "a/cast.nc", now: 0 });
  return checkedFile("a/cast.nc", "netCDF classic", findings, ruleSets, edition);
}

test("the document keeps to its schema, with findings, without and for a file that cannot be read", async () => {
  const bad = await judged(
    `:Conventions = "CF-1.8" ; variables: float t ; t:units = "PSU" ; t:flag_values = 1 ;`,
  );
  const unread = await checkFile(new Uint8Array([1, 2, 3]), { path: "b.nc", now: 0 });
  const document: unknown = JSON.parse(JSON.stringify(checkDocument([bad, unread], ["notes.txt"])));
  expect(isCheckOutput(document), JSON.stringify(isCheckOutput.errors)).toBe(true);
  expect(document).toMatchObject({
    version: 1,
    files: [
      {
        path: "a/cast.nc",
        format: "netCDF classic",
        edition: "1.8",
        ruleSets: ["cf", "acdd", "flags", "physics", "ctd", "us-template"],
      },
      { path: "b.nc", format: null, edition: null, counts: { error: 1 } },
    ],
    skipped: ["notes.txt"],
  });
});

test("a finding carries rule, level, citation by the edition of the file, place, found, expected and remedy", async () => {
  const file = await judged(`:Conventions = "CF-1.8" ; variables: float t ; t:units = "PSU" ;`);
  const found = checkDocument([file]).files[0]?.findings.find(({ rule }) => rule === "cf/units-readable");
  expect(found).toMatchObject({
    level: "error",
    citation: { document: "CF Conventions", edition: "1.8", clause: "3.1" },
    where: { file: "a/cast.nc", variable: "t", attribute: "units" },
    found: "PSU",
    expected: "1",
  });
  expect(found?.remedy).toContain('"1"');
});

test.each([
  { files: 0, skipped: [] },
  { files: 1, skipped: ["notes.txt"] },
  { files: 3, skipped: ["a", "b"] },
])("in pieces it is the same text: $files files", async ({ files, skipped }) => {
  const file = await judged(`:Conventions = "CF-1.8" ; variables: float t ; t:units = "PSU" ;`);
  const all = Array.from({ length: files }, () => file);
  const pieces = documentPieces();
  const text = all.map((each) => pieces.file(each)).join("") + pieces.end(skipped);
  expect(text).toBe(`${JSON.stringify(checkDocument(all, skipped), null, 2)}\n`);
});

test("a level leaves findings out but counts them", async () => {
  const file = await judged(`:Conventions = "CF-1.8" ; variables: float t ; t:units = "PSU" ;`);
  const pieces = documentPieces("error");
  const [entry] = JSON.parse(pieces.file(file) + pieces.end([])).files;
  expect(new Set(entry.findings.map(({ level }: { level: string }) => level))).toEqual(new Set(["error"]));
  expect(entry.counts).toEqual(file.counts);
});
