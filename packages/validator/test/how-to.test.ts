import { readFileSync } from "node:fs";
import { parseCdl } from "@wherry/netcdf";
import { expect, test } from "vitest";
import { checkDataset, explainRule, rulesOfDocument, tryExamples } from "../src/index.ts";

const page = readFileSync(
  new URL("../../../docs/how-to/write-rules-for-your-archive.md", import.meta.url),
  "utf8",
);
const [, example = ""] = /```json\n([\s\S]*?)```/.exec(page) ?? [];

async function rules() {
  const read = await rulesOfDocument(JSON.parse(example), "harbour.json");
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("; "));
  return read.value;
}

test("the rules of the page keep to their examples", async () => {
  expect((await rules()).map(({ id }) => id)).toEqual(["harbour/station", "harbour/temperature-unit"]);
  for (const rule of await rules()) expect(await tryExamples(rule)).toEqual([]);
});

test("they are run beside the sets that are named, on the files that they are for", async () => {
  const told = async (cdl: string) => {
    const dataset = parseCdl(cdl);
    if (!dataset.ok) throw new Error("no CDL");
    const context = { path: "casts.nc", now: 1.8e9, ruleSets: ["harbour"], moreRules: await rules() };
    return (await checkDataset(dataset.value, context)).map(({ rule, level }) => `${level} ${rule}`);
  };
  expect(await told(':featureType = "profile" ;')).toEqual(["error harbour/station"]);
  expect(await told(':title = "no casts" ;')).toEqual([]);
});

test("explain tells of them", async () => {
  const told = explainRule("harbour/station", await rules());
  expect(told.ok && told.value).toContain("Harbour Archive guide to depositors 3 (2030), section 2.1");
});
