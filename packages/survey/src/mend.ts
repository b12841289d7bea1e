import { open, realpath, rename, rm, stat } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import { fail, type Problem, type Result, succeed } from "@wherry/core";
import {
  type ClassicVersion,
  type Dataset,
  type NcType,
  openDataset,
  type Source,
  writeClassic,
  writeNetcdf4,
} from "@wherry/netcdf";
import { countLevels, type MendedDataset, type MendReport, mendDataset, worstFirst } from "@wherry/validator";
import { openFileSource } from "./file-source.ts";
import { isIoError, problemFromIo } from "./problem-from-io.ts";

export interface MendOptions {
  /** Where the mended file goes; never the file itself. */
  readonly out: string;
  /** Whether an existing file may be replaced. */
  readonly force: boolean;
  /** Epoch seconds, for the history. */
  readonly now: number;
  /** Name and version of the program, for the history. */
  readonly program: string;
}

const VERSIONS: ReadonlyMap<string, ClassicVersion> = new Map<string, ClassicVersion>([
  ["classic", 1],
  ["64-bit offset", 2],
  ["64-bit data", 5],
]);

/** Mends a netCDF file into a new one of the same kind, which gets its name when it is whole. */
export async function mendFile(path: string, options: MendOptions): Promise<Result<MendReport>> {
  const { out, force, now, program } = options;
  try {
    const refusal = await refusalOf(path, out, force);
    if (refusal !== null) return fail(refusal);
    const source = await openFileSource(path);
    try {
      const opened = await openDataset(source);
      if (!opened.ok) return withFile(opened, path);
      const dataset = opened.value;
      try {
        const [unread] = dataset.problems;
        if (unread !== undefined)
          return fail({
            code: "mend/not-whole",
            message: `${path} holds what could not be written again: ${unread.message}`,
            where: { file: path },
            remedy: "Mend it with the program that wrote it; check tells what is to be done.",
          });
        const result = await mendDataset(dataset, { path, now }, program);
        const written = await writeWhole(out, result, source);
        if (!written.ok) return withFile(written, path);
        const left = worstFirst(result.verdict.findings);
        return succeed({ file: path, out, mended: result.mended, left, counts: countLevels(left) });
      } finally {
        dataset.close?.();
      }
    } finally {
      await source.close();
    }
  } catch (error) {
    if (!isIoError(error)) throw error;
    const at = error instanceof Error && "path" in error ? String(error.path) : path;
    return fail(problemFromIo(error, at));
  }
}

function withFile<T>(result: Result<T>, file: string): Result<never> {
  if (result.ok) throw new TypeError("nothing went wrong");
  const [first, ...others] = result.problems.map(
    (problem): Problem => ({ ...problem, where: { file, ...problem.where } }),
  );
  return fail(first!, ...others);
}

async function refusalOf(path: string, out: string, force: boolean): Promise<Problem | null> {
  const real = (name: string) => realpath(name).catch(() => resolve(name));
  if (/\.csv$/i.test(path))
    return {
      code: "mend/kind",
      message: `${path} is a table, and only netCDF files are mended`,
      where: { file: path },
      remedy: "Mend the netCDF file and write the table again from it, or correct the metadata by hand.",
    };
  if ((await real(path)) === (await real(out)))
    return {
      code: "mend/same-file",
      message: "the mended file would replace the one that it is made of",
      where: { file: out },
      remedy: "Name another file with --out.",
    };
  const found = await stat(out).catch(() => null);
  if (found === null || (force && found.isFile())) return null;
  return {
    code: "mend/exists",
    message: `${out} is there already`,
    where: { file: out },
    remedy: found.isFile() ? "Name another file, or add --force to replace it." : "Name a file.",
  };
}

/** Writes beside the final name, then renames. Without a change the bytes are copied. */
async function writeWhole(
  out: string,
  { dataset, mended }: MendedDataset,
  source: Source,
): Promise<Result<void>> {
  const part = join(dirname(out), `.${basename(out)}.wherry-part`);
  const handle = await open(part, "w");
  let whole = false;
  try {
    const sink = async (chunk: Uint8Array) => {
      await handle.writeFile(chunk);
    };
    const written = mended.length === 0 ? await copy(source, sink) : await write(dataset, source.size, sink);
    if (!written.ok) return written;
    await handle.sync();
    await handle.close();
    await rename(part, out);
    whole = true;
    return succeed(undefined);
  } finally {
    if (!whole) {
      await handle.close().catch(() => {});
      await rm(part, { force: true });
    }
  }
}

/** As most programs have it. */
const DEFLATE = 4;

type Sink = (chunk: Uint8Array) => Promise<void>;

function write(dataset: Dataset, size: number, sink: Sink): Promise<Result<void>> {
  const version = VERSIONS.get(dataset.kind);
  if (version !== undefined) return writeClassic(dataset, { version }, sink);
  return writeNetcdf4(dataset, isPacked(dataset, size) ? { deflate: DEFLATE } : {}, sink);
}

const BYTES: Readonly<Partial<Record<NcType, number>>> = {
  short: 2,
  ushort: 2,
  int: 4,
  uint: 4,
  float: 4,
  double: 8,
  int64: 8,
  uint64: 8,
};

/** A file that is smaller than its values was packed, and is packed again. */
function isPacked(dataset: Dataset, size: number): boolean {
  const bytes = [...dataset.variables.values()].map(
    ({ type, shape }) => shape.reduce((a, b) => a * b, 1) * (BYTES[type] ?? 1),
  );
  return size < bytes.reduce((a, b) => a + b, 0);
}

const PIECE = 1 << 22;

async function copy(source: Source, sink: Sink): Promise<Result<void>> {
  for (let at = 0; at < source.size; at += PIECE)
    await sink(await source.read(at, Math.min(PIECE, source.size - at)));
  return succeed(undefined);
}
