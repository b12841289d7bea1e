import type { Place, Problem } from "@wherry/core";
import type { Answer, Question } from "@wherry/formats";
import { nearest } from "./words.ts";

/** Everything a question can be about. A topic on one column is followed by a colon and its head. */
export const TOPICS = [
  "castSplitting",
  "clockCorrection",
  "conductivityKind",
  "dateOrder",
  "decade",
  "decimalSign",
  "depthSign",
  "endPosition",
  "fixedDepth",
  "flagScheme",
  "hemisphere",
  "language",
  "logLine",
  "missingMarker",
  "position",
  "pressureKind",
  "quantity",
  "salinityScale",
  "temperatureScale",
  "time",
  "timeRole",
  "timeZone",
  "units",
  "verticalReference",
] as const;
export type Topic = (typeof TOPICS)[number];

/** What has to be settled, how a valid answer looks, and how to ask for it. */
export interface Matter<T> {
  readonly topic: Topic;
  /** Head of the column it is about. */
  readonly column?: string;
  /** Cast it is about; without one it is about the whole file. */
  readonly cast?: string;
  /** Casts that wait for it. */
  readonly holds: readonly string[];
  readonly text: string;
  readonly line?: number;
  readonly candidates: readonly string[];
  /** A value of the right form, for the line to copy; the first candidate if not given. */
  readonly example?: string;
  /** The answer's value, or null if it has the wrong form. */
  read(value: string): T | null;
  /** How a valid answer looks, in words. */
  readonly form: string;
}

export interface Settled<T> {
  readonly value: T;
  readonly because: string;
}

/** Answers given and questions left open while one file is understood. */
export class Inquiry {
  readonly #file: string;
  readonly #answers: readonly Answer[];
  readonly #used = new Set<Answer>();
  readonly #questions = new Map<string, Question>();
  readonly #problems: Problem[] = [];

  constructor(file: string, answers: readonly Answer[]) {
    this.#file = file;
    this.#answers = answers;
  }

