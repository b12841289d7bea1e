import { copyFile, mkdir, writeFile } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import type { Shoreline } from "@wherry/charts";
import {
  bindJudgements,
  completeSheet,
  completeSheetText,
  type HeldCast,
  PRODUCT_KINDS,
  processingRecord,
  processingText,
  type SurveyInput,
  sameCastProblem,
  sameCasts,
  type Target,
  withLog,
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
import { logPath, readLog } from "./field-log-file.ts";
import { holdBack, type OpenQuestion } from "./hold-back.ts";
import { JUDGEMENTS, readJudgementsFile } from "./judge.ts";
import { isIoError, problemFromIo } from "./problem-from-io.ts";
import { processSurvey } from "./process-survey.ts";
import { gatherKnowledge, type ReadingOptions, unusedAnswers } from "./reading-knowledge.ts";
import { beginResult } from "./result-folder.ts";
import { readSheetFile, type SheetFile } from "./sheet-file.ts";
import { readShoreline } from "./shoreline-file.ts";
import { chooseTarget } from "./target-file.ts";
import { type RunOptions, readExports } from "./understand-files.ts";
import { readVocabulary } from "./vocabulary-file.ts";
import { startWorkers, type Workers } from "./workers.ts";
import { type Format, keepOriginals, writeProducts, writeWhpExchange } from "./write-products.ts";
import { writeSurveyReport } from "./write-survey-report.ts";

export const DEFAULT_PRODUCTS = ["full", "binned", "series", "csv", "report"] as const;
/** Those that are made unless others are asked for, and those that are made only then. */
export const PRODUCTS = [...DEFAULT_PRODUCTS, "soundspeed", "whp"] as const;
export type Product = (typeof PRODUCTS)[number];

export interface ConvertOptions extends RunOptions, ReadingOptions {
  readonly sheet: string;
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
  /** Flags that persons set; `judgements.jsonl` beside the sheet if not given. */
  readonly judgements?: string;
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
  { folder, created, table, target, shoreline, workers }: Into,
  paths: readonly string[],
  { text, sheet, warnings }: SheetFile & { readonly warnings: readonly Problem[] },
  options: ConvertOptions,
): Promise<Result<Converted>> {
  const knowledge = await gatherKnowledge(options, sheet, dirname(options.sheet));
  if (!knowledge.ok) return knowledge;
  const { answers, notes } = knowledge.value;
  const logged = logPath(options.fieldLog, sheet, options.sheet);
  const apart = logged === undefined ? [] : [logged];
  const read = await readExports(paths, knowledge.value, "relative", { ...options, workers, apart });
  const [unreadable, ...others] = read.problems;
  if (unreadable) return fail(unreadable, ...others);
  const files = read.exports.map(({ understood }) => understood);
  const listed = completeSheet(
    sheet,
    files.flatMap(({ casts }) => casts),
    options.sheet,
  );
  const log = await readLog(logged, answers, listed.casts, sheet);
  if (!log.ok) return log;
  const completed = withLog(listed, log.value.facts);
  const { ready, held, questions } = holdBack(files, completed.casts, log.value.questions);
  const judged = await readJudgementsFile(options.sheet, options.judgements);
  if (!judged.ok) return judged;
  const { manual, findings: notApplied } = bindJudgements(
    completed.casts,
    judged.value.entries,
    judged.value.path,
  );
  const { casts, layers, bursts, recipe } = await processSurvey(completed.sheet, ready, workers, {
    ...options,
    manual,
  });
  const software = `wherry ${options.version}`;
  const survey: SurveyInput = {
    casts,
    layers,
    bursts,
    context: {
      sheet: completed.sheet,
      created,
      software,
      standardNames: `CF Standard Name Table v${table.version}`,
      target,
      testFlags: recipe.quality.testFlags,
    },
    products: new Set(PRODUCT_KINDS.filter((kind) => options.products.includes(kind))),
    perCast: options.perCast,
    soundSpeed: recipe.soundSpeedProfile,
  };
  const exchanged = options.products.includes("whp") ? await writeWhpExchange(folder, survey) : succeed([]);
  if (!exchanged.ok) return exchanged;
  const written = await writeProducts(
    folder,
    survey,
    {
      withCsv: options.products.includes("csv"),
      format: options.format ?? "classic",
      packed: options.packed ?? false,
    },
    options.signal,
  );
  if (!written.ok) return written;
  const record = `${sheet.survey.id}_processing.json`;
  const copy = basename(options.sheet);
  await writeFile(
    join(folder, record),
    processingText(
      processingRecord(
        casts,
        { ...recipe },
        software,
        held,
        new Map<string, LayerMeans | BurstMeans>([...layers, ...bursts]),
        { created, sheet: copy },
      ),
    ),
  );
  const findings = [
    ...files.flatMap((file) => file.findings),
    ...sameCasts(completed.casts).map(sameCastProblem),
    ...notApplied,
  ];
  const told = [
    ...warnings,
    ...knowledge.warnings,
    ...completed.warnings,
    ...log.value.warnings,
    ...exchanged.warnings,
    ...unusedAnswers(answers, [...files, log.value]),
  ];
  const report = options.products.includes("report")
    ? [
        await writeSurveyReport(
          folder,
          written.value,
          casts,
          layers,
          {
            ...{ sheet: completed.sheet, created, software, held, questions, shoreline, record },
            findings: [...findings, ...told],
          },
          options,
        ),
      ]
    : [];
  const noted = await keepNotes(folder, notes);
  const beside = { answers: answers.slice(0, options.answers?.length ?? 0), notes: noted };
  await writeFile(join(folder, copy), completeSheetText(text, completed, beside));
  if (judged.value.text !== null) {
    await writeFile(join(folder, JUDGEMENTS), judged.value.text);
    noted.push(JUDGEMENTS);
  }
  const kept = await keepOriginals(
    folder,
    read.exports.map(({ path, understood }) => ({ path, name: understood.path, sha256: understood.sha256 })),
  );
  if (!kept.ok) return kept;
  return succeed(
    {
      out: options.out,
      files:
        casts.length === 0
          ? []
          : [...written.value, ...exchanged.value, ...report, record, copy, ...noted, "original/"],
      casts: casts.length,
      held,
      questions,
      findings,
      added: completed.added.map(({ id }) => id),
      skipped: read.skipped.filter((path) => resolve(path) !== resolve(options.sheet)),
    },
    told,
  );
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
