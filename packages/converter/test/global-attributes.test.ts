import { type Cast, layerMeans } from "@wherry/core";
import { expect, test } from "vitest";
import { binnedDataset } from "../src/writers/binned-dataset.ts";
import { fullDataset } from "../src/writers/full-dataset.ts";
import { historyText } from "../src/writers/history.ts";
import type { WritingContext } from "../src/writers/writing-context.ts";
import { numbers, referenceCasts } from "./reference-casts.ts";
import { referenceContext } from "./reference-sheet.ts";

const context = referenceContext();
const casts = await referenceCasts("full");

const withSurvey = (survey: Partial<WritingContext["sheet"]["survey"]>): WritingContext => ({
  ...context,
  sheet: { ...context.sheet, survey: { ...context.sheet.survey, ...survey } },
});
const attribute = (name: string, own: WritingContext = context, of: readonly Cast[] = casts) =>
  fullDataset(of, own).attributes.get(name)?.value;

const stepped = (cast: Cast, ...words: readonly string[]): Cast => ({
  ...cast,
  steps: words.map((text, index) => ({ step: `step ${index}`, parameters: {}, counts: {}, words: text })),
});

test("history has a line for each step, with the moment and the program", () => {
  const text = historyText(
    [stepped(casts[0]!, "same", "one"), stepped(casts[1]!, "same", "two")],
    "2024-05-20T09:00:00Z",
    "wherry 0.1.0",
    ["written"],
  );
  const start = "2024-05-20T09:00:00Z wherry 0.1.0: ";
  expect(text.split("\n")).toEqual(
    ["read", "same", "one (EE24-01); two (EE24-02)", "written"].map((line) => start + line),
  );
});

test("a step told differently for many casts is told in general", () => {
  const many = [1, 2, 3, 4].map((number) => stepped(casts[0]!, `offset ${number}\nsubtracted`));
  expect(historyText(many, "T", "p", [])).toBe(
    "T p: read\nT p: step 0: 4 casts, the numbers of each stand in the processing record",
  );
});

test("own key words name no vocabulary but the one that is given", () => {
  expect(attribute("keywords_vocabulary")).toBe("CF Standard Name Table v83");
  expect(attribute("keywords_vocabulary", withSurvey({ keywords: ["estuary"] }))).toBeUndefined();
  expect(String(attribute("keywords", withSurvey({ keywords: ["estuary"] })))).toMatch(/, estuary$/);
  expect(attribute("keywords_vocabulary", withSurvey({ keywords: ["x"], keywords_vocabulary: "ours" }))).toBe(
    "CF Standard Name Table v83, ours",
  );
});

test("every product carries the caution, once", () => {
  const words = (comment: string) => attribute("comment", withSurvey({ comment }));
  expect(words("Windy")).toBe("Windy. Not for navigation or diving decisions.");
  expect(words("Not for navigation or diving.")).toBe("Not for navigation or diving.");
});

test("what the sheet does not tell is left out, never empty", () => {
  const bare = { ...context, sheet: { version: 1 as const, survey: { id: "s" } } };
  const dataset = fullDataset(casts, bare);
  for (const name of ["title", "summary", "license", "creator_name", "contributor_name", "platform"])
    expect(dataset.attributes.has(name)).toBe(false);
  for (const { value } of dataset.attributes.values()) expect(value).not.toBe("");
  expect(dataset.variables.get("temperature")?.attributes.has("platform")).toBe(false);
});

test("times and places are those of the casts", () => {
  // read off full.cdl: the second cast starts at 1715673935 s (2024-05-14T08:05:35Z)
  const [, second] = casts;
  expect(attribute("time_coverage_start", context, [second!])).toBe("2024-05-14T08:05:35Z");
  expect(attribute("geospatial_bounds", context, [second!])).toBe("POINT (50.34655 3.10412)");
  const late = { ...second!, id: "late", endTime: second!.time + 90061.5, elapsed: null };
  expect(attribute("time_coverage_duration", context, [late])).toBe("P1DT1H1M1.5S");
});

test("sensor uncertainties stand beside layer means too", async () => {
  const [probe] = context.sheet.instruments!;
  const uncertain = {
    ...context,
    sheet: {
      ...context.sheet,
      instruments: [{ ...probe!, sensors: { temperature: { uncertainty: 5, units: "mK" } } }],
    },
  };
  const means = new Map([
    [casts[0]!.id, layerMeans(casts[0]!, { width: 0.5, coordinate: "depth", direction: "down" })],
  ]);
  const dataset = binnedDataset([casts[0]!], means, uncertain)!;
  const temperature = await numbers(dataset, "temperature");
  expect(await numbers(dataset, "temperature_uncertainty")).toEqual(
    temperature.map((value) => (Number.isNaN(value) ? Number.NaN : Math.fround(0.005))),
  );
});
