import { readFileSync } from "node:fs";
import type { UnderstoodFile } from "@wherry/formats";
import { testData } from "@wherry/testkit";
import { type LookCast, type LookColumn, lookDocument } from "../src/understand/report/look-document.ts";
import { asked, attempt } from "./understand-samples.ts";

// The truth was written with the files (own work, invented data); it is not our output.
interface TruthColumn {
  header: string;
  standard_name: string | null;
  first_source?: number;
  last_source?: number;
  first_canonical?: number;
  last_canonical?: number;
  canonical_units?: string;
  n_missing?: number;
}
interface TruthCast {
  time_start_utc: string;
  time_role?: string;
  state?: Record<string, unknown>;
  notes?: string[];
  time_end_utc?: string;
  latitude: number | null;
  longitude: number | null;
  latitude_end?: number;
  longitude_end?: number;
  fixed_depth_m?: number;
  n_rows: number;
  cast_id?: string;
  columns: TruthColumn[];
}
export interface TruthFile {
  encoding: string;
  eol: string;
  delimiter: string;
  decimal: string;
  feature: string;
  casts: TruthCast[];
  missing?: string[];
  asks?: { topic: string; must: boolean; facts: string[]; words: string[] }[];
}

export interface SampleSet {
  readonly folder: string;
  readonly truth: Readonly<Record<string, TruthFile>>;
}

function sampleSet(folder: string): SampleSet {
  const { files } = JSON.parse(readFileSync(`${folder}/truth.json`, "utf8")) as {
    files: Record<string, TruthFile>;
  };
  return { folder, truth: files };
}

export const messy = sampleSet(testData("samples", "messy"));
/** Made by tools/make_messy_exports.py, each named for what is odd about it. */
export const exports = sampleSet(testData("exports"));

export type Verdict = "right" | "asked" | "unknown" | "wrong";
export interface Judged {
  readonly fact: string;
  readonly verdict: Verdict;
  readonly found: unknown;
  readonly want: unknown;
}

// first and last values are printed with at most seven digits
const near = (a: number, b: number) => Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(b));

/** Questions that the truth neither wants nor allows: where a careful reader would not have had to ask. */
export function needless({ folder, truth }: SampleSet, name: string): readonly string[] {
  const result = attempt(readFileSync(`${folder}/${name}`), name);
  const words = (truth[name]?.asks ?? []).flatMap((ask) => ask.words);
  return (result.ok ? result.value.questions : [])
    .filter(({ about, text }) => !words.some((word) => `${about} ${text}`.toLowerCase().includes(word)))
    .map(({ about }) => about);
}

/** Judges a file of a set; one that cannot be read leaves everything unknown. */
export function judgeSample({ folder, truth }: SampleSet, name: string): Judged[] {
  const result = attempt(readFileSync(`${folder}/${name}`), name);
  if (result.ok) return judge(result.value, truth[name]!);
  return [{ fact: "file", verdict: "unknown", found: result.problems[0].message, want: "casts" }];
}

/** Every fact of the truth, judged: right, asked, left unknown, or wrong. */
export function judge(file: UnderstoodFile, want: TruthFile): Judged[] {
  const [looked] = lookDocument([file]).files;
  const judged: Judged[] = [];
  const question = (words: readonly string[]) =>
    file.questions.some(({ about, text }) =>
      words.some((word) => `${about} ${text}`.toLowerCase().includes(word)),
    );
  const say = (fact: string, found: unknown, right: unknown, same = found === right) => {
    // an end on the same clock waits for the same answer as the start
    const ask = want.asks?.find(({ facts }) => facts.includes(fact === "end" ? "start" : fact));
    const isAsked = ask !== undefined && question(ask.words);
    let verdict: Verdict =
      found === null || found === undefined
        ? right === null
          ? "right"
          : "unknown"
        : same
          ? "right"
          : "wrong";
    if (isAsked) verdict = "asked";
    else if (ask?.must) verdict = "wrong"; // a silent answer
    judged.push({ fact, verdict, found, want: right });
  };
  const encodings: Record<string, string> = {
    "utf-8-bom": "utf-8",
    "latin-1": "windows-1252",
    ascii: "utf-8",
  };
  say("encoding", looked?.encoding, encodings[want.encoding] ?? want.encoding);
  say("lineEnding", looked?.lineEnding, want.eol);
  const delimiters =
    want.delimiter === " "
      ? ["whitespace"]
      : want.delimiter.length > 1
        ? want.delimiter.split("/")
        : [want.delimiter];
  say("delimiter", looked?.delimiter, delimiters, delimiters.includes(looked?.delimiter ?? ""));
  say("decimal", looked?.decimal, want.decimal);
  say("casts", looked?.casts.length, want.casts.length);
  for (const marker of want.missing ?? [])
    say(`missing ${marker}`, looked?.missingMarkers.includes(marker), true);
  for (const [i, cast] of want.casts.entries()) {
    judgeCast(looked?.casts[i], cast, want.feature, say);
    for (const note of cast.notes ?? []) say("note kept", file.casts[i]?.notes.includes(note), true);
  }
  for (const { topic, must, words } of want.asks ?? [])
    if (must && !question(words))
      judged.push({ fact: `question on ${topic}`, verdict: "wrong", found: asked(file), want: words });
  return judged;
}

