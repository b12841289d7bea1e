import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { dirname, extname, relative, resolve, sep } from "node:path";
import { understandFile } from "@wherry/converter";
import type { Problem } from "@wherry/core";
import type { Answer, UnderstoodFile } from "@wherry/formats";
import { findFiles } from "./input-files.ts";
import { problemFromIo } from "./problem-from-io.ts";

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
  ".yaml .yml .json .jsonl .md .html .pdf .svg .png .jpg .jpeg .gif .tif .tiff .docx .xlsx .ods .odt .gpx .kml .py .r .m"
    .split(" ")
    .concat(".nc", ".nc4", ".cdf"),
);

/**
 * Reads and understands exports in the order of their names, so that every run meets them alike.
 *
 * @param naming what the casts call their source: the path as given, or, where it goes into products, the path
 *               from the folder that holds all exports of the run
 */
export async function readExports(
  paths: readonly string[],
  answers: readonly Answer[],
  naming: "as given" | "relative",
  { signal, onProgress }: RunOptions,
): Promise<ReadExports> {
  const found = await findFiles(paths);
  const problems: Problem[] = [...found.problems];
  const wanted = found.files.filter(
    (path) => paths.includes(path) || !NO_EXPORTS.has(extname(path).toLowerCase()),
  );
  const skipped = found.files.filter((path) => !wanted.includes(path));
  const home = commonFolder(wanted);
  const exports: ReadExport[] = [];
  for (const [index, path] of wanted.entries()) {
    signal?.throwIfAborted();
    onProgress?.(index, wanted.length, path);
    const name = naming === "as given" ? path : relative(home, resolve(path)).split(sep).join("/");
    let bytes: Uint8Array;
    try {
      bytes = await readFile(path);
    } catch (error) {
      problems.push(problemFromIo(error, path));
      continue;
    }
    const sha256 = createHash("sha256").update(bytes).digest("hex");
    const understood = understandFile(bytes, name, { sha256, answers });
    if (understood.ok) exports.push({ path, understood: understood.value });
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
