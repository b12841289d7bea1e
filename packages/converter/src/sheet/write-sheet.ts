import type { ListedCast } from "@wherry/contracts";
import type { Cast } from "@wherry/core";
import type { Answer, Question, UnderstoodFile } from "@wherry/formats";
import { stringify } from "yaml";
import { gatherQuestions } from "../understand/gather-questions.ts";
import { completeSheet, fileName } from "./cast-ids.ts";
import { resolved, type SchemaNode, schemaAt } from "./sheet-schema.ts";

/** What a new sheet needs beside the files. */
export interface NewSheet {
  /** Moment of writing, ISO 8601 UTC. */
  readonly created: string;
  /** Short name of the data set, `[A-Za-z0-9._-]`. */
  readonly surveyId: string;
  /** Path of the schema from the sheet, by which editors complete and check it. */
  readonly schema?: string;
  /** Lines for the casts, as `completeSheet` adds them; without, they tell what the files do. */
  readonly casts?: readonly ListedCast[];
  /** Paths from the sheet of notes files and of the field log that the reading rested on. */
  readonly notes?: readonly string[];
  readonly fieldLog?: string;
  /** Answers that were given already. */
  readonly answers?: readonly Answer[];
  /** Questions beside those of the files. */
  readonly questions?: readonly Question[];
}

/**
 * A survey sheet filled with what the files tell. What only a person knows stands in it as a line behind `#`
 * with what is asked; open questions stand as answers behind `#`, ready to be completed.
 *
 * @returns YAML that `readSheet` accepts as it is
 */
export function writeSheet(
  files: readonly UnderstoodFile[],
  { created, surveyId, schema, notes = [], fieldLog, answers = [], questions = [], ...given }: NewSheet,
): string {
  const casts = files.flatMap((file) => file.casts);
  const listed = given.casts ?? completeSheet({ version: 1, survey: { id: surveyId } }, casts).added;
  return [
    ...(schema === undefined ? [] : [`# yaml-language-server: $schema=${schema}`, `# $schema: ${schema}`]),
    "# Survey sheet. Lines behind # wait for you: take the # away and fill them in, or leave them.",
    "version: 1",
    `created: ${created}`,
    `# ${blank("inherit", schemaAt(["inherit"]) ?? {})}`,
    "",
    "survey:",
    `  id: ${scalar(surveyId)}`,
    ...blanks(["survey"], 2, ["id"]),
    "",
    ...peopleBlock(),
    "",
    ...platformBlock(),
    "",
    ...instrumentBlock(casts),
    "",
    ...processingBlock(),
    "",
    ...(notes.length > 0 ? [`notes: ${JSON.stringify(notes)}`] : []),
    ...(fieldLog === undefined ? [] : [`field_log: ${JSON.stringify(fieldLog)}`]),
    ...answerBlock([...files.flatMap((file) => file.questions), ...questions], answers),
    "",
    ...castBlock(listed),
  ]
    .map((line) => `${line}\n`)
    .join("");
}

const scalar = (value: string | number): string => stringify(value, { lineWidth: 0 }).trimEnd();

/** A line behind # for each key that is not filled in, with the words of the schema; groups with their own keys. */
function blanks(path: readonly (string | number)[], indent: number, filled: readonly string[]): string[] {
  const properties = schemaAt(path)?.properties ?? {};
  return Object.entries(properties)
    .filter(([key]) => !filled.includes(key))
    .flatMap(([key, node]) => {
      const own = resolved(node);
      const title = `${key}:  # ${own.description ?? ""}`;
      if (own.properties) return [title, ...fields([...path, key], 2)];
      if (own.items && resolved(own.items).properties) return [title, ...entry([...path, key, 0], 2)];
      return [blank(key, own)];
    })
    .map((line) => `${" ".repeat(indent)}# ${line}`);
}

/** A key without a value and what it is for. */
function blank(key: string, { description = "", enum: choices, type }: SchemaNode): string {
  const words = choices ? `${choices.join(", ")}. ${description}` : description;
  return `${key}: ${type === "array" ? "[]  " : " "}# ${words}`;
}

/** A block that waits as a whole, behind #. */
const waiting = (lines: readonly string[]): string[] =>
  lines.map((line) => (line.startsWith("#") ? line : `# ${line}`));

function peopleBlock(): string[] {
  const party = (role: string) => [`  ${role}:`, ...fields(["people", role], 4)];
  return waiting([
    "people:",
    ...party("creator"),
    ...party("publisher"),
    "  contributors:",
    ...entry(["people", "contributors", 0], 4),
  ]);
}