  /** The answer to a matter; null leaves a question or, for an answer of the wrong form, a problem. */
  settle<T>(matter: Matter<T>): Settled<T> | null {
    const about = matter.column === undefined ? matter.topic : `${matter.topic}:${matter.column}`;
    const answer = this.#answerTo(about, matter);
    if (answer) {
      this.#used.add(answer);
      const value = matter.read(String(answer.value).trim());
      if (value !== null) return { value, because: becauseOf(answer) };
      this.#problems.push({
        code: "answers/form",
        message: `the answer "${answer.value}" to ${about} is not ${matter.form}`,
        where: { file: this.#file },
        remedy:
          matter.candidates.length > 0
            ? `Answer with one of ${matter.candidates.join(", ")}.`
            : `Answer with ${matter.form}.`,
      });
      return null;
    }
    this.#ask(about, matter);
    return null;
  }

  /** An answer that a person gave although nothing has to be asked; does not leave a question. */
  given<T>(matter: Pick<Matter<T>, "topic" | "column" | "cast" | "read">): Settled<T> | null {
    const about = matter.column === undefined ? matter.topic : `${matter.topic}:${matter.column}`;
    const answer = this.#answerTo(about, matter);
    if (!answer) return null;
    const value = matter.read(String(answer.value).trim());
    if (value === null) return null;
    this.#used.add(answer);
    return { value, because: becauseOf(answer) };
  }

  /** Answers that settled something. */
  get used(): readonly Answer[] {
    return [...this.#used];
  }

  get questions(): readonly Question[] {
    return [...this.#questions.values()];
  }

  /** Answers of a wrong form, about something unknown, or for a cast that this file does not hold. */
  problems(casts: readonly string[]): readonly Problem[] {
    const problems = [...this.#problems];
    for (const answer of this.#answers) {
      const unknown = topicProblem(answer.about, { file: this.#file });
      if (unknown) {
        problems.push(unknown);
        continue;
      }
      const [topic] = splitOnce(answer.about, ":");
      const cast = this.#castOf(answer);
      if (cast !== undefined && cast !== null && !casts.includes(cast)) {
        const near = nearest(cast, casts);
        problems.push({
          code: "answers/cast",
          message: `an answer on ${topic} is for cast "${cast}", which ${this.#file} does not hold`,
          where: { file: this.#file },
          remedy: `Its casts are ${(near.length > 0 ? near : casts.slice(0, 3)).join(", ")}.`,
        });
      }
    }
    return problems;
  }

  /** Answers meant for this very file that nothing asked for. */
  unused(): readonly Problem[] {
    return this.#answers
      .filter(
        (answer) => !this.#used.has(answer) && answer.where !== "*" && this.#castOf(answer) !== undefined,
      )
      .filter((answer) => TOPICS.some((name) => name === splitOnce(answer.about, ":")[0]))
      .map((answer) => ({
        code: "answers/not-needed",
        message: `the answer on ${answer.about} was not used: the file itself settles it, or holds nothing it fits`,
        where: { file: this.#file },
        remedy: "Compare with `wherry look --explain`, then remove or correct the answer.",
      }));
  }

  /** Cast an answer is for, null for the whole file, undefined if it is for another file. */
  #castOf(answer: Answer): string | null | undefined {
    if (answer.where === "*") return null;
    const name = this.#file.split("/").at(-1) ?? this.#file;
    for (const own of [this.#file, name]) {
      if (answer.where === own) return null;
      if (answer.where.startsWith(`${own}#`)) return answer.where.slice(own.length + 1);
    }
    return undefined;
  }

  /** From who comes first, the most special answer: for the cast, then for the file, then for all files. */
  #answerTo(about: string, matter: { readonly topic: Topic; readonly cast?: string }): Answer | null {
    const answers = this.#answers.filter((answer) => answer.about === about);
    for (const giver of new Set(answers.map(({ from }) => from))) {
      const answer = this.#mostSpecial(
        answers.filter(({ from }) => from === giver),
        matter.cast,
      );
      if (answer) return answer;
    }
    return null;
  }

  #mostSpecial(answers: readonly Answer[], cast: string | undefined): Answer | null {
    const fitting = (test: (answer: Answer) => boolean) => answers.find(test) ?? null;
    return (
      (cast === undefined ? null : fitting((answer) => this.#castOf(answer) === cast)) ??
      fitting((answer) => answer.where !== "*" && this.#castOf(answer) === null) ??
      fitting((answer) => answer.where === "*")
    );
  }

  #ask(about: string, matter: Matter<unknown>): void {
    const key = `${about}#${matter.cast ?? ""}`;
    const earlier = this.#questions.get(key);
    if (earlier) {
      const casts = [...new Set([...earlier.casts, ...matter.holds])];
      this.#questions.set(key, { ...earlier, casts });
      return;
    }
    const name = this.#file.split("/").at(-1) ?? this.#file;
    const where = matter.cast === undefined ? name : `${name}#${matter.cast}`;
    const value = matter.example ?? matter.candidates[0] ?? "";
    const place: Place =
      matter.line === undefined ? { file: this.#file } : { file: this.#file, line: matter.line };
    this.#questions.set(key, {
      about,
      text: matter.text,
      where: place,
      casts: matter.holds,
      candidates: matter.candidates,
      answerWith: `{ about: ${flowText(about)}, where: ${flowText(where)}, value: ${flowText(value)} }`,
    });
  }
}

const becauseOf = ({ about, value, where, from }: Answer): string =>
  `answered: ${about} is "${value}" (${from === undefined ? "" : `${from}, `}${where})`;

/** What is wrong with the subject of an answer; null if questions can be about it. */
export function topicProblem(about: string, where: Place): Problem | null {
  const [topic, column] = splitOnce(about, ":");
  if (TOPICS.some((name) => name === topic) && column !== "") return null;
  const near = nearest(topic, TOPICS);
  return {
    code: "answers/about",
    message: `there is no question about "${about}"`,
    where,
    remedy: near.length > 0 ? `Did you mean ${near.join(" or ")}?` : `Known are ${TOPICS.join(", ")}.`,
  };
}

/** Text as a YAML flow scalar: plain where nothing in it can be misread. */
const flowText = (text: string): string =>
  /^[A-Za-z][A-Za-z0-9_]*$/.test(text) && !/^(?:true|false|null|yes|no|on|off|y|n)$/i.test(text)
    ? text
    : JSON.stringify(text);

function splitOnce(text: string, sign: string): [string, string | undefined] {
  const at = text.indexOf(sign);
  return at < 0 ? [text, undefined] : [text.slice(0, at), text.slice(at + 1)];
}

/** Reads an answer that must be one of some words; case and blanks do not matter. */
export const oneOf =
  <T extends string>(...values: readonly T[]) =>
  (text: string): T | null =>
    values.find((value) => value.toLowerCase() === text.toLowerCase().replace(/\s+/g, " ")) ?? null;
