import type { SurveySheet } from "@wherry/contracts";
import { fail, failOr, type Result } from "@wherry/core";
import type { ErrorObject } from "ajv";
import { type BaseSheet, inherited } from "./inherit-sheet.ts";
import { parseYaml } from "./parse-yaml.ts";
import { type Locate, schemaProblems } from "./schema-problems.ts";
import { sheetConflicts } from "./sheet-conflicts.ts";
import { baseValidator, sheetForm, sheetValidator } from "./sheet-schema.ts";
import { textProblems } from "./text-problems.ts";

/**
 * A survey sheet from its text. Every problem is reported at once, with line and column.
 *
 * @param file  name by which problems call the sheet
 * @param bases sheets that it inherits from, nearest first
 */
export function readSheet(text: string, file: string, bases: readonly BaseSheet[] = []): Result<SurveySheet> {
  const read = parseYaml(text, file, sheetForm);
  if (!read.ok) return read;
  const { content, locate } = read.value;
  if (bases.length === 0 && content.inherit !== undefined)
    return fail({
      code: "sheet/inherit",
      message: "the sheet inherits from another, which was not read with it",
      where: locate(["inherit"], "value"),
      remedy: "Read it together with the sheets that it names.",
    });
  const whole: unknown = bases.length === 0 ? content : inherited(content, bases);
  const validate = sheetValidator();
  if (validate(whole)) {
    const { forbidden, doubtful } = textProblems(whole, locate);
    const problems = [...forbidden, ...sheetConflicts(whole, locate)];
    return failOr(problems, () => whole, [...read.warnings, ...doubtful]);
  }
  return invalid(validate.errors, locate);
}

/** A sheet that others inherit from: all keys are optional, and it has no casts and no moment of writing. */
export function readBaseSheet(text: string, file: string, sha256: string): Result<BaseSheet> {
  const read = parseYaml(text, file, sheetForm);
  if (!read.ok) return read;
  const { content, locate } = read.value;
  for (const key of ["casts", "created"])
    if (content[key] !== undefined)
      return fail({
        code: "sheet/inherit",
        message: `a sheet that others inherit from has no ${key}`,
        where: locate([key], "key"),
        remedy: `Move ${key} into the sheet of the survey.`,
      });
  const validate = baseValidator();
  if (validate(content)) return { ok: true, value: { file, sha256, content }, warnings: read.warnings };
  return invalid(validate.errors, locate);
}

function invalid(errors: readonly ErrorObject[] | null | undefined, locate: Locate): Result<never> {
  const [first, ...rest] = schemaProblems(errors ?? [], locate);
  return first
    ? fail(first, ...rest)
    : fail({
        code: "sheet/invalid",
        message: "the sheet is not of the form of a survey sheet",
        where: locate([], "value"),
      });
}
