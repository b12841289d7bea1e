import { readFile, rename, rm, writeFile } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import type { Judgement, SurveySheet } from "@wherry/contracts";
import { holding, type PlacedJudgement, readJudgements } from "@wherry/converter";
import { fail, formatIsoTime, nearestNames, type Result, succeed } from "@wherry/core";
import { isIoError, problemFromIo } from "./problem-from-io.ts";
import { readSheetFile } from "./sheet-file.ts";

/** Name of the file of judgements, beside the sheet and in a result. */
export const JUDGEMENTS = "judgements.jsonl";

export interface JudgementsFile {
  readonly path: string;
  /** Null if there is no file. */
  readonly text: string | null;
  /** Judgements that hold. */
  readonly entries: readonly PlacedJudgement[];
}

/** The judgements of a survey; without a path those beside the sheet, if there are any. */
export async function readJudgementsFile(sheet: string, path?: string): Promise<Result<JudgementsFile>> {
  const file = path ?? join(dirname(sheet), JUDGEMENTS);
  try {
    const text = await readFile(file, "utf8");
    const read = readJudgements(text, file);
    return read.ok ? succeed({ path: file, text, entries: holding(read.value) }) : read;
  } catch (error) {
    if (!isIoError(error)) throw error;
    const problem = problemFromIo(error, file);
    if (path === undefined && problem.code === "io/enoent")
      return succeed({ path: file, text: null, entries: [] });
    return fail(problem);
  }
}

/** A flag on rows of a cast, or the undoing of an earlier judgement. */
export type Judged =
  | {
      readonly cast: string;
      readonly quantity: string;
      readonly flag: 1 | 2 | 3 | 4;
      readonly range: { readonly of: "lines" | "pressure"; readonly from: number; readonly to: number };
    }
  | { readonly undo: string };

export interface Judging {
  readonly judged: Judged;
  readonly who: string;
  readonly why: string;
  /** Epoch seconds. */
  readonly now: number;
  /** File to add to; `judgements.jsonl` beside the sheet if not given. */
  readonly judgements?: string;
}

/**
 * Adds a line to the judgements of a survey; nothing in the file changes, and what stood there stays if the disk
 * refuses.
 *
 * @returns the line, and the file that it stands in
 */
export async function judge(
  sheet: string,
  { judged, who, why, now, judgements }: Judging,
): Promise<Result<{ readonly path: string; readonly judgement: Judgement }>> {
  const read = await readSheetFile(sheet);
  if (!read.ok) return read;
  const path = judgements ?? join(dirname(sheet), JUDGEMENTS);
  const former = await formerText(path);
  if (!former.ok) return former;
  const entries = readJudgements(former.value, path);
  if (!entries.ok) return entries;
  const about =
    "undo" in judged ? succeed({ undo: judged.undo }) : aboutCast(read.value.sheet, judged, sheet);
  if (!about.ok) return about;
  const ids = new Set(entries.value.map(({ judgement }) => judgement.id));
  let number = ids.size + 1;
  while (ids.has(`j${number}`)) number++;
  const judgement = {
    version: 1,
    id: `j${number}`,
    who,
    when: formatIsoTime(now),
    why,
    ...about.value,
  } as Judgement;
  const start = former.value === "" || former.value.endsWith("\n") ? former.value : `${former.value}\n`;
  const text = `${start}${JSON.stringify(judgement)}\n`;
  // what is written must be readable: an id to undo that is none is told here
  const checked = readJudgements(text, path);
  if (!checked.ok) return checked;
  const part = join(dirname(resolve(path)), `.${basename(path)}.wherry-part`);
  try {
    await writeFile(part, text);
    await rename(part, path);
  } catch (error) {
    await rm(part, { force: true });
    if (!isIoError(error)) throw error;
    return fail(problemFromIo(error, path));
  }
  return succeed({ path, judgement });
}

async function formerText(path: string): Promise<Result<string>> {
  try {
    return succeed(await readFile(path, "utf8"));
  } catch (error) {
    if (!isIoError(error)) throw error;
    const problem = problemFromIo(error, path);
    return problem.code === "io/enoent" ? succeed("") : fail(problem);
  }
}

/** A judgement is bound to the bytes that were looked at. */
function aboutCast(
  sheet: SurveySheet,
  { cast, quantity, flag, range }: Exclude<Judged, { undo: string }>,
  file: string,
): Result<Partial<Judgement>> {
  const casts = sheet.casts ?? [];
  const listed = casts.find(({ id }) => id === cast);
  if (listed === undefined) {
    const near = nearestNames(
      cast,
      casts.map(({ id }) => id),
    );
    return fail({
      code: "judgements/no-cast",
      message: `the sheet lists no cast ${cast}`,
      where: { file },
      remedy:
        near.length > 0
          ? `Did you mean ${near.join(" or ")}?`
          : "Take the copy of the sheet in the result: it lists all casts.",
    });
  }
  if (listed.sha256 === undefined)
    return fail({
      code: "judgements/no-checksum",
      message: `the sheet tells no sha256 of the source file of ${cast}, to which a judgement is bound`,
      where: { file },
      remedy: `Add sha256: to the line of ${cast}; look --json and a sheet that wherry sheet writes have it.`,
    });
  return succeed({
    cast,
    sha256: listed.sha256,
    quantity,
    ...(range.of === "lines" ? { lines: [range.from, range.to] } : { pressure: [range.from, range.to] }),
    flag,
  });
}
