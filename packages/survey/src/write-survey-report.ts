import { stat, writeFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { type Cast, type LayerMeans, parseIsoTime } from "@wherry/core";
import type { CheckedFile } from "@wherry/validator";
import { check } from "./check.ts";
import type { ReportFacts } from "./report/survey-report.ts";
import type { RunOptions } from "./understand-files.ts";

/** Most bytes and files that are checked along the way; more would double the time of the whole. */
const MOST_BYTES = 200_000_000;
const MOST_FILES = 200;

/**
 * Checks the netCDF files in the folder and writes the survey on one page beside them.
 *
 * @returns the page's name
 */
export async function writeSurveyReport(
  folder: string,
  written: readonly string[],
  casts: readonly Cast[],
  layers: ReadonlyMap<string, LayerMeans>,
  facts: Omit<ReportFacts, "checked">,
  options: RunOptions & { readonly vocabulary?: string },
): Promise<string> {
  // loaded only here: the drawing brings the shores of the world with it
  const { surveyReport } = await import("./report/survey-report.ts");
  const checked = await verdicts(folder, written, facts.created, options);
  const name = `${facts.sheet.survey.id}_report.html`;
  await writeFile(join(folder, name), surveyReport(casts, layers, { ...facts, checked }));
  return name;
}

async function verdicts(
  folder: string,
  written: readonly string[],
  created: string,
  { signal, vocabulary }: RunOptions & { readonly vocabulary?: string },
): Promise<readonly CheckedFile[] | null> {
  const files = written.filter((name) => name.endsWith(".nc")).map((name) => join(folder, name));
  const sizes = await Promise.all(files.map(async (path) => (await stat(path)).size));
  if (files.length > MOST_FILES || sizes.reduce((sum, size) => sum + size, 0) > MOST_BYTES) return null;
  const moment = parseIsoTime(created);
  if (!moment.ok) throw new RangeError(`not a moment: ${created}`);
  const outcome = await check(files, {
    now: moment.value.epochSeconds,
    ...(signal === undefined ? {} : { signal }),
    ...(vocabulary === undefined ? {} : { vocabulary }),
  });
  return outcome.ok ? outcome.value.files.map((file) => ({ ...file, path: basename(file.path) })) : null;
}
