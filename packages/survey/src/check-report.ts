import { writeFile } from "node:fs/promises";
import { extname } from "node:path";
import { fail, type Result, succeed } from "@wherry/core";
import { checkDocument, htmlPage, junitText, letterText, sarifDocument } from "@wherry/validator";
import type { CheckOutcome } from "./check.ts";
import { isIoError, problemFromIo } from "./problem-from-io.ts";

type Form = (outcome: CheckOutcome, version: string) => string;

const json = (document: unknown): string => `${JSON.stringify(document, null, 2)}\n`;

/** Form of a report by the ending of its name. */
const FORMS: ReadonlyMap<string, Form> = new Map<string, Form>([
  [".html", ({ files }) => htmlPage(files)],
  [".md", ({ files }) => letterText(files)],
  [".json", ({ files, skipped }) => json(checkDocument(files, skipped))],
  [".sarif", ({ files, rules }, version) => json(sarifDocument(files, { version, rules }))],
  [".xml", ({ files }) => junitText(files)],
]);

/** Whether the names of the reports tell their forms; asked before anything is checked. */
export function reportForms(paths: readonly string[]): Result<readonly string[]> {
  const wrong = paths.find((path) => !FORMS.has(extname(path).toLowerCase()));
  if (wrong === undefined) return succeed(paths);
  return fail({
    code: "check/report-form",
    message: `the ending of ${wrong} names no form of a report`,
    where: {},
    remedy:
      "Use .html for a page, .md for a letter, .sarif for code hosts and editors, .xml (JUnit) for test servers, .json.",
  });
}

/** Writes the verdict in the form that the ending of the name asks for. */
export async function writeReport(
  path: string,
  outcome: CheckOutcome,
  version: string,
): Promise<Result<string>> {
  const form = FORMS.get(extname(path).toLowerCase());
  if (form === undefined) throw new RangeError(`no form of a report for ${path}`);
  try {
    await writeFile(path, form(outcome, version));
    return succeed(path);
  } catch (error) {
    if (!isIoError(error)) throw error;
    return fail(problemFromIo(error, path));
  }
}