function judgeCast(
  found: LookCast | undefined,
  want: TruthCast,
  feature: string,
  say: (fact: string, found: unknown, right: unknown, same?: boolean) => void,
): void {
  const time = (a: string | null | undefined, b: string) =>
    typeof a === "string" && Math.abs(Date.parse(a) - Date.parse(b)) < 1000;
  const degrees = (a: number | null | undefined, b: number | null) =>
    a == null || b === null ? a === b : Math.abs(a - b) < 1e-6;
  if (want.cast_id) say("id", found?.id, want.cast_id);
  say("kind", found?.kind, feature === "timeSeries" ? "fixed-depth" : "profile");
  say("rows", found?.rows, want.n_rows);
  say("start", found?.start, want.time_start_utc, time(found?.start, want.time_start_utc));
  if (want.time_role) say("timeRole", found?.timeRole, want.time_role);
  for (const [key, value] of Object.entries(want.state ?? {}))
    say(`state.${key}`, found?.state[key as keyof LookCast["state"]], value);
  if (want.time_end_utc) say("end", found?.end, want.time_end_utc, time(found?.end, want.time_end_utc));
  say("latitude", found?.latitude, want.latitude, degrees(found?.latitude, want.latitude));
  say("longitude", found?.longitude, want.longitude, degrees(found?.longitude, want.longitude));
  if (want.latitude_end !== undefined)
    say("endLatitude", found?.endLatitude, want.latitude_end, degrees(found?.endLatitude, want.latitude_end));
  if (want.longitude_end !== undefined)
    say(
      "endLongitude",
      found?.endLongitude,
      want.longitude_end,
      degrees(found?.endLongitude, want.longitude_end),
    );
  if (want.fixed_depth_m !== undefined) say("fixedDepth", found?.fixedDepth, want.fixed_depth_m);
  for (const column of want.columns)
    judgeColumn(
      found?.columns.find(({ header }) => header === column.header),
      column,
      say,
    );
}

function judgeColumn(
  found: LookColumn | undefined,
  want: TruthColumn,
  say: (fact: string, found: unknown, right: unknown, same?: boolean) => void,
): void {
  const fact = `column:${want.header}`;
  const value = (a: number | string | null | undefined, b: number | undefined) =>
    typeof a === "number" && b !== undefined && near(a, b);
  say(fact, found?.standardName, want.standard_name);
  if (want.canonical_units) say(fact, found?.units, want.canonical_units);
  if (want.first_source !== undefined)
    say(fact, found?.sourceFirst, want.first_source, value(found?.sourceFirst, want.first_source));
  if (want.last_source !== undefined)
    say(fact, found?.sourceLast, want.last_source, value(found?.sourceLast, want.last_source));
  if (want.first_canonical !== undefined)
    say(fact, found?.first, want.first_canonical, value(found?.first, want.first_canonical));
  if (want.last_canonical !== undefined)
    say(fact, found?.last, want.last_canonical, value(found?.last, want.last_canonical));
  if (want.n_missing !== undefined) say(fact, found?.missing, want.n_missing);
}
