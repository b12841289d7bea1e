import { fail, type Result, succeed } from "@wherry/core";
import type { Answer, ReadContext, UnderstoodFile } from "@wherry/formats";
import { Inquiry } from "./inquiry.ts";

type Reader = (bytes: Uint8Array, path: string, context: ReadContext) => Result<UnderstoodFile>;

/** Reads a file of an open format; what the answers do not settle stays as its questions. */
export function understandOpenFormat(
  read: Reader,
  bytes: Uint8Array,
  path: string,
  { sha256, answers }: { readonly sha256: string; readonly answers: readonly Answer[] },
): Result<UnderstoodFile> {
  const inquiry = new Inquiry(path, answers);
  const file = read(bytes, path, { sha256, asking: inquiry });
  if (!file.ok) return file;
  const [first, ...others] = inquiry.problems(file.value.casts.map(({ id }) => id));
  if (first) return fail(first, ...others);
  const unused = inquiry.unused();
  const findings = [...file.value.findings, ...unused];
  return succeed({ ...file.value, questions: inquiry.questions, findings }, [...file.warnings, ...unused]);
}
