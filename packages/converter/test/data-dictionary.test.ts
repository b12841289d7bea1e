import { layerMeans } from "@wherry/core";
import Papa from "papaparse";
import { expect, test } from "vitest";
import { csvChunks } from "../src/writers/csv-product.ts";
import { dataDictionary } from "../src/writers/data-dictionary.ts";
import { surveyProducts } from "../src/writers/survey-products.ts";
import { referenceCasts } from "./reference-casts.ts";
import { referenceContext } from "./reference-sheet.ts";

const context = referenceContext();
const casts = [...(await referenceCasts("full")), ...(await referenceCasts("series"))];
const layers = new Map(
  casts
    .filter(({ kind }) => kind === "profile")
    .map((cast) => [cast.id, layerMeans(cast, { width: 0.5, coordinate: "depth", direction: "down" })]),
);

const dictionary = dataDictionary();
const headers = new Map<string, string[]>();
for (const { kind, stem, dataset } of surveyProducts({ casts, layers, context })) {
  const { chunks, columns } = await csvChunks(dataset, `${stem}.csv`);
  dictionary.add(kind, stem, dataset, columns);
  headers.set(stem, Papa.parse<string[]>([...chunks].join("")).data[0]!);
}
const sections = new Map(
  dictionary
    .text()
    .split(/^(?=.+\.csv\n-+$)/m)
    .slice(1)
    .map((section) => [section.split(".csv")[0]!, section]),
);

test("every file has its section", () => {
  expect([...sections.keys()]).toEqual([...headers.keys()]);
});

test.each([...headers])("every column of %s is described, in order", (stem, names) => {
  const described = [...sections.get(stem)!.matchAll(/\n\n(\S+)\n {4}\S/g)].map(([, name]) => name);
  expect(described).toEqual(names);
});

test("codes are spelled out, by IOC Manuals and Guides 54", () => {
  expect(sections.get([...headers.keys()][0]!)).toContain(
    "codes: 1 good, 2 not evaluated, 3 questionable, 4 bad, 9 missing",
  );
});

test("nothing added, no page", () => {
  expect(dataDictionary().text()).toBe("");
});
