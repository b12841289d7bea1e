import { ctdRules } from "@wherry/contracts";
import { parseCdl } from "@wherry/netcdf";
import { describe, expect, test } from "vitest";
import { checkDataset } from "./check-dataset.ts";
import { rulesOfDocument } from "./read-rule-document.ts";
import { tryExamples } from "./rule-tester.ts";

const rule = {
  id: "title-short",
  level: "warning",
  basis: "house",
  clause: "1",
  title: "The title is short",
  why: "Lists show one line.",
  remedy: "Shorten the title.",
  message: "the title is long",
  each: "file",
  attribute: "title",
  when: { properties: { attributes: { required: ["title"] } } },
  must: { properties: { attributes: { properties: { title: { maxLength: 10 } } } } },
  passing: [`:title = "short" ;`],
  failing: [`:title = "a title that is too long" ;`],
};
const document = {
  version: 1,
  id: "my-centre",
  title: "Rules of our centre",
  document: { name: "Our guide", edition: "2030" },
  rules: [rule],
};

test("the documents that ship are valid", async () =>
  expect((await rulesOfDocument(ctdRules, "ctd.json")).ok).toBe(true));

test("a document of one's own is read, keeps to its examples and is run beside the others", async () => {
  const read = await rulesOfDocument(document, "own.json");
  if (!read.ok) throw new Error("the document is refused");
  for (const each of read.value) expect(await tryExamples(each)).toEqual([]);
  const dataset = parseCdl(rule.failing[0] ?? "");
  if (!dataset.ok) throw new Error("no CDL");
  const findings = await checkDataset(dataset.value, { path: "a.nc", now: 0, moreRules: read.value });
  expect(findings.filter(({ rule: id }) => id.startsWith("my-centre/"))).toMatchObject([
    {
      rule: "my-centre/title-short",
      level: "warning",
      citation: { document: "Our guide", edition: "2030", clause: "1" },
      where: { file: "a.nc", attribute: "title" },
      message: "the title is long",
    },
  ]);
});

describe("a document that is wrong is refused with the place", () => {
  test.each([
    ["a word that is not known", { ...document, rule: [] }, "rules/form", "rule"],
    [
      "a level that does not exist",
      { ...document, rules: [{ ...rule, level: "fatal" }] },
      "rules/form",
      "/rules/0/level",
    ],
    [
      "a schema that is none",
      { ...document, rules: [{ ...rule, must: { type: "txt" } }] },
      "rules/schema",
      "title-short",
    ],
    ["an id given twice", { ...document, rules: [rule, rule] }, "rules/twice", "title-short"],
    ["no object", [], "rules/form", "the document"],
  ])("%s", async (_, wrong, code, words) => {
    const read = await rulesOfDocument(wrong, "own.json");
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.problems[0].code).toBe(code);
    expect(read.problems[0].message).toContain(words);
    expect(read.problems[0].where.file).toBe("own.json");
  });
});
