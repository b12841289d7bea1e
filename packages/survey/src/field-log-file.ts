import { readFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import type { SurveySheet } from "@wherry/contracts";
import { type JoinedLog, joinFieldLog, readFieldLog } from "@wherry/converter";
import { type Cast, fail, type Result, succeed } from "@wherry/core";
import type { Answer } from "@wherry/formats";
import { isIoError, problemFromIo } from "./problem-from-io.ts";

const NO_LOG: JoinedLog = { facts: new Map(), questions: [], warnings: [], answersUsed: [] };

/** The field log that a command line or a sheet names; undefined if neither does. */
export const logPath = (
  given: string | undefined,
  sheet: Pick<SurveySheet, "field_log"> = {},
  sheetPath = "",
): string | undefined =>
  given ?? (sheet.field_log === undefined ? undefined : join(dirname(sheetPath), sheet.field_log));

/**
 * What a field log tells of casts; nothing where there is no log.
 *
 * @param casts under the ids of the sheet
 */
export async function readLog(
  path: string | undefined,
  answers: readonly Answer[],
  casts: readonly Cast[],
  sheet: Pick<SurveySheet, "people">,
): Promise<Result<JoinedLog>> {
  if (path === undefined) return succeed(NO_LOG);
  try {
    const bytes = new Uint8Array(await readFile(path));
    const log = readFieldLog(
      bytes,
      basename(path),
      answers,
      casts.map(({ id }) => id),
    );
    return log.ok ? joinFieldLog(log.value, casts, sheet) : log;
  } catch (error) {
    if (isIoError(error)) return fail(problemFromIo(error, path));
    throw error;
  }
}
