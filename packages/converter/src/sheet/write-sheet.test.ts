import { readFileSync } from "node:fs";
import type { Cast } from "@wherry/core";
import type { Question, UnderstoodFile } from "@wherry/formats";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { completeSheet } from "./cast-ids.ts";
import { checkSheet } from "./check-sheet.ts";
import { completeSheetText } from "./complete-sheet-text.ts";
import { readSheet } from "./read-sheet.ts";
import { writeSheet } from "./write-sheet.ts";

const hash = (digit: string) => digit.repeat(64);

function cast(id: string, path: string, sha256: string, serialNumber: string | null = "T-1"): Cast {
  return {
    id,
    kind: "profile",
    state: { processing: "raw", pressureZeroed: false, lagCorrected: false, direction: "both" },
    rows: 0,
    time: Number.NaN,
    timeRole: "unknown",
    endTime: Number.NaN,
    elapsed: null,
    start: null,
    end: null,
    fixedDepth: null,
    instrument: { model: serialNumber && "Probe: one", serialNumber, ratedPressure: null },
    notes: [],
    columns: new Map(),
    texts: new Map(),
    lines: new Uint32Array(),
    source: { path, sha256 },
    evidence: [],
    pressureOffset: Number.NaN,
    segments: [],
    steps: [],
  };
}

const file = (path: string, casts: readonly Cast[], questions: readonly Question[] = []): UnderstoodFile => ({
  path,
  format: "delimited text",
  sha256: casts[0]?.source.sha256 ?? hash("0"),
  encoding: "utf-8",
  lineEnding: "LF",
  delimiter: ",",
  decimal: ".",
  missingMarkers: [],
  casts,
  questions,
  findings: [],
});

function read(text: string) {
  const result = readSheet(text, "survey.yaml");
  if (!result.ok) throw new Error(`${JSON.stringify(result.problems, null, 1)}\n${text}`);
  return result.value;
}

const isNew = { created: "2024-05-20T09:00:00Z", surveyId: "bay-2024" };

