import { readdir } from "node:fs/promises";
import { dirname, extname, join, relative, resolve, sep } from "node:path";
import { fail, type Problem, type Result } from "@wherry/core";
import type { UnderstoodFile } from "@wherry/formats";
import { readDescribedTable } from "./csvw-input.ts";
import { findFiles } from "./input-files.ts";
import { readNetcdf } from "./netcdf-input.ts";
import { isIoError, problemFromIo } from "./problem-from-io.ts";
import type { ReadingKnowledge } from "./reading-knowledge.ts";
import { isResult } from "./result-folder.ts";
import { inOrder, startWorkers, type Workers } from "./workers.ts";

export type OnProgress = (done: number, total: number, what: string) => void;

export interface RunOptions {
  readonly signal?: AbortSignal;
  readonly onProgress?: OnProgress;
}

export interface ReadExport {
  /** Where it was read. */
  readonly path: string;
  readonly understood: UnderstoodFile;
}

export interface ReadExports {
  readonly exports: readonly ReadExport[];
  /** Found in a folder, and by their kind no exports. */
  readonly skipped: readonly string[];
  /** Files that can't be read or hold no cast. */
  readonly problems: readonly Problem[];
}

/** Kinds of file that lie about in survey folders and hold no casts. Named one by one they are read all the same. */
const NO_EXPORTS = new Set(
  ".yaml .yml .json .jsonl .md .html .pdf .svg .png .jpg .jpeg .gif .tif .tiff .docx .xlsx .ods .odt .gpx .kml .py .r .m".split(
    " ",
  ),
);

export interface ReadOptions extends RunOptions {
  /** Files that lie among the exports and are something else, as a field log. */
  readonly apart?: readonly string[];
  /** To look only: results of earlier runs are read too, and files without a cast; otherwise both are problems. */
  readonly looking?: boolean;
  /** One job without threads if not given. */
  readonly workers?: Workers;
}

/**
 * Reads and understands exports in the order of their names, so that every run meets them alike.
 *
 * @param naming what the casts call their source: the path as given, or, where it goes into products, the path
 *               from the folder that holds all exports of the run
 *               Folders within folders that hold the result of an earlier run are passed over.
 */
export async function readExports(
  paths: readonly string[],
  { answers, names }: Pick<ReadingKnowledge, "answers" | "names">,
  naming: "as given" | "relative",
  { signal, onProgress, looking = false, workers, apart = [] }: ReadOptions,
): Promise<ReadExports> {
  const named = looking ? [] : await namedResults(paths);
  if (named.length > 0) return { exports: [], skipped: [], problems: named };
  const found = await findFiles(paths, isResult);
  const problems: Problem[] = [...found.problems];
  const others = new Set(apart.map((path) => resolve(path)));
  const isExport = (path: string) => !NO_EXPORTS.has(extname(path).toLowerCase());
  const files = found.files.filter((path) => !others.has(resolve(path)));
  const wanted = files.filter((path) => paths.includes(path) || isExport(path));
  const taken = new Set(wanted);
  const skipped = [...files.filter((path) => !taken.has(path)), ...found.passedOver];
  const home = commonFolder(wanted);
  const { understand, jobs } = workers ?? (await startWorkers(1));
  const results = await inOrder(wanted, jobs, async (path, index): Promise<Result<UnderstoodFile>> => {
    // An interruption is heard only between turns of the event loop.
    if (index % 16 === 0) await new Promise(setImmediate);
    signal?.throwIfAborted();
    onProgress?.(index, wanted.length, path);
    const name = naming === "as given" ? path : relative(home, resolve(path)).split(sep).join("/");
    try {
      return (
        (await readNetcdf(path, name, answers)) ??
        (await readDescribedTable(path, name, answers)) ??
        (await understand({ path, name, answers, names }))
      );
    } catch (error) {
      if (!isIoError(error)) throw error;
      return fail(problemFromIo(error, path));
    }
  });
  const exports: ReadExport[] = [];
  for (const [index, understood] of results.entries()) {
    const path = wanted[index]!;
    if (understood.ok && understood.value.casts.length === 0 && !looking)
      problems.push(understood.value.findings[0] ?? noCast(path));
    else if (understood.ok) exports.push({ path, understood: understood.value });
    else problems.push(...understood.problems);
  }
  return { exports, skipped, problems };
}

const noCast = (path: string): Problem => ({
  code: "input/no-cast",
  message: `${path} holds no cast`,
  where: { file: path },
  remedy: `See what it holds with wherry look ${path}.`,
});

/** A result holds every cast in several files. */
async function namedResults(paths: readonly string[]): Promise<Problem[]> {
  const problems: Problem[] = [];
  for (const path of paths) {
    const names = await readdir(path).catch(() => []);
    if (isResult(names))
      problems.push({
        code: "input/result",
        message: `${path} is the result of an earlier run, which holds every cast in several files`,
        where: { file: path },
        remedy: `Name the files to read, such as ${join(path, names.find((name) => name.endsWith("_full.nc")) ?? "<id>_full.nc")}.`,
      });
  }
  return problems;
}

/** The innermost folder that holds all files. */
function commonFolder(files: readonly string[]): string {
  const [first, ...others] = files.map((file) => dirname(resolve(file)).split(sep));
  if (first === undefined) return ".";
  const isShared = (part: string, index: number) => others.every((parts) => parts[index] === part);
  const end = first.findIndex((part, index) => !isShared(part, index));
  return (end < 0 ? first : first.slice(0, end)).join(sep) || sep;
}
