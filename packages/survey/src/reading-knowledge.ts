import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { type ExtraName, readNotes, topicProblem } from "@wherry/converter";
import { failOr, type Problem, type Result } from "@wherry/core";
import type { Answer, UnderstoodFile } from "@wherry/formats";
import { isIoError, problemFromIo } from "./problem-from-io.ts";

/** What a person says on the command line of how files are to be read. */
export interface ReadingOptions {
  /** Answers that go before all others, each as `timeZone=+02:00`. */
  readonly answers?: readonly string[];
  /** Paths of notes files. */
  readonly notes?: readonly string[];
  /** Path of the field log, in place of the one that the sheet names. */
  readonly fieldLog?: string;
}

/** All that is known of how files are to be read, beside the files. */
export interface ReadingKnowledge {
  /** From who comes first: command line, sheet, notes. */
  readonly answers: readonly Answer[];
  readonly names: readonly ExtraName[];
  /** The notes files read, by their paths. */
  readonly notes: readonly string[];
}

const COMMAND_LINE = "the command line";

/**
 * Puts together the answers of the command line, those of a sheet and those of notes.
 *
 * @param sheet  the sheet's own answers and notes; nothing where there is no sheet
 * @param folder folder of the sheet, from which its paths are meant
 */
export async function gatherKnowledge(
  { answers = [], notes = [] }: ReadingOptions,
  sheet: { readonly answers?: readonly Answer[]; readonly notes?: readonly string[] } = {},
  folder = ".",
): Promise<Result<ReadingKnowledge>> {
  const problems: Problem[] = [];
  const given: Answer[] = [
    ...answers.flatMap((text) => ofCommandLine(text, problems)),
    ...(sheet.answers ?? []),
  ];
  const names: ExtraName[] = [];
  const warnings: Problem[] = [];
  const paths = [...new Set([...notes, ...(sheet.notes ?? []).map((path) => join(folder, path))])];
  for (const path of paths) {
    const read = await readNotesFile(path);
    if (!read.ok) {
      problems.push(...read.problems);
      continue;
    }
    warnings.push(...read.warnings);
    given.push(...read.value.answers);
    names.push(...read.value.names);
  }
  return failOr(problems, () => ({ answers: given, names, notes: paths }), warnings);
}

function ofCommandLine(text: string, problems: Problem[]): Answer[] {
  const sign = text.lastIndexOf("=");
  const [about, value] = [text.slice(0, sign).trim(), text.slice(sign + 1).trim()];
  const problem =
    sign < 1 || value === ""
      ? {
          code: "answers/form",
          message: `the answer "${text}" has no subject and value with an equals sign between them`,
          where: {},
          remedy: "Write it as --answer timeZone=+02:00.",
        }
      : topicProblem(about, {});
  if (!problem) return [{ about, where: "*", value, from: COMMAND_LINE }];
  problems.push(problem);
  return [];
}

async function readNotesFile(path: string) {
  try {
    return readNotes(await readFile(path, "utf8"), path);
  } catch (error) {
    if (isIoError(error)) return failOr([problemFromIo(error, path)], () => ({ answers: [], names: [] }));
    throw error;
  }
}

/** One line for the command line and for each notes file with answers that no file of the run needed. */
export function unusedAnswers(
  answers: readonly Answer[],
  files: readonly Pick<UnderstoodFile, "answersUsed">[],
): Problem[] {
  const used = new Set(files.flatMap(({ answersUsed = [] }) => answersUsed.map(keyOf)));
  const givers = new Set(answers.flatMap(({ from }) => from ?? []));
  return [...givers].flatMap((giver): Problem[] => {
    const own = answers.filter(({ from }) => from === giver);
    const idle = own.filter((answer) => !used.has(keyOf(answer)));
    if (idle.length === 0) return [];
    const which = [...new Set(idle.map(({ about }) => about))].join(", ");
    return [
      {
        code: "notes/not-needed",
        message: `${idle.length} of ${own.length} ${own.length === 1 ? "answer" : "answers"} of ${giver} settled nothing in these files: ${which}`,
        where: {},
        remedy:
          "The files tell it themselves, the sheet goes before it, or they hold nothing it fits. `wherry look --explain` shows what each fact rests on.",
      },
    ];
  });
}

const keyOf = ({ about, where, value, from }: Answer): string => JSON.stringify([from, about, where, value]);
