import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { basename, dirname, join, relative, resolve } from "node:path";
import type { SurveySheet } from "@wherry/contracts";
import { type BaseSheet, inheritedPaths, readBaseSheet, readSheet, standAloneText } from "@wherry/converter";
import { fail, type Problem, type Result, succeed } from "@wherry/core";
import { isIoError, problemFromIo } from "./problem-from-io.ts";

export interface SheetFile {
  /** The sheet with what it inherits written into it, so that it stands alone. */
  readonly text: string;
  readonly sheet: SurveySheet;
}

/** A survey sheet with all that it inherits from. */
export async function readSheetFile(path: string): Promise<Result<SheetFile>> {
  const text = await readText(path, null);
  if (!text.ok) return text;
  const bases: BaseSheet[] = [];
  const gathered = await gatherBases(path, text.value, [resolve(path)], bases);
  if (!gathered.ok) return gathered;
  const read = readSheet(text.value, path, bases);
  if (!read.ok) return read;
  const standsAlone = standAloneText(text.value, bases);
  return succeed({ text: standsAlone, sheet: read.value }, [...gathered.warnings, ...read.warnings]);
}

/** Adds the sheets that a sheet inherits from, each before those that it inherits from in turn. */
async function gatherBases(
  path: string,
  text: string,
  chain: readonly string[],
  bases: BaseSheet[],
): Promise<Result<void>> {
  const warnings: Problem[] = [];
  for (const name of inheritedPaths(text)) {
    const place = resolve(dirname(path), name);
    if (chain.includes(place)) {
      const round = [...chain.slice(chain.indexOf(place)), place].map((each) => basename(each));
      return fail({
        code: "sheet/inherit-cycle",
        message: `the sheets inherit from each other: ${round.join(", which inherits from ")}`,
        where: { file: path },
        remedy: "Remove one of the inherit: lines.",
      });
    }
    const own = await readText(place, { file: path, name });
    if (!own.ok) return own;
    const sha256 = createHash("sha256").update(own.value).digest("hex");
    // two ways may lead to one base
    if (bases.some((base) => base.sha256 === sha256)) continue;
    const base = readBaseSheet(own.value, name, sha256);
    if (!base.ok) return base;
    bases.push({
      ...base.value,
      content: movedTo(base.value.content, relative(dirname(chain[0]!), dirname(place))),
    });
    warnings.push(...base.warnings);
    const further = await gatherBases(place, own.value, [...chain, place], bases);
    if (!further.ok) return further;
    warnings.push(...further.warnings);
  }
  return succeed(undefined, warnings);
}

/** Paths in a base sheet begin at its own folder; in the sheet that inherits them, at that one's. */
function movedTo(content: BaseSheet["content"], folder: string): BaseSheet["content"] {
  const moved = (path: unknown) => (typeof path === "string" ? join(folder, path) : path);
  const { notes, field_log: log } = content;
  return {
    ...content,
    ...(Array.isArray(notes) ? { notes: notes.map(moved) } : {}),
    ...(log === undefined ? {} : { field_log: moved(log) }),
  };
}

async function readText(
  path: string,
  inherited: { readonly file: string; readonly name: string } | null,
): Promise<Result<string>> {
  try {
    return succeed(await readFile(path, "utf8"));
  } catch (error) {
    if (!isIoError(error)) throw error;
    if (inherited === null) return fail(problemFromIo(error, path));
    const { message } = problemFromIo(error, inherited.name);
    return fail({
      code: "sheet/inherit",
      message: `${message}, and ${inherited.file} inherits from it`,
      where: { file: inherited.file },
      remedy: "Paths of inherit: begin at the folder of the sheet.",
    });
  }
}
