import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { dirname, extname, relative, sep } from "node:path";
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

/** An export with the bytes it was understood from. */
export interface ReadExport {
  /** Where it was read. */
  readonly path: string;
  /** How products and records call it: relative to the folder that holds all exports of the run. */
  readonly name: string;
  readonly bytes: Uint8Array;
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

/** Reads and understands exports in the order of their names, so that every run meets them alike. */
export async function readExports(
  paths: readonly string[],
  answers: readonly Answer[],
  { signal, onProgress }: RunOptions,
): Promise<ReadExports> {
  const found = await findFiles(paths);
  const problems: Problem[] = [...found.problems];
  const wanted = found.files.filter((path) => paths.includes(path) || !NO_EXPORTS.has(extname(path).toLowerCase()));
  const skipped = found.files.filter((path) => !wanted.includes(path));
  const home = commonFolder(wanted);
  const exports: ReadExport[] = [];
  for (const [index, path] of wanted.entries()) {
    signal?.throwIfAborted();
    onProgress?.(index, wanted.length, path);
    const name = relative(home, path).split(sep).join("/");
    let bytes: Uint8Array;
    try {
      bytes = await readFile(path);
    } catch (error) {
      problems.push(problemFromIo(error, path));
      continue;
    }
    const sha256 = createHash("sha256").update(bytes).digest("hex");
    const understood = understandFile(bytes, name, { sha256, answers });
    if (understood.ok) exports.push({ path, name, bytes, understood: understood.value });
    else problems.push(...understood.problems);
  }
  return { exports, skipped, problems };
}

/** The innermost folder that holds all files. */
function commonFolder(files: readonly string[]): string {
  const [first = ".", ...others] = files.map((file) => dirname(file).split(sep));
  if (typeof first === "string") return first;
  let length = first.length;
  for (const parts of others) {
    while (parts.slice(0, length).join(sep) !== first.slice(0, length).join(sep)) length--;
  }
  return first.slice(0, length).join(sep);
}
