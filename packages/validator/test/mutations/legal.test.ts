import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { runBagRules } from "../../src/engine/bag-rule.ts";
import { bagOf } from "../../src/engine/bag-rule-tester.ts";
import { checkFile, type Finding } from "../../src/index.ts";
import { bagExample, DECLARATION, MD5_ABC, SHA256_ABC } from "../../src/rules/package/bag-example.ts";
import { packageRules } from "../../src/rules/package/index.ts";
import { LEGAL } from "./legal.ts";
import { findingsOn, mutated } from "./products.ts";

const heavy = (findings: readonly Finding[]): string[] =>
  findings.filter(({ level }) => level !== "advice").map(({ rule, message }) => `${rule}: ${message}`);

describe("what the standards allow stays without error and warning", () => {
  test.each(
    LEGAL.map(([product, ...changes], index) => ({
      name: `${index + 1} ${product} ${String(changes[0]?.[0])} as ${changes[0]?.[1]}`,
      product,
      changes,
    })),
  )("$name", async ({ product, changes }) =>
    expect(heavy(await findingsOn(mutated(product, changes)))).toEqual([]),
  );
});

const LINE = `${SHA256_ABC}  data/a.txt\n`;

test.each([
  [
    "lines end with CRLF",
    { "bagit.txt": DECLARATION.replaceAll("\n", "\r\n"), "manifest-sha256.txt": LINE.replace("\n", "\r\n") },
  ],
  ["lines end with CR", { "manifest-sha256.txt": LINE.replace("\n", "\r") }],
  ["the last line does not end", { "manifest-sha256.txt": LINE.trimEnd() }],
  ["checksums in capitals", { "manifest-sha256.txt": `${SHA256_ABC.toUpperCase()} data/a.txt\n` }],
  ["a tab before the path", { "manifest-sha256.txt": `${SHA256_ABC}\tdata/a.txt\n` }],
  ["a second manifest by an old sum", { "manifest-md5.txt": `${MD5_ABC}  data/a.txt\n` }],
  ["fields of one's own", { "bag-info.txt": "Our-Field: one\nOur-Field: two\nPayload-Oxum: 3.1\n" }],
  ["a value over several lines", { "bag-info.txt": "External-Description: one\n two\n\tthree\n" }],
  ["other tag files", { "notes/read.txt": "x", "record.xml": "<a/>" }],
  ["labels in small letters", { "bag-info.txt": "payload-oxum: 3.1\nbagging-date: 2030-01-31\n" }],
])("a package in which %s is in order", async (_, change) => {
  const { findings } = await runBagRules(packageRules, await bagOf(bagExample(change)));
  expect(heavy(findings)).toEqual([]);
});

test("there are 100 of them, and no two alike", () => {
  expect(LEGAL.length).toBeGreaterThanOrEqual(100);
  expect(
    new Set(
      LEGAL.map((variation) =>
        JSON.stringify(variation, (_, each) => (each instanceof RegExp ? String(each) : each)),
      ),
    ).size,
  ).toBe(LEGAL.length);
});

// other layouts of the same kinds of data, written by another library
const folder = testData("samples", "dsg_own");
test.each(readdirSync(folder).filter((name) => name.endsWith(".nc")))("the layout of %s", async (name) => {
  const { findings } = await checkFile(readFileSync(join(folder, name)), {
    path: basename(name),
    now: 1.8e9,
  });
  expect(heavy(findings)).toEqual([]);
});
