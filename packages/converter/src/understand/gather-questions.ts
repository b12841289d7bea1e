import type { Question } from "@wherry/formats";

/** A question with all files that ask it. */
export interface GatheredQuestion extends Question {
  /** How many files ask it beside the one that `where` names. */
  readonly moreFiles: number;
}

/**
 * Questions of many files in one list: what several files ask alike is asked once, with the line that answers it for all
 * of them. Questions about single casts stay apart.
 */
export function gatherQuestions(questions: readonly Question[]): GatheredQuestion[] {
  const groups = new Map<string, Question[]>();
  for (const question of questions) {
    const { about, candidates, answerWith } = question;
    const isOfCast = /where: "[^"]*#/.test(answerWith);
    const key = JSON.stringify(isOfCast ? [answerWith] : [about, candidates]);
    groups.set(key, [...(groups.get(key) ?? []), question]);
  }
  return [...groups.values()].map((own) => {
    const [first] = own as [Question, ...Question[]];
    const moreFiles = new Set(own.map(({ where }) => where.file)).size - 1;
    return {
      ...first,
      moreFiles,
      casts: [...new Set(own.flatMap(({ casts }) => casts))],
      answerWith:
        moreFiles === 0
          ? first.answerWith
          : first.answerWith.replace(/where: (?:"(?:[^"\\]|\\.)*"|[^,]+),/, 'where: "*",'),
    };
  });
}
