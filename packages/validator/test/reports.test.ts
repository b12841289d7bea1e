import { readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import { Ajv2020 } from "ajv/dist/2020.js";
import addFormats from "ajv-formats";
import { beforeAll, describe, expect, test } from "vitest";
import {
  type CheckedFile,
  checkFile,
  checkText,
  htmlPage,
  junitText,
  letterText,
  sarifDocument,
  waiverDesk,
  waiversOf,
} from "../src/index.ts";

const NOW = Date.parse("2026-11-24T00:00:00Z") / 1000;
const schema = JSON.parse(
  readFileSync(new URL("./sarif-part.schema.json", import.meta.url), "utf8"),
) as object;

let files: CheckedFile[] = [];
beforeAll(async () => {
  const sample = (name: string) => readFileSync(testData("samples", "planted", name));
  files = [
    await checkFile(sample("sub_04.nc"), { path: "given data/sub_04.nc", now: NOW }),
    await checkFile(sample("sub_06.nc"), { path: "sub_06.nc", now: NOW }),
    await checkFile(new TextEncoder().encode("a,b\n1\n"), { path: "a & <b>.csv", now: NOW }),
    await checkFile(new Uint8Array(), { path: "empty.nc", now: NOW }),
  ];
});

/** Names of the elements that are open at the end; throws at the first tag that closes another one. */
function openElements(xml: string): string[] {
  const open: string[] = [];
  const body = xml.replace(/<\?.*?\?>|<!doctype[^>]*>/g, "").replace(/<style>[\s\S]*?<\/style>/g, "");
  expect(body.replace(/<\/?[A-Za-z][\w-]*(?:\s+[\w-]+(?:="[^"<]*")?)*\s*\/?>/g, "")).not.toMatch(/[<>]/);
  expect(body.replace(/&(?:amp|lt|gt|quot|#39);/g, "")).not.toContain("&");
  for (const [, closing, name = "", single] of body.matchAll(/<(\/?)([A-Za-z][\w-]*)[^>]*?(\/?)>/g)) {
    if (closing === "/") expect(open.pop()).toBe(name);
    else if (single !== "/" && name !== "meta") open.push(name);
  }
  return open;
}

test("SARIF keeps to the standard, and each result to its rule", () => {
  const document = sarifDocument(files, { version: "0.1.0" });
  const ajv = new Ajv2020({ allErrors: true, strict: false });
  addFormats.default(ajv);
  const validate = ajv.compile(schema);
  validate(document);
  expect(validate.errors).toBeNull();
  const [run] = document.runs;
  const rules = run?.tool.driver.rules ?? [];
  const results = run?.results ?? [];
  expect(results).toHaveLength(files.reduce((sum, { findings }) => sum + findings.length, 0));
  for (const { ruleId, ruleIndex } of results) expect(rules[ruleIndex]?.id).toBe(ruleId);
  const slip = results.find(({ ruleId }) => ruleId === "physics/pressure-depth");
  expect(slip).toMatchObject({
    level: "error",
    locations: [
      {
        physicalLocation: { artifactLocation: { uri: "given%20data/sub_04.nc" } },
        logicalLocations: [{ fullyQualifiedName: "pressure" }],
      },
    ],
  });
});

test("JUnit is well-formed, and its sums are those of its cases", () => {
  const xml = junitText(files);
  expect(openElements(xml)).toEqual([]);
  const count = (pattern: RegExp) => [...xml.matchAll(pattern)].length;
  const [, tests, failures, errors] =
    /<testsuites name="wherry check" tests="(\d+)" failures="(\d+)" errors="(\d+)">/.exec(xml) ?? [];
  expect(Number(tests)).toBe(count(/<testcase /g));
  expect(Number(failures)).toBe(count(/<failure /g));
  expect(Number(errors)).toBe(count(/<error /g));
  expect(errors).toBe("1");
  expect(xml).toContain("a &amp; &lt;b&gt;.csv");
});

test("the page stands alone and shows what markup in names would break", () => {
  const page = htmlPage(files);
  expect(openElements(page)).toEqual([]);
  expect(page).not.toMatch(/<script|<link|<img|https?:|url\(|@import/);
  expect(page).toContain("a &amp; &lt;b&gt;.csv");
  expect(page).toContain("physics/pressure-depth");
  expect(page).toMatch(/not for navigation/);
});

test("the letter names file, place, what to do and rule", () => {
  const letter = letterText(files);
  expect(letter).toContain("## sub\\_04.nc");
  expect(letter).toContain("rule `physics/pressure-depth`");
  expect(letter).toMatch(/^ {2}\*What to do:\*/m);
  expect(letter).toContain("could not be read");
});

describe("waivers", () => {
  const waiver = { rule: "physics/pressure-depth", file: "sub_04.nc", reason: "known", by: "K. Invented" };
  const apply = async (...waivers: object[]) => {
    const read = await waiversOf({ version: 1, waivers }, "waivers.json");
    if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("; "));
    const desk = waiverDesk(read.value, { now: NOW, file: "waivers.json" });
    return { files: files.map((file) => desk.judge(file)), warnings: desk.warnings() };
  };

  test("an accepted finding is told apart and no longer counted", async () => {
    const { files: judged, warnings } = await apply(waiver);
    expect(warnings).toEqual([]);
    expect(judged[0]?.waived?.map(({ finding }) => finding.rule)).toEqual(["physics/pressure-depth"]);
    expect(judged[0]?.counts.error).toBe((files[0]?.counts.error ?? 0) - 1);
    expect(checkText(judged)).toContain("1 finding accepted by waivers");
    expect(letterText(judged)).toContain("accepted by K. Invented");
    const results = sarifDocument(judged, { version: "0" }).runs[0]?.results ?? [];
    expect(results.filter((result) => "suppressions" in result)).toHaveLength(1);
  });

  test.each([
    [{ ...waiver, until: "2026-11-24" }, 0, undefined],
    [{ ...waiver, until: "2026-11-23" }, 1, "waivers/expired"],
    [{ ...waiver, variable: "depth" }, 1, "waivers/unused"],
    [{ ...waiver, file: "sub_06.nc" }, 1, "waivers/unused"],
  ])("%j", async (each, kept, warning) => {
    const { files: judged, warnings } = await apply(each);
    const still = judged[0]?.findings.filter(({ rule }) => rule === waiver.rule);
    expect(still).toHaveLength(kept);
    expect(warnings[0]?.code).toBe(warning);
  });

  test("a waiver without a reason is refused", async () => {
    const read = await waiversOf(
      { version: 1, waivers: [{ rule: "cf/names", by: "K. Invented" }] },
      "w.json",
    );
    expect(read.ok ? [] : read.problems.map(({ code, where }) => [code, where.file])).toEqual([
      ["waivers/form", "w.json"],
    ]);
  });
});
