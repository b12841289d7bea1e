import { readFileSync } from "node:fs";
import type { Cast } from "@wherry/core";
import type { UnderstoodFile } from "@wherry/formats";
import { testData } from "@wherry/testkit";
import type { Judged, Verdict } from "./judge-messy.ts";
import { asked } from "./understand-samples.ts";

// Every fact that the truth file of the open formats holds, judged. The truth was written with the files.

interface WhpTruth {
  readonly time_utc: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly n_levels: number;
  readonly first_pressure_dbar: number;
  readonly last_pressure_dbar: number;
  readonly first_temperature: number;
  readonly last_salinity: number;
  readonly missing_temperature_rows: readonly number[];
}
interface WodTruth {
  readonly cast: number;
  readonly date: string;
  readonly time_hours_utc: number | null;
  readonly latitude: number;
  readonly longitude: number;
  readonly n_levels: number;
  readonly first: readonly number[];
  readonly last: readonly number[];
  readonly missing: readonly { readonly var: number; readonly level: number }[];
  readonly flagged: readonly { readonly var: number; readonly level: number; readonly flag: number }[];
  readonly bottom_depth_m: number;
}
interface TesacTruth {
  readonly year_candidates: readonly number[];
  readonly latitude: number;
  readonly longitude: number;
  readonly depth_m: readonly number[];
  readonly temperature: readonly number[];
  readonly salinity: readonly number[];
}
export interface OpenTruth {
  readonly format: string;
  readonly verdict: string;
  readonly must_ask?: readonly string[];
  readonly truth: WhpTruth | readonly WodTruth[] | TesacTruth;
}

export const openFolder = testData("samples", "openformats");
export const openTruth = (
  JSON.parse(readFileSync(`${openFolder}/truth.json`, "utf8")) as { files: Record<string, OpenTruth> }
).files;

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
const missingRows = (cast: Cast | undefined, name: string) =>
  [...(cast?.columns.get(name)?.values ?? [])].flatMap((value, row) => (Number.isNaN(value) ? [row] : []));
const seconds = (iso: string) => Date.parse(iso) / 1000;

/** Facts of one file: right, asked, left unknown, or wrong. */
export function judgeOpenFormat(file: UnderstoodFile, { must_ask, truth }: OpenTruth): Judged[] {
  const judged: Judged[] = [];
  const say = (fact: string, found: unknown, want: unknown, question?: string) => {
    const unknown = found === undefined || found === null || Number.isNaN(found);
    const isAsked = question !== undefined && asked(file).includes(question);
    const verdict: Verdict = isAsked ? "asked" : same(found, want) ? "right" : unknown ? "unknown" : "wrong";
    judged.push({ fact, verdict, found, want });
  };
  for (const about of must_ask ?? []) say(`question on ${about}`, asked(file).includes(about), true);
  const [first] = file.casts;
  if (Array.isArray(truth)) {
    say("casts", file.casts.length, truth.length);
    for (const [i, want] of (truth as readonly WodTruth[]).entries()) judgeWod(file.casts[i], want, say);
  } else if ("depth_m" in truth) judgeTesac(file, first, truth as TesacTruth, say);
  else judgeWhp(first, truth as WhpTruth, say);
  return judged;
}

type Say = (fact: string, found: unknown, want: unknown, question?: string) => void;

function judgePosition(
  cast: Cast | undefined,
  want: { latitude: number; longitude: number },
  say: Say,
): void {
  say("latitude", cast?.start?.latitude, want.latitude);
  say("longitude", cast?.start?.longitude, want.longitude);
}

function judgeWhp(cast: Cast | undefined, want: WhpTruth, say: Say): void {
  const values = (name: string) => cast?.columns.get(name)?.values;
  say("time", cast?.time, seconds(want.time_utc));
  say("role of the time", cast?.timeRole, "unknown", "timeRole");
  judgePosition(cast, want, say);
  say("levels", cast?.rows, want.n_levels);
  say("first pressure", values("pressure")?.[0], want.first_pressure_dbar);
  say("last pressure", values("pressure")?.at(-1), want.last_pressure_dbar);
  say("first temperature", values("temperature")?.[0], want.first_temperature);
  say("last salinity", values("salinity")?.at(-1), want.last_salinity);
  say("missing temperatures", missingRows(cast, "temperature"), want.missing_temperature_rows);
  say("flag scheme", cast?.columns.get("salinity")?.sourceFlags?.scheme, "WOCE CTD");
}

const WOD_COLUMNS = new Map([
  [0, "depth"],
  [1, "temperature"],
  [2, "salinity"],
  [25, "pressure"],
]);

function judgeWod(cast: Cast | undefined, want: WodTruth, say: Say): void {
  say("cast number", cast?.id, String(want.cast));
  const hours = want.time_hours_utc;
  const known = hours === null ? Number.NaN : seconds(`${want.date}T00:00:00Z`) + hours * 3600;
  say("time", cast?.time, known, Number.isNaN(known) ? "time" : undefined);
  judgePosition(cast, want, say);
  say("levels", cast?.rows, want.n_levels);
  for (const [index, [code, name]] of [...WOD_COLUMNS].entries()) {
    const column = cast?.columns.get(name);
    say(`first ${name}`, column?.values[0], want.first[index]);
    say(`last ${name}`, column?.values.at(-1), want.last[index]);
    const gone = want.missing.filter((each) => each.var === code).map(({ level }) => level);
    say(`missing ${name}`, missingRows(cast, name), gone);
    const flagged = want.flagged
      .filter((each) => each.var === code)
      .map(({ level, flag }) => [level, String(flag)]);
    const found = [...(column?.sourceFlags?.values ?? [])].flatMap((flag, level) =>
      flag === "0" || flag === "" ? [] : [[level, flag]],
    );
    say(`flags of ${name}`, found, flagged);
  }
  say("bottom depth", cast?.notes.includes(`bottom depth = ${want.bottom_depth_m} m`), true);
}

function judgeTesac(file: UnderstoodFile, cast: Cast | undefined, want: TesacTruth, say: Say): void {
  say("time", cast?.time, null, "decade");
  const question = file.questions.find(({ about }) => about === "decade");
  say("years that it may be", question?.candidates, want.year_candidates.map(String));
  judgePosition(cast, want, say);
  for (const [name, numbers] of [
    ["depth", want.depth_m],
    ["temperature", want.temperature],
    ["salinity", want.salinity],
  ] as const)
    say(name, [...(cast?.columns.get(name)?.values ?? [])], numbers);
}
