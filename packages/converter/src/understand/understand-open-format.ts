import { fail, type Result, succeed } from "@wherry/core";
import {
  type Answer,
  type ReadContext,
  readCsvw,
  readNetcdfCasts,
  type UnderstoodFile,
} from "@wherry/formats";
import type { Dataset } from "@wherry/netcdf";
import { Inquiry } from "./inquiry.ts";

type Reader = (bytes: Uint8Array, path: string, context: ReadContext) => Result<UnderstoodFile>;

interface Context {
  readonly sha256: string;
  readonly answers: readonly Answer[];
}

/** Reads a file of an open format; what the answers do not settle stays as its questions. */
export function understandOpenFormat(
  read: Reader,
  bytes: Uint8Array,
  path: string,
  { sha256, answers }: Context,
): Result<UnderstoodFile> {
  const inquiry = new Inquiry(path, answers);
  return withQuestions(read(bytes, path, { sha256, asking: inquiry }), inquiry);
}

/** The same for an open netCDF file of a published arrangement. */
export async function understandNetcdf(
  dataset: Dataset,
  path: string,
  { sha256, answers }: Context,
): Promise<Result<UnderstoodFile>> {
  const inquiry = inquiryForData(path, answers);
  return withQuestions(await readNetcdfCasts(dataset, { path, sha256, asking: inquiry }), inquiry);
}

/** The same for a table with the document that describes it. */
export async function understandTable(
  bytes: Uint8Array,
  metadata: Uint8Array,
  path: string,
  { sha256, answers }: Context,
): Promise<Result<UnderstoodFile>> {
  const inquiry = inquiryForData(path, answers);
  return withQuestions(await readCsvw(bytes, metadata, { path, sha256, asking: inquiry }), inquiry);
}

/** Notes on files with certain words are on exports, not on files of data. */
const inquiryForData = (path: string, answers: readonly Answer[]): Inquiry =>
  new Inquiry(
    path,
    answers.filter(({ filesWith }) => filesWith === undefined),
  );

function withQuestions(file: Result<UnderstoodFile>, inquiry: Inquiry): Result<UnderstoodFile> {
  if (!file.ok) return file;
  const [first, ...others] = inquiry.problems(file.value.casts.map(({ id }) => id));
  if (first) return fail(first, ...others);
  const unused = inquiry.unused();
  const findings = [...file.value.findings, ...unused];
  return succeed({ ...file.value, questions: inquiry.questions, findings, answersUsed: inquiry.used }, [
    ...file.warnings,
    ...unused,
  ]);
}
