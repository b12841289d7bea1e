import { copyFile, mkdir, writeFile } from "node:fs/promises";
import { basename, join, resolve } from "node:path";
import type { Shoreline } from "@wherry/charts";
import type { SurveySheet } from "@wherry/contracts";
import {
  completeSheetText,
  type HeldCast,
  PRODUCT_KINDS,
  processingRecord,
  processingText,
  type SurveyInput,
  type Target,
} from "@wherry/converter";
import {
  type BurstMeans,
  fail,
  type LayerMeans,
  type Problem,
  parseIsoTime,
  type Result,
  type StandardNameTable,
  succeed,
} from "@wherry/core";
import { type GatheredSurvey, type GatherOptions, gatherSurvey } from "./gather-survey.ts";
import type { OpenQuestion } from "./hold-back.ts";
import { JUDGEMENTS } from "./judge.ts";
import { isIoError, problemFromIo } from "./problem-from-io.ts";
import { type ProcessedSurvey, processSurvey } from "./process-survey.ts";
import { beginResult } from "./result-folder.ts";
import { readSheetFile, type SheetFile } from "./sheet-file.ts";
import { readShoreline } from "./shoreline-file.ts";
import { chooseTarget } from "./target-file.ts";
import { readVocabulary } from "./vocabulary-file.ts";
import { startWorkers, type Workers } from "./workers.ts";
import { type Format, keepOriginals, writeProducts, writeWhpExchange } from "./write-products.ts";
import { writeSurveyReport } from "./write-survey-report.ts";

export const DEFAULT_PRODUCTS = ["full", "binned", "series", "csv", "report"] as const;
/** Those that are made unless others are asked for, and those that are made only then. */
export const PRODUCTS = [...DEFAULT_PRODUCTS, "soundspeed", "whp"] as const;
export type Product = (typeof PRODUCTS)[number];

export interface ConvertOptions extends GatherOptions {
  readonly out: string;
  readonly products: readonly Product[];
  readonly perCast: boolean;
  /** One of `TARGETS` or the path of a document of rules; the first if not given. */
  readonly target?: string;
  /** Classic if not given. */
  readonly format?: Format;
  /** Two bytes a value in netCDF where that loses nothing. */
  readonly packed?: boolean;
  /** Moment of writing, ISO 8601 UTC, instead of the sheet's. */
  readonly created?: string;
  /** GeoJSON with land or shore, for the map of the report. */
  readonly shoreline?: string;
  /** Replace a finished result. */
  readonly force: boolean;
  /** Version of the program. */
  readonly version: string;
  /** A standard-name table in place of the shipped one, named in what is written. */
  readonly vocabulary?: string;
  /** Casts that are worked on at the same time, each in a thread of its own; one if not given. */
  readonly jobs?: number;
}

export interface Converted {
  readonly out: string;
  /** Files written, as they stand in `out`. */
  readonly files: readonly string[];
  readonly casts: number;
  readonly held: readonly HeldCast[];
  /** Open questions of the casts held back, with the line that answers each. */
  readonly questions: readonly OpenQuestion[];
  /** Damage in the sources: what was kept and what was not. */
  readonly findings: readonly Problem[];
  /** Ids of casts that the sheet did not list; the copy of the sheet in `out` does. */
  readonly added: readonly string[];
  /** Files of folders that by their kind are no exports. */
  readonly skipped: readonly string[];
}

/**
 * Raw casts to archive products. Everything is written into a hidden sibling of `out`, which gets its name when
 * all is done.
 *
 * @throws AbortError if the run is interrupted; nothing is left then
 */
export async function convert(paths: readonly string[], options: ConvertOptions): Promise<Result<Converted>> {
  const sheet = await readSheetFile(options.sheet);
  if (!sheet.ok) return sheet;
  const created = writingMoment(options, sheet.value.sheet.created);
  if (!created.ok) return created;
  const table = await readVocabulary(options.vocabulary);
  if (!table.ok) return table;
  const target = await chooseTarget(options.target);
  if (!target.ok) return target;
  const shoreline = await readShoreline(options.shoreline);
  if (!shoreline.ok) return shoreline;
  const result = await beginResult(options.out, options.force);
  if (!result.ok) return result;
  const workers = await startWorkers(options.jobs ?? 1);
  try {
    const into = {
      folder: result.value.building,
      created: created.value,
      table: table.value,
      target: target.value,
      shoreline: shoreline.value,
      workers,
    };
    const converted = await convertInto(into, paths, { ...sheet.value, warnings: sheet.warnings }, options);
    options.signal?.throwIfAborted();
    // With every cast held back there is no result yet, and the answers must find the way free.
    if (converted.ok && converted.value.casts > 0) await result.value.finish();
    else await result.value.abandon();
    return converted;
  } catch (error) {
    await result.value.abandon();
    if (isIoError(error)) return fail(problemFromIo(error, options.out));
    throw error;
  } finally {
    await workers.close();
  }
}

function writingMoment({ created, sheet }: ConvertOptions, inSheet: string | undefined): Result<string> {
  const moment = created ?? inSheet;
  if (moment === undefined)
    return fail({
      code: "sheet/created-missing",
      message:
        "the sheet does not say when the data set was made, and dates of writing are never taken from the clock",
      where: { file: sheet },
      remedy: "Add a line such as created: 2026-01-31T12:00:00Z, or give --created.",
    });
  const parsed = parseIsoTime(moment);
  if (!parsed.ok || parsed.value.zoneMinutes !== 0)
    return fail({
      code: "sheet/created-malformed",
      message: `${moment} is not a moment in UTC`,
      where: { file: sheet },
      remedy: "Write it as 2026-01-31T12:00:00Z.",
    });
  return succeed(moment);
}

