import type { HeldCast } from "@wherry/converter";
import type { Cast } from "@wherry/core";
import type { UnderstoodFile } from "@wherry/formats";

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
 */
export function holdBack(files: readonly UnderstoodFile[], casts: readonly Cast[]): HeldBack {
  const ready: Cast[] = [];
  const held: HeldCast[] = [];
  const questions: OpenQuestion[] = [];
  let next = 0;
  for (const file of files) {
    const ids = new Map<string, string>();
    for (const { id } of file.casts) {
      const cast = casts[next++]!;
      ids.set(id, cast.id);
      const open = file.questions.filter(
        (question) => question.casts.includes(id) && !answeredByLine(question.about, cast),
      );
      if (open.length === 0) ready.push(cast);
      else held.push({ id: cast.id, questions: open.map(({ about }) => about) });
    }
    const waits = new Set(held.map(({ id }) => id));
    for (const { text, answerWith, casts: concerned } of file.questions) {
      const waiting = concerned.map((id) => ids.get(id) ?? id).filter((id) => waits.has(id));
      if (waiting.length > 0) questions.push({ text, answerWith, casts: waiting });
    }
  }
  return { ready, held, questions };
}

/** A cast's line in the sheet may give the position that its file does not. */
const answeredByLine = (about: string, cast: Cast): boolean => about === "position" && cast.start !== null;
