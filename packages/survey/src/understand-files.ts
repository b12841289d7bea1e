import { dirname, extname, relative, resolve, sep } from "node:path";
import { fail, type Problem, type Result } from "@wherry/core";
import type { UnderstoodFile } from "@wherry/formats";
import { readDescribedTable } from "./csvw-input.ts";
import { findFiles } from "./input-files.ts";
import { lookAtNetcdf, readNetcdfExport } from "./netcdf-input.ts";
import { isIoError, problemFromIo } from "./problem-from-io.ts";
import type { ReadingKnowledge } from "./reading-knowledge.ts";
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
const NETCDF = new Set([".nc", ".nc4", ".cdf"]);

export interface ReadOptions extends RunOptions {
  /** Files that lie among the exports and are something else, as a field log. */
  readonly apart?: readonly string[];
  readonly netcdf?: "read" | "refuse";
  /** One job without threads if not given. */
  readonly workers?: Workers;
}

/**
 * Reads and understands exports in the order of their names, so that every run meets them alike.
 *
 * @param naming what the casts call their source: the path as given, or, where it goes into products, the path
 *               from the folder that holds all exports of the run
 * @param netcdf whether netCDF files of all kinds, and tables with a description beside them, are read; otherwise the
 *               former are skipped in folders, and both are a problem where named, but for Argo profiles
 */
export async function readExports(
  paths: readonly string[],
  { answers, names }: Pick<ReadingKnowledge, "answers" | "names">,
  naming: "as given" | "relative",
  { signal, onProgress, netcdf = "refuse", workers, apart = [] }: ReadOptions,
): Promise<ReadExports> {
  const found = await findFiles(paths);
  const problems: Problem[] = [...found.problems];
  const others = new Set(apart.map((path) => resolve(path)));
  const isExport = (kind: string) => !NO_EXPORTS.has(kind) && (netcdf === "read" || !NETCDF.has(kind));
  const files = found.files.filter((path) => !others.has(resolve(path)));
  const wanted = files.filter((path) => paths.includes(path) || isExport(extname(path).toLowerCase()));
  const taken = new Set(wanted);
  const skipped = files.filter((path) => !taken.has(path));
  const home = commonFolder(wanted);
  const { understand, jobs } = workers ?? (await startWorkers(1));
  const results = await inOrder(wanted, jobs, async (path, index): Promise<Result<UnderstoodFile>> => {
    signal?.throwIfAborted();
    onProgress?.(index, wanted.length, path);
    const name = naming === "as given" ? path : relative(home, resolve(path)).split(sep).join("/");
    try {
      return (
        (await (netcdf === "read" ? lookAtNetcdf(path, name) : readNetcdfExport(path, name, answers))) ??
        (await readDescribedTable(path, name, netcdf)) ??
        (await understand({ path, name, answers, names }))
      );
    } catch (error) {
      if (!isIoError(error)) throw error;
      return fail(problemFromIo(error, path));
    }
  });
  const exports: ReadExport[] = [];
  for (const [index, understood] of results.entries()) {
    if (understood.ok) exports.push({ path: wanted[index]!, understood: understood.value });
    else problems.push(...understood.problems);
  }
  return { exports, skipped, problems };
}

/** The innermost folder that holds all files. */
function commonFolder(files: readonly string[]): string {
  const [first, ...others] = files.map((file) => dirname(resolve(file)).split(sep));
  if (first === undefined) return ".";
  const isShared = (part: string, index: number) => others.every((parts) => parts[index] === part);
  const end = first.findIndex((part, index) => !isShared(part, index));
  return (end < 0 ? first : first.slice(0, end)).join(sep) || sep;
}