function platformBlock(): string[] {
  return waiting(["platforms:", ...entry(["platforms", 0], 2)]);
}

/** Keys without values, for a block that waits as a whole. */
const fields = (path: readonly (string | number)[], indent: number): string[] =>
  Object.entries(schemaAt(path)?.properties ?? {}).map(
    ([key, node]) => `${" ".repeat(indent)}${blank(key, resolved(node))}`,
  );

/** The same as an entry of a list. */
const entry = (path: readonly (string | number)[], indent: number): string[] =>
  fields(path, indent + 2).map((line, index) =>
    index === 0 ? `${" ".repeat(indent)}- ${line.trimStart()}` : line,
  );

function instrumentBlock(casts: readonly Cast[]): string[] {
  const told = new Map<string, Cast[]>();
  for (const cast of casts) {
    const key = JSON.stringify([cast.instrument.model, cast.instrument.serialNumber]);
    told.set(key, [...(told.get(key) ?? []), cast]);
  }
  if (casts.length === 0) return waiting(["instruments:", ...entry(["instruments", 0], 2)]);
  return [
    "instruments:",
    ...[...told.values()].flatMap((own) => {
      const { model, serialNumber, ratedPressure } = own[0]!.instrument;
      const filled = ["name"];
      const lines = [`  - name: ${scalar(`conductivity temperature ${pressureWord(own)} profiler`)}`];
      const fill = (key: string, value: string | number | null) => {
        if (value === null) return;
        filled.push(key);
        lines.push(`    ${key}: ${typeof value === "string" ? JSON.stringify(value) : value}`);
      };
      fill("model", model);
      fill("serial_number", serialNumber);
      fill("rated_pressure", ratedPressure);
      return [
        ...lines,
        ...blanks(["instruments", 0], 4, [...filled, "sensors"]),
        "    # sensors:  # What the maker or the calibration says of each sensor.",
        "    #   temperature: { accuracy: , precision: , uncertainty: , units: degree_C }",
        "    #   conductivity: { accuracy: , precision: , uncertainty: , units: S m-1 }",
        "    #   pressure: { accuracy: , precision: , uncertainty: , units: dbar }",
        "    # Beside units a sensor may have calibrations: [{ date: , kind: , laboratory: , certificate: , coefficients: {} }]",
      ];
    }),
  ];
}

const pressureWord = (casts: readonly Cast[]): string =>
  casts.some(({ columns }) => columns.get("pressure")?.source != null) ? "pressure" : "depth";

const processingBlock = (): string[] => waiting(["processing:", ...fields(["processing"], 2)]);

function answerBlock(questions: readonly Question[], answers: readonly Answer[]): string[] {
  const given =
    answers.length === 0
      ? []
      : [
          "answers:",
          ...answers.map(({ about, where, value }) => `  - ${JSON.stringify({ about, where, value })}`),
        ];
  if (questions.length === 0)
    return given.length > 0 ? given : ["# answers:  # None is needed: the files leave nothing open."];
  return [
    ...given,
    "# Open questions. Until they are answered, the casts that they name are held back.",
    ...(given.length > 0 ? [] : ["# answers:"]),
    ...gatherQuestions(questions).flatMap(({ text, where, candidates, answerWith, moreFiles }) => [
      `#   # ${oneLine(text)}${where.file === undefined ? "" : ` (${fileName(where.file)}${where.line === undefined ? "" : `, line ${where.line}`}${moreFiles === 0 ? "" : `, and ${moreFiles} more ${moreFiles === 1 ? "file" : "files"}`})`}`,
      ...(moreFiles === 0
        ? []
        : [
            "#   # One answer for all of them; where they differ, one line for each with its name instead of *.",
          ]),
      ...(candidates.length > 0 ? [`#   # Possible answers: ${candidates.join(", ")}`] : []),
      `#   - ${oneLine(answerWith).replace(/^-\s*/, "")}`,
    ]),
  ];
}

const oneLine = (text: string): string => text.replaceAll(/\s+/g, " ").trim();

function castBlock(casts: readonly ListedCast[]): string[] {
  if (casts.length === 0) return ["casts: []"];
  return [
    "# The ids below stay for good: a corrected file does not make a new cast. Each may also have a station, a",
    "# latitude and longitude, a sounding, wind and sea, a platform, an instrument and notes.",
    "casts:",
    ...casts.flatMap((cast) =>
      Object.entries(cast).map(
        ([key, value], index) =>
          `  ${index === 0 ? "-" : " "} ${key}: ${key === "sha256" ? `"${value}"` : scalar(value)}`,
      ),
    ),
  ];
}
