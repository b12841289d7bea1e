import type { Result } from "@wherry/core";
import type { AskedMatter, Asking, ReadContext } from "../src/asking.ts";
import type { UnderstoodFile } from "../src/understood.ts";

export interface Nobody extends Asking {
  /** What was asked and stayed open. */
  readonly asked: Pick<AskedMatter<unknown>, "topic" | "column" | "cast" | "holds" | "candidates">[];
}

/** Somebody to ask who has no answers, or those given by topic ("decade", "time#cast", "units:head"). */
export function noAnswers(answers: Readonly<Record<string, string>> = {}): Nobody {
  const asked: Nobody["asked"] = [];
  const find = ({ topic, column, cast }: { topic: string; column?: string; cast?: string }) => {
    const about = column === undefined ? topic : `${topic}:${column}`;
    return (cast === undefined ? undefined : answers[`${about}#${cast}`]) ?? answers[about];
  };
  const given: Asking["given"] = (matter) => {
    const text = find(matter);
    const value = text === undefined ? null : matter.read(text);
    return value === null ? null : { value, because: `answered: ${text}` };
  };
  return {
    asked,
    given,
    settle: (matter) => {
      const answer = given(matter);
      if (!answer) asked.push(matter);
      return answer;
    },
  };
}

export const SHA256 = "0".repeat(64);

type Reader = (bytes: Uint8Array, path: string, context: ReadContext) => Result<UnderstoodFile>;

export const attempt = (reader: Reader, bytes: Uint8Array, path: string, asking: Asking = noAnswers()) =>
  reader(bytes, path, { sha256: SHA256, asking });

/** Reads what must be readable. */
export function readOk(
  reader: Reader,
  bytes: Uint8Array,
  path: string,
  answers: Readonly<Record<string, string>> = {},
): UnderstoodFile {
  const result = attempt(reader, bytes, path, noAnswers(answers));
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}
