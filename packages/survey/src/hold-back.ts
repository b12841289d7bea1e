import { gatherQuestions, type HeldCast } from "@wherry/converter";
import type { Cast } from "@wherry/core";
import type { Question, UnderstoodFile } from "@wherry/formats";

export interface OpenQuestion {
  readonly text: string;
  readonly answerWith: string;
  readonly casts: readonly string[];
}

export interface HeldBack {
  readonly ready: readonly Cast[];
  readonly held: readonly HeldCast[];
  readonly questions: readonly OpenQuestion[];
}

/**
 * Parts casts that can be written from those that wait for an answer.
 *
 * @param files as understood, under the ids that the files tell
 * @param casts the same casts in the same order, under the ids of the sheet
 * @param more  questions beside those of the files, on casts by the ids of the sheet
 */
export function holdBack(
  files: readonly UnderstoodFile[],
  casts: readonly Cast[],
  more: readonly Question[] = [],
): HeldBack {
  const ready: Cast[] = [];
  const held: HeldCast[] = [];
  const questions: Question[] = [];
  let next = 0;
  for (const file of files) {
    const ids = new Map<string, string>();
    for (const { id } of file.casts) {
      const cast = casts[next++]!;
      ids.set(id, cast.id);
      const open = [
        ...file.questions.filter(
          (question) => question.casts.includes(id) && !answeredByLine(question.about, cast),
        ),
        ...more.filter((question) => question.casts.includes(cast.id)),
      ];
      if (open.length === 0) ready.push(cast);
      else held.push({ id: cast.id, questions: open.map(({ about }) => about) });
    }
    const waits = new Set(held.map(({ id }) => id));
    for (const question of file.questions) {
      const waiting = question.casts.map((id) => ids.get(id) ?? id).filter((id) => waits.has(id));
      if (waiting.length > 0) questions.push({ ...question, casts: waiting });
    }
  }
  const open = gatherQuestions([...questions, ...more]).map(
    ({ text, answerWith, casts: waiting, moreFiles }) => ({
      text:
        moreFiles === 0
          ? text
          : `${text} (and so in ${moreFiles} more ${moreFiles === 1 ? "file" : "files"})`,
      answerWith,
      casts: waiting,
    }),
  );
  return { ready, held, questions: open };
}

/** A cast's line in the sheet may give the position that its file does not. */
const answeredByLine = (about: string, cast: Cast): boolean => about === "position" && cast.start !== null;
