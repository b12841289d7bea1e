import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { check } from "./check.ts";
import { chooseRules } from "./rule-files.ts";

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "rules-"));
});
afterAll(() => rm(folder, { recursive: true }));

const DOCUMENT = {
  version: 1,
  id: "our-centre",
  title: "Rules of a centre",
  document: { name: "Invented guide", edition: "2030" },
  rules: [
    {
      id: "vessel",
      level: "warning",
      basis: "house",
      clause: "2",
      title: "The file names the boat",
      why: "Casts are found by their boat.",
      remedy: "Add boat.",
      message: "the boat is not named",
      each: "file",
      attribute: "boat",
      must: { properties: { attributes: { required: ["boat"] } } },
      passing: [`:boat = "Reed" ;`],
      failing: [":title = 1 ;"],
    },
  ],
};

const put = async (name: string, text: string): Promise<string> => {
  const path = join(folder, name);
  await writeFile(path, text);
  return path;
};

/** The smallest classic file: no dimension, attribute or variable (NetCDF classic format specification). */
const emptyFile = Uint8Array.from([0x43, 0x44, 0x46, 1, ...new Array<number>(28).fill(0)]);

test("a set by its name and a document by its path are used together", async () => {
  const path = await put("own.json", JSON.stringify(DOCUMENT));
  const file = join(folder, "empty.nc");
  await writeFile(file, emptyFile);
  const outcome = await check([file], { rules: ["cf", path], now: 0 });
  if (!outcome.ok) throw new Error("refused");
  const [checked] = outcome.value.files;
  expect(checked?.ruleSets).toEqual(["cf", "our-centre"]);
  expect(checked?.findings.map(({ rule }) => rule)).toEqual(
    expect.arrayContaining(["cf/conventions", "our-centre/vessel"]),
  );
});

test("what is wrong with --rules is told with its place, all of it", async () => {
  const broken = await put("broken.json", '{\n  "version": 1,\n  oops\n}');
  const form = await put("form.json", JSON.stringify({ ...DOCUMENT, colour: "blue" }));
  const taken = await put("taken.json", JSON.stringify({ ...DOCUMENT, id: "cf" }));
  const absent = join(folder, "absent.json");
  const chosen = await chooseRules(["adcc", broken, form, taken, absent]);
  if (chosen.ok) throw new Error("accepted");
  expect(chosen.problems.map(({ code, where }) => [code, where.file, where.line])).toEqual([
    ["check/rule-set", undefined, undefined],
    ["json/form", broken, 3],
    ["rules/form", form, undefined],
    ["rules/set-taken", taken, undefined],
    ["io/enoent", absent, undefined],
  ]);
  expect(chosen.problems[0]?.remedy).toMatch(/acdd/);
  expect(chosen.problems[2]?.message).toMatch(/colour/);
});

test("two documents with one id are not mixed", async () => {
  const one = await put("one.json", JSON.stringify(DOCUMENT));
  const two = await put("two.json", JSON.stringify(DOCUMENT));
  const chosen = await chooseRules([one, two]);
  expect(chosen.ok ? [] : chosen.problems.map(({ code }) => code)).toEqual(["rules/set-taken"]);
});