describe("a new sheet", () => {
  const files = [
    file("b/two.csv", [cast("A", "b/two.csv", hash("2")), cast("B", "b/two.csv", hash("2"), null)]),
    file(
      "a/one.csv",
      [cast("north: pier", "a/one.csv", hash("1"))],
      [
        {
          about: "timeZone",
          text: "Which zone are\nthe times in?",
          where: { file: "a/one.csv", line: 3 },
          casts: ["north: pier"],
          candidates: ["UTC", "+02:00"],
          answerWith: '{ about: timeZone, where: "one.csv", value: "UTC" }',
        },
      ],
    ),
  ];
  const text = writeSheet(files, isNew);

  test("is accepted as it is", () => {
    const sheet = read(text);
    expect(sheet.created).toBe("2024-05-20T09:00:00Z");
    expect(sheet.survey).toEqual({ id: "bay-2024" });
    expect(sheet.casts).toEqual([
      { id: "north-pier", file: "one.csv", sha256: hash("1") },
      { id: "A", file: "two.csv", number: 1, sha256: hash("2") },
      { id: "B", file: "two.csv", number: 2, sha256: hash("2") },
    ]);
    expect(sheet.instruments?.map(({ serial_number, model }) => [model, serial_number])).toEqual([
      ["Probe: one", "T-1"],
      [undefined, undefined],
    ]);
    expect(sheet.answers).toBeUndefined();
  });

  test("is the same whatever the order of the files", () => {
    expect(read(writeSheet([...files].reverse(), isNew)).casts).toEqual(read(text).casts);
  });

  test("holds open questions as answers to be made", () => {
    expect(text).toContain("#   # Which zone are the times in? (one.csv, line 3)");
    expect(text).toContain("#   # Possible answers: UTC, +02:00");
    const answered = text.replaceAll(/^# (answers:| {2}.*about:.*)$/gm, "$1");
    expect(read(answered).answers).toEqual([{ about: "timeZone", where: "one.csv", value: "UTC" }]);
  });

  test("asks for everything else, and takes it when the # goes", () => {
    const filled = text
      .replace("  # title:", "  title: Casts of the bay")
      .replace("  # keywords: []", "  keywords: [bay]");
    expect(read(filled).survey).toMatchObject({ title: "Casts of the bay", keywords: ["bay"] });
    const people = text.replaceAll(/^# (people:|( {2})+(creator|name|email):.*)$/gm, "$1");
    expect(people).toMatch(/^people:$/m);
    expect(people).toMatch(/^ {2}creator:$/m);
    expect(people).toMatch(/^ {4}email: /m);
  });

  test("lacks nothing but names when every # goes", () => {
    const open = text.replaceAll(/^( *)# ((?: {2})*(?:- )?[a-z_]+:.*)$/gm, "$1$2");
    expect(open).toMatch(/^ {4}calibration_date: /m);
    expect(open).toMatch(/^ {4}sensors: /m);
    const result = readSheet(open, "survey.yaml");
    const codes = result.ok ? [] : result.problems.map(({ code, message }) => `${code} ${message}`);
    expect(codes).toEqual([
      'sheet/missing-key survey.access lacks "right"',
      'sheet/missing-key survey.funding[1] lacks "funder"',
      'sheet/missing-key survey.related[1] lacks "relation"',
      'sheet/missing-key survey.related[1] lacks "identifier"',
      'sheet/missing-key people.creator lacks "name"',
      'sheet/missing-key people.publisher lacks "name"',
      'sheet/missing-key people.contributors[1] lacks "name"',
      'sheet/missing-key people.contributors[1] lacks "role"',
      'sheet/missing-key platforms[1] lacks "name"',
      'sheet/missing-key instruments[1].clock[1] lacks "instrument"',
      'sheet/missing-key instruments[1].clock[1] lacks "true"',
      'sheet/missing-key instruments[2].clock[1] lacks "instrument"',
      'sheet/missing-key instruments[2].clock[1] lacks "true"',
    ]);
  });

  test("names its schema for editors, in the forms that two families of them read", () => {
    const lines = writeSheet([], { ...isNew, schema: "./x.schema.json" }).split("\n");
    expect(lines.slice(0, 2)).toEqual([
      "# yaml-language-server: $schema=./x.schema.json",
      "# $schema: ./x.schema.json",
    ]);
  });

  test("of no file is still a sheet", () => {
    expect(read(writeSheet([], isNew)).casts).toEqual([]);
  });
});

describe("ids of casts", () => {
  const sheet = read("version: 1\nsurvey: { id: s }\n");
  const ids = (...casts: Cast[]) => completeSheet(sheet, casts).casts.map(({ id }) => id);

  test("are the stated names where they are unique", () => {
    expect(ids(cast("P1", "x.csv", hash("1")), cast("P2", "y.csv", hash("2")))).toEqual(["P1", "P2"]);
  });

  test("are stems where names are not unique, but for letter case", () => {
    const casts = [cast("cast", "x.csv", hash("1")), cast("Cast", "y.tab.csv", hash("2"))];
    expect(ids(...casts)).toEqual(["x", "y.tab"]);
    expect(ids(...[...casts].reverse())).toEqual(["y.tab", "x"]);
  });

  test("are numbered where one file has several casts", () => {
    const casts = ["1", "1", "1"].map((id) => cast(id, "day.csv", hash("1")));
    expect(ids(...casts)).toEqual(["day-1", "day-2", "day-3"]);
  });

  test("never collide: same stem in two folders", () => {
    const casts = [cast("c", "b/day.csv", hash("2")), cast("c", "a/day.csv", hash("1"))];
    expect(ids(...casts)).toEqual(["day-2", "day"]);
    expect(ids(...[...casts].reverse())).toEqual(["day", "day-2"]);
  });

  test("hold only the characters of ids", () => {
    expect(ids(cast("Bucht Süd 3/4 °", "x.csv", hash("1")))).toEqual(["Bucht-Sud-3-4"]);
    expect(ids(cast("東", "東.csv", hash("1")))).toEqual(["cast"]);
  });
});

describe("completing a sheet", () => {
  const text = [
    "# my own words",
    "version: 1",
    "survey: { id: s }",
    "casts:",
    `  - { id: P1, file: x.csv, sha256: "${hash("1")}", latitude: 50, longitude: 3, notes: windy } # keep`,
    "  - id: P2",
    "    file: y.csv",
    "  - { id: P3, file: gone.csv }",
    "",
  ].join("\n");
  const sheet = read(text);

  test("a listed cast is known by its hash under another name, or by its name", () => {
    const done = completeSheet(sheet, [
      cast("other", "renamed.csv", hash("1")),
      cast("P9", "in/y.csv", hash("2")),
      cast("P4", "new.csv", hash("4")),
    ]);
    expect(done.casts.map(({ id }) => id)).toEqual(["P1", "P2", "P4"]);
    expect(done.added).toEqual([{ id: "P4", file: "new.csv", sha256: hash("4") }]);
    expect(done.unused.map(({ id }) => id)).toEqual(["P3"]);
    expect(done.casts[0]?.start).toMatchObject({ latitude: 50, longitude: 3 });
    expect(done.casts[0]?.evidence.map(({ fact, certainty }) => `${fact} ${certainty}`)).toEqual([
      "latitude answered",
      "longitude answered",
    ]);
    expect(done.warnings).toEqual([]);
    expect(done.sheet.casts).toHaveLength(4);
  });

  test("a changed file keeps its id and is told", () => {
    const done = completeSheet(sheet, [cast("x", "x.csv", hash("7"))]);
    expect(done.casts[0]?.id).toBe("P1");
    expect(done.warnings.map(({ code }) => code)).toEqual(["sheet/source-changed"]);
  });

  test("a copy under another name is told", () => {
    const done = completeSheet(sheet, [cast("x", "x.csv", hash("1")), cast("x", "copy of x.csv", hash("1"))]);
    expect(done.warnings.map(({ code }) => code)).toEqual(["sheet/same-content"]);
    expect(done.casts.map(({ id }) => id)).toEqual(["P1", "x"]);
  });

  test("a new cast never takes an id that is listed", () => {
    expect(completeSheet(sheet, [cast("p3", "new.csv", hash("5"))]).casts[0]?.id).toBe("new");
  });

  test("the text keeps the person's words and gains the lines", () => {
    const { added } = completeSheet(sheet, [cast("P4", "new.csv", hash("4"))]);
    const copy = completeSheetText(text, { sheet, added });
    expect(copy).toContain("# my own words");
    expect(copy).toContain("# keep");
    expect(read(copy).casts).toEqual([...sheet.casts!, ...added]);
    const bare = { version: 1 as const, survey: { id: "s" } };
    expect(completeSheetText(text, { sheet: bare, added: [] })).toBe(text);
    expect(read(completeSheetText("version: 1\nsurvey: { id: s }\n", { sheet: bare, added })).casts).toEqual(
      added,
    );
    expect(
      read(completeSheetText("version: 1\nsurvey: { id: s }\ncasts: []\n", { sheet: bare, added })).casts,
    ).toEqual(added);
  });
});

test("what a sheet lacks for the general target", () => {
  const complete = read(readFileSync(testData("sheets", "complete.yaml"), "utf8"));
  expect(checkSheet(complete)).toEqual([]);
  const bare = checkSheet(read('version: 1\nsurvey: { id: s, title: "TBD" }\n'));
  expect(bare.filter(({ level }) => level === "error").map(({ key }) => key)).toEqual([
    "created",
    "survey.title",
    "survey.summary",
  ]);
  expect(bare.map(({ attribute }) => attribute)).toEqual(
    expect.arrayContaining(["creator_name", "publisher_email", "license", "institution", "platform"]),
  );
  expect(bare[1]?.remedy).toBe("Add survey.title: One short phrase for people.");
});

test("whether a person agreed to be named is asked, and what funding and identifiers tell is not asked again", () => {
  const lacks = (people: string, survey = "") =>
    checkSheet(read(`version: 1\nsurvey: { id: s${survey} }\npeople: ${people}\n`)).map(({ key }) => key);
  const person = "{ creator: { name: Ines Invented, type: person } }";
  expect(lacks(person)).toEqual(
    expect.arrayContaining(["people.creator.consent", "people.creator.orcid", "people.creator.url"]),
  );
  const told = lacks(
    "{ creator: { name: Ines Invented, type: person, consent: true, orcid: 0000-0002-1825-0097 } }",
    ", funding: [{ funder: Invented Fund }]",
  );
  expect(told).not.toContain("people.creator.consent");
  expect(told).not.toContain("people.creator.url");
  expect(told).not.toContain("survey.acknowledgement");
  expect(lacks("{ creator: { name: Crew, type: group } }")).not.toContain("people.creator.consent");
});
