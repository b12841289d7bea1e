import { readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { readSheet } from "./read-sheet.ts";

const complete = readFileSync(testData("sheets", "complete.yaml"), "utf8");

/** Problems of a sheet as `code line:column message | remedy`. */
function problems(text: string): string[] {
  const result = readSheet(text, "survey.yaml");
  if (result.ok) return [];
  return result.problems.map(
    ({ code, where, message, remedy }) =>
      `${code} ${where.line ?? "-"}:${where.column ?? "-"} ${message} | ${remedy ?? ""}`,
  );
}

const survey = (...lines: string[]) => ["version: 1", "survey:", "  id: s1", ...lines, ""].join("\n");

test("a complete sheet is read as it stands", () => {
  const result = readSheet(complete, "survey.yaml");
  expect(result.ok && result.value.survey.product_version).toBe("1.0.0");
  expect(result.ok && result.value.created).toBe("2024-05-20T09:00:00Z");
  expect(result.ok && result.value.instruments?.[0]?.calibration_date).toBe("2024-02-11");
  expect(result.ok && result.value.casts?.map(({ id }) => id)).toEqual([
    "EE24-01",
    "EE24-02",
    "EE24-03",
    "EE24-PIER-A",
  ]);
});

test.each([
  {
    name: "unknown key",
    text: survey("  titel: Casts"),
    want: 'sheet/unknown-key 4:3 survey has no key "titel" | Did you mean "title"?',
  },
  {
    name: "number where a text is expected",
    text: survey("  product_version: 1.0"),
    want: 'sheet/type 4:20 survey.product_version is 1, where a text is expected | Put it in quotes: "1".',
  },
  {
    name: "entry of a list without a value",
    text: survey("  references:", "    -"),
    want: "sheet/empty-value 5:6 survey.references[1] is empty | Fill it in, or put # before the line.",
  },
  {
    name: "required key without a value",
    text: survey("casts:", "  - id:", "    file: a.csv"),
    want: 'sheet/missing-key 5:5 casts[1] lacks "id" | Add id: name of the cast for good, unique in the survey, in letters, digits, points, underscores and hyphens.',
  },
  {
    name: "word outside a list",
    text: survey("people:", "  creator: { name: A, type: persn }"),
    want: 'sheet/choice 5:29 people.creator.type is "persn"; it can be person, group, institution or position | Did you mean "person"?',
  },
  {
    name: "recipe with a wrong key",
    text: survey("processing:", "  recipe:", "    layers: { with: 2 }"),
    want: 'recipe/unknown-key 6:15 processing.recipe: layers has no parameter "with" | Did you mean width?',
  },
  {
    name: "date that is none",
    text: survey("instruments:", "  - name: probe", "    calibration_date: 11.2.2024"),
    want: 'sheet/value 6:23 instruments[1].calibration_date is "11.2.2024" | Expected: date of the calibration that was in force, as 2024-02-11',
  },
  {
    name: "latitude out of range",
    text: survey("casts:", "  - { id: a, file: a.csv, latitude: 95, longitude: 3 }"),
    want: "sheet/value 5:37 casts[1].latitude is 95, which must be at most 90 | Expected: latitude of the start, decimal degrees north; goes before what the file says",
  },
  {
    name: "latitude without longitude",
    text: survey("casts:", "  - { id: a, file: a.csv, latitude: 50 }"),
    want: 'sheet/missing-key 5:5 casts[1] lacks "longitude" | Add longitude: longitude of the start, decimal degrees east; goes before what the file says.',
  },
  {
    name: "bin width that is neither auto nor a number",
    text: survey("processing:", "  bin_width: wide"),
    want: 'sheet/value 5:14 processing.bin_width is "wide" | Expected: thickness of the layers that are averaged, m (dbar if by pressure); auto takes the smallest of 0.25, 0.5, 1 and 2 with a median of at least 3 rows',
  },
  {
    name: "another version",
    text: "version: 2\nsurvey:\n  id: s1\n",
    want: "sheet/choice 1:10 version is 2; it can be 1 | ",
  },
  {
    name: "id with a blank",
    text: "version: 1\nsurvey:\n  id: my survey\n",
    want: 'sheet/value 3:7 survey.id is "my survey" | Expected: short name of the data set in letters, digits, points, underscores and hyphens; the names of all files written begin with it. Unique within the naming authority',
  },
  {
    name: "cast id given twice, but for case",
    text: survey("casts:", "  - { id: A1, file: a.csv }", "  - { id: a1, file: b.csv }"),
    want: 'sheet/repeated-id 6:11 casts[2] has the id "a1", which casts[1] has too | Give it an id of its own; letter case alone is no difference.',
  },
  {
    name: "instrument that is not listed",
    text: survey(
      "instruments:",
      "  - { id: probe-1, name: probe }",
      "casts:",
      "  - { id: a, file: a.csv, instrument: prob-1 }",
    ),
    want: 'sheet/unknown-name 7:39 casts[1].instrument is "prob-1", but instruments has no entry with that id | Did you mean "probe-1"?',
  },
  {
    name: "unit of another quantity",
    text: survey(
      "instruments:",
      "  - name: probe",
      "    sensors: { temperature: { accuracy: 0.1, units: dbar } }",
    ),
    want: 'sheet/units 6:53 instruments[1].sensors.temperature.units is "dbar", which is not a unit of temperature | Give the numbers in degree_C or a unit that converts to it.',
  },
  {
    name: "no survey",
    text: "version: 1\n",
    want: 'sheet/missing-key 1:1 the sheet lacks "survey" | Add survey: what the data set is called and how it stands in the world.',
  },
])("$name", ({ text, want }) => {
  expect(problems(text)).toEqual([want]);
});

describe("texts that are no sheet", () => {
  test.each([
    ["empty", "", "sheet/no-keys"],
    ["a sentence", "hello there", "sheet/no-keys"],
    ["a tab for indentation", "version: 1\nsurvey:\n\tid: s1\n", "sheet/yaml"],
    ["a quote left open", 'version: 1\nsurvey:\n  id: "s1\n', "sheet/yaml"],
    ["a key given twice", survey("  id: s2"), "sheet/yaml"],
    ["references that explode", explosion(), "sheet/references"],
    ["binary", "\u0000\u0001\u0002", "sheet/"],
  ])("%s", (_, text, code) => {
    expect(problems(text).join()).toContain(code);
  });
});

test("a key without a value counts as left out", () => {
  const result = readSheet(survey("  title:", "people:", "  creator: { name: A, email: }"), "survey.yaml");
  expect(result.ok && result.value).toEqual({
    version: 1,
    survey: { id: "s1" },
    people: { creator: { name: "A" } },
  });
});

test("every problem is told at once", () => {
  expect(problems(survey("  titel: x", "  sumary: y", "people:", "  creator: { nam: A }"))).toHaveLength(4);
});

test("the bytes before the text do not matter", () => {
  expect(problems(`\uFEFF${complete}`)).toEqual([]);
  expect(problems(complete.replaceAll("\n", "\r\n"))).toEqual([]);
});

function explosion(): string {
  const levels = Array.from(
    { length: 12 },
    (_, level) => `a${level + 1}: &a${level + 1} [${Array(9).fill(`*a${level}`).join(", ")}]`,
  );
  return ["a0: &a0 x", ...levels, ""].join("\n");
}
