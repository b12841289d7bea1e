import { rename, rm, stat, writeFile } from "node:fs/promises";
import { basename, dirname, extname, join, relative, sep } from "node:path";
import { sheetSchema } from "@wherry/contracts";
import { completeSheet, checkSheet as lacksOf, type SheetLack, withLog, writeSheet } from "@wherry/converter";
import { fail, formatIsoTime, type Problem, type Result, succeed } from "@wherry/core";
import { readLog } from "./field-log-file.ts";
import { problemFromIo } from "./problem-from-io.ts";
import { gatherKnowledge, type ReadingOptions, unusedAnswers } from "./reading-knowledge.ts";
import { readSheetFile } from "./sheet-file.ts";
import { chooseTarget } from "./target-file.ts";
import { type RunOptions, readExports } from "./understand-files.ts";

/** The schema of sheets beside a new sheet, for editors; hidden, so that nobody takes it for an export. */
const SCHEMA = ".wherry-sheet.schema.json";

export interface SheetOptions extends RunOptions, ReadingOptions {
  readonly out: string;
  /** Id of the survey; the sheet's name without its ending unless given. */
  readonly id?: string;
  /** Epoch seconds. */
  readonly now: number;
  /** Replace a sheet that exists. */
  readonly force: boolean;
}

export interface MadeSheet {
  readonly casts: number;
  readonly questions: number;
  /** Files that hold no casts; the sheet was written without them. */
  readonly problems: readonly Problem[];
  readonly warnings: readonly Problem[];
}

/** Writes a survey sheet filled with what files tell. */
export async function makeSheet(paths: readonly string[], options: SheetOptions): Promise<Result<MadeSheet>> {
  const { out, now, force } = options;
  if (!force && (await stat(out).then(Boolean, () => false)))
    return fail({
      code: "result/sheet-exists",
      message: `${out} exists already`,
      where: { file: out },
      remedy: "Name another file, or add --force to replace it.",
    });
  const knowledge = await gatherKnowledge(options);
  if (!knowledge.ok) return knowledge;
  const { fieldLog, answers = [], notes = [] } = options;
  const apart = fieldLog === undefined ? [] : [fieldLog];
  const { exports, problems } = await readExports(paths, knowledge.value, "relative", { ...options, apart });
  const [first, ...others] = problems;
  if (exports.length === 0 && first) return fail(first, ...others);
  const files = exports.map(({ understood }) => understood);
  const surveyId = options.id ?? basename(out, extname(out));
  const casts = files.flatMap((file) => file.casts);
  const listed = completeSheet({ version: 1, survey: { id: surveyId } }, casts);
  const log = await readLog(fieldLog, knowledge.value.answers, listed.casts, {});
  if (!log.ok) return log;
  const fromSheet = (path: string) => relative(dirname(out), path).split(sep).join("/");
  const text = writeSheet(files, {
    created: formatIsoTime(now),
    surveyId,
    schema: `./${SCHEMA}`,
    casts: withLog(listed, log.value.facts).added,
    notes: notes.map(fromSheet),
    ...(fieldLog === undefined ? {} : { fieldLog: fromSheet(fieldLog) }),
    answers: knowledge.value.answers.slice(0, answers.length),
    questions: log.value.questions,
  });
  const part = join(dirname(out), `.${basename(out)}.wherry-part`);
  try {
    await writeFile(part, text);
    await writeFile(join(dirname(out), SCHEMA), `${JSON.stringify(sheetSchema, null, 2)}\n`);
    await rename(part, out);
  } catch (error) {
    await rm(part, { force: true });
    return fail(problemFromIo(error, out));
  }
  return succeed({
    casts: files.reduce((sum, { casts }) => sum + casts.length, 0),
    questions: files.reduce((sum, { questions }) => sum + questions.length, log.value.questions.length),
    problems,
    warnings: [
      ...knowledge.warnings,
      ...log.value.warnings,
      ...unusedAnswers(knowledge.value.answers, [...files, log.value]),
    ],
  });
}

/**
 * What a sheet still lacks for a target, most important first.
 *
 * @param target one of `TARGETS` or the path of a document of rules
 */
export async function checkSheet(path: string, target: string): Promise<Result<readonly SheetLack[]>> {
  const chosen = await chooseTarget(target);
  if (!chosen.ok) return chosen;
  const read = await readSheetFile(path);
  return read.ok ? succeed(lacksOf(read.value.sheet, chosen.value), read.warnings) : read;
}
