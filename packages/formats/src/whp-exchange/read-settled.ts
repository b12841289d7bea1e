import { type Cast, type Result, succeed } from "@wherry/core";
import type { Asking, ReadContext } from "../asking.ts";
import { fileStem } from "../file-stem.ts";
import { settleTime, settleTimeRoles } from "../settle-cast.ts";
import type { Question, UnderstoodFile } from "../understood.ts";
import { readWhpExchange } from "./read-whp-exchange.ts";

/** One WHP-Exchange CTD file; what the format leaves open is settled by answers, or asked. */
export function readWhpExchangeFile(
  bytes: Uint8Array,
  path: string,
  { sha256, asking }: ReadContext,
): Result<UnderstoodFile> {
  const read = readWhpExchange(bytes, path, { sha256, id: fileStem(path) });
  if (!read.ok) return read;
  const { casts, questions } = read.value;
  const settled = settleRoles(settleTimes(casts, questions, asking), questions, asking);
  return succeed({ ...read.value, casts: settled, questions: [] }, read.warnings);
}

/** Times of casts whose file gives the day alone. */
export function settleTimes(
  casts: readonly Cast[],
  questions: readonly Question[],
  asking: Asking,
): readonly Cast[] {
  return casts.map((cast): Cast => {
    const question = questions.find(({ about, casts: held }) => about === "time" && held.includes(cast.id));
    if (!question) return cast;
    const { text, where } = question;
    const answer = settleTime(asking, { id: cast.id, text, line: where.line ?? 1 });
    if (!answer) return cast;
    const said = {
      fact: "time",
      certainty: "answered" as const,
      because: answer.because,
      where: { file: cast.source.path },
    };
    return { ...cast, time: answer.value, timeRole: "start", evidence: [...cast.evidence, said] };
  });
}

/** What the times stand for: one question for all casts. */
export function settleRoles(
  casts: readonly Cast[],
  questions: readonly Question[],
  asking: Asking,
): readonly Cast[] {
  const question = questions.find(({ about }) => about === "timeRole");
  if (!question) return casts;
  const { line } = question.where;
  return settleTimeRoles(casts, asking, {
    text: casts.length > 1 ? question.text.replace("the cast its", "each cast its") : question.text,
    ...(line === undefined || casts.length > 1 ? {} : { line }),
  });
}