interface Into {
  readonly folder: string;
  readonly created: string;
  readonly table: StandardNameTable;
  readonly target: Target;
  readonly shoreline: Shoreline | null;
  readonly workers: Workers;
}

async function convertInto(
  into: Into,
  paths: readonly string[],
  sheetFile: SheetFile & { readonly warnings: readonly Problem[] },
  options: ConvertOptions,
): Promise<Result<Converted>> {
  const gathered = await gatherSurvey(paths, sheetFile, into.workers, options);
  if (!gathered.ok) return gathered;
  const { completed, ready, held, questions, manual, findings, skipped } = gathered.value;
  const processed = await processSurvey(completed.sheet, ready, into.workers, { ...options, manual });
  const software = `wherry ${options.version}`;
  const survey = surveyInput(processed, completed.sheet, software, into, options);
  const written = await writeData(into.folder, survey, options);
  if (!written.ok) return written;
  const told = [...sheetFile.warnings, ...gathered.warnings, ...written.warnings];
  const records = await writeRecords(into, sheetFile.text, gathered.value, processed, software, options);
  if (!records.ok) return records;
  const report = options.products.includes("report")
    ? [
        await writeSurveyReport(
          into.folder,
          written.value,
          processed.casts,
          processed.layers,
          {
            ...{ sheet: completed.sheet, created: into.created, software, held, questions },
            ...{ shoreline: into.shoreline, record: recordName(completed.sheet) },
            findings: [...findings, ...told],
          },
          options,
        ),
      ]
    : [];
  return succeed(
    {
      out: options.out,
      files: processed.casts.length === 0 ? [] : [...written.value, ...report, ...records.value],
      casts: processed.casts.length,
      held,
      questions,
      findings,
      added: completed.added.map(({ id }) => id),
      skipped: skipped.filter((path) => resolve(path) !== resolve(options.sheet)),
    },
    told,
  );
}

function surveyInput(
  { casts, layers, bursts, recipe }: ProcessedSurvey,
  sheet: SurveySheet,
  software: string,
  { created, table, target }: Into,
  { products, perCast }: ConvertOptions,
): SurveyInput {
  return {
    casts,
    layers,
    bursts,
    context: {
      sheet,
      created,
      software,
      standardNames: `CF Standard Name Table v${table.version}`,
      target,
      testFlags: recipe.quality.testFlags,
    },
    products: new Set(PRODUCT_KINDS.filter((kind) => products.includes(kind))),
    perCast,
    soundSpeed: recipe.soundSpeedProfile,
  };
}

/** Data sets, tables and exchange files. */
async function writeData(
  folder: string,
  survey: SurveyInput,
  { products, format = "classic", packed = false, signal }: ConvertOptions,
): Promise<Result<string[]>> {
  const exchanged = products.includes("whp") ? await writeWhpExchange(folder, survey) : succeed([]);
  if (!exchanged.ok) return exchanged;
  const how = { withCsv: products.includes("csv"), format, packed };
  const written = await writeProducts(folder, survey, how, signal);
  return written.ok ? succeed([...written.value, ...exchanged.value], exchanged.warnings) : written;
}

const recordName = ({ survey }: SurveySheet): string => `${survey.id}_processing.json`;

/** What was done to the data, and all that it was done from: sheet, notes, judgements, originals. */
async function writeRecords(
  { folder, created }: Into,
  sheetText: string,
  { completed, held, notes, answers, judgements, exports }: GatheredSurvey,
  { casts, layers, bursts, recipe }: ProcessedSurvey,
  software: string,
  options: ConvertOptions,
): Promise<Result<string[]>> {
  const record = recordName(completed.sheet);
  const copy = basename(options.sheet);
  const means = new Map<string, LayerMeans | BurstMeans>([...layers, ...bursts]);
  const made = processingRecord(casts, { ...recipe }, software, held, means, { created, sheet: copy });
  await writeFile(join(folder, record), processingText(made));
  const noted = await keepNotes(folder, notes);
  await writeFile(join(folder, copy), completeSheetText(sheetText, completed, { answers, notes: noted }));
  if (judgements !== null) await writeFile(join(folder, JUDGEMENTS), judgements);
  const kept = await keepOriginals(
    folder,
    exports.map(({ path, understood }) => ({ path, name: understood.path, sha256: understood.sha256 })),
  );
  if (!kept.ok) return kept;
  return succeed([record, copy, ...noted, ...(judgements === null ? [] : [JUDGEMENTS]), "original/"]);
}

/** Copies of notes that the reading rested on, under their own names; equal names get a number. */
async function keepNotes(folder: string, notes: readonly string[]): Promise<string[]> {
  const names: string[] = [];
  for (const path of notes) {
    const name = basename(path);
    const taken = names.filter((other) => basename(other).endsWith(name)).length;
    names.push(`notes/${taken === 0 ? "" : `${taken + 1}-`}${name}`);
    await mkdir(join(folder, "notes"), { recursive: true });
    await copyFile(path, join(folder, names.at(-1)!));
  }
  return names;
}
