import { dirname } from "node:path";
import {
  bindJudgements,
  type CompletedSheet,
  completeSheet,
  sameCastProblem,
  sameCasts,
  withLog,
} from "@wherry/converter";
import { fail, type Problem, type Result, succeed } from "@wherry/core";
import type { Answer } from "@wherry/formats";
import { logPath, readLog } from "./field-log-file.ts";
import { type HeldBack, holdBack } from "./hold-back.ts";
import { readJudgementsFile } from "./judge.ts";
import { gatherKnowledge, type ReadingOptions, unusedAnswers } from "./reading-knowledge.ts";
import type { SheetFile } from "./sheet-file.ts";
import { type ReadExport, type RunOptions, readExports } from "./understand-files.ts";
import type { Workers } from "./workers.ts";

export interface GatherOptions extends RunOptions, ReadingOptions {
  readonly sheet: string;
  /** Flags that persons set; `judgements.jsonl` beside the sheet if not given. */
  readonly judgements?: string;
}

/** All that is known of a survey before its casts are processed. */
export interface GatheredSurvey extends HeldBack {
  readonly exports: readonly ReadExport[];
  /** The sheet with a line for every cast. */
  readonly completed: CompletedSheet;
  /** Persons' flags, by cast id. */
  readonly manual: ReturnType<typeof bindJudgements>["manual"];
  /** Text of the file that holds them; null without one. */
  readonly judgements: string | null;
  /** Answers that went before those of the sheet. */
  readonly answers: readonly Answer[];
  /** Paths of the notes that the reading rested on. */
  readonly notes: readonly string[];
  /** Files of folders that by their kind are no exports. */
  readonly skipped: readonly string[];
  /** Damage in the sources, casts that are the same, flags that could not be set. */
  readonly findings: readonly Problem[];
}

/** Reads exports, field log and judgements, and brings them together with the sheet. */
export async function gatherSurvey(
  paths: readonly string[],
  { sheet }: SheetFile,
  workers: Workers,
  options: GatherOptions,
): Promise<Result<GatheredSurvey>> {
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
  const judged = await readJudgementsFile(options.sheet, options.judgements);
  if (!judged.ok) return judged;
  const bound = bindJudgements(completed.casts, judged.value.entries, judged.value.path);
  return succeed(
    {
      ...holdBack(files, completed.casts, log.value.questions),
      exports: read.exports,
      completed,
      manual: bound.manual,
      judgements: judged.value.text,
      answers: answers.slice(0, options.answers?.length ?? 0),
      notes,
      skipped: read.skipped,
      findings: [
        ...files.flatMap(({ findings }) => findings),
        ...sameCasts(completed.casts).map(sameCastProblem),
        ...bound.findings,
      ],
    },
    [
      ...knowledge.warnings,
      ...completed.warnings,
      ...log.value.warnings,
      ...unusedAnswers(answers, [...files, log.value]),
    ],
  );
}
