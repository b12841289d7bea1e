import { expect, test } from "vitest";
import { checkFile } from "../../engine/check-file.ts";
import { type CsvExample, runCsvRules } from "../../engine/csv-rule.ts";
import { readCsvTable } from "../../engine/csv-table.ts";
import { csvRules } from "./index.ts";

const encode = (text: string) => new TextEncoder().encode(text);

/** Bytes of a text in windows-1252, of letters whose codes are those of Unicode. */
const encodeOld = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

const tableOf = ({ csv, metadata, encoding }: CsvExample) =>
  readCsvTable(
    encoding === undefined ? encode(csv) : encodeOld(csv),
    metadata === null ? null : encode(metadata),
    "example.csv",
  );

test.each(csvRules.map((rule) => ({ id: rule.id, rule })))(
  "$id keeps to its own examples",
  async ({ rule }) => {
    for (const example of rule.passing) expect(await runCsvRules([rule], tableOf(example))).toEqual([]);
    for (const example of rule.failing) {
      const findings = await runCsvRules([rule], tableOf(example));
      expect(findings.map(({ where, key }) => ({ where, message: key }))).toEqual([
        { where: example.where, message: example.message },
      ]);
      for (const { message } of findings) expect(message).not.toMatch(/\{\w+\}/);
    }
    const shown = new Set(rule.failing.map(({ message }) => message));
    expect(Object.keys(rule.messages).filter((key) => !shown.has(key))).toEqual([]);
  },
);

const metadata = encode(
  JSON.stringify({
    "@context": "http://www.w3.org/ns/csvw",
    url: "a.csv",
    tableSchema: { columns: [{ titles: "grün" }] },
  }),
);

test("a table in another encoding is an error", async () => {
  const checked = await checkFile(encodeOld("gr\u00fcn\r\n1\r\n"), { path: "a.csv", now: 0, metadata });
  expect(checked.findings.map(({ rule }) => rule)).toEqual(["csv/encoding"]);
});

test("a table without fault has its format and no finding", async () => {
  const checked = await checkFile(encode("grün\r\n1\r\n"), { path: "out/a.csv", now: 0, metadata });
  expect(checked).toMatchObject({ format: "CSV", edition: null, ruleSets: ["csv"], findings: [] });
});

test.each([
  ["an empty table", ""],
  ["bytes that are no text", "\0\u0001\u0002"],
])("%s cannot be read", async (_, text) => {
  const checked = await checkFile(encode(text), { path: "a.csv", now: 0, metadata });
  expect(checked.format).toBeNull();
  expect(checked.findings).toHaveLength(1);
});
