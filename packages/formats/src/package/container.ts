import { fail, type Problem, type Result, succeed } from "@wherry/core";
import type { Source } from "@wherry/netcdf";

/** A file within a folder or an archive, read in place. */
export interface ContainedFile {
  /** Path from the top of the container, with "/" between names. */
  readonly path: string;
  readonly size: number;
  /** Opens the file for random access, hands it to the work, and closes it again. */
  use<T>(work: (source: Source) => Promise<T>): Promise<Result<T>>;
  /** Hands over the whole content, piece by piece. */
  each(take: (bytes: Uint8Array) => void): Promise<Result<null>>;
}

/** A folder, or an archive, with what is in it. */
export interface Container {
  readonly path: string;
  readonly form: "folder" | "zip" | "tar";
  readonly files: readonly ContainedFile[];
  /** Entries that are not opened: paths out of the container, links, devices, names given twice. */
  readonly refused: readonly Problem[];
}

/** What one container may hold, so that none exhausts memory or patience. */
export const LIMITS = {
  files: 100_000,
  /** Bytes of a deflated member that is opened for random access, or of a file read as text. */
  inMemory: 2 ** 29,
  /** Bytes to which the deflated members of an archive unpack altogether. */
  unpacked: 2 ** 35,
} as const;

const PIECE = 2 ** 20;

/** Part of a source as a source of its own. */
export const partOf = (source: Source, start: number, size: number): Source => ({
  size,
  read: (offset, length) => source.read(start + offset, length),
});

/** Hands over the bytes of a source, piece by piece. */
export async function eachPiece(source: Source, take: (bytes: Uint8Array) => void): Promise<void> {
  for (let at = 0; at < source.size; at += PIECE)
    take(await source.read(at, Math.min(PIECE, source.size - at)));
}

/** The whole content of a file that has to be in memory. */
export async function contentOf(file: ContainedFile): Promise<Result<Uint8Array>> {
  if (file.size > LIMITS.inMemory) return fail(tooLarge(file.path, file.size));
  return file.use(async (source) => source.read(0, source.size));
}

export const tooLarge = (path: string, size: number): Problem => ({
  code: "package/too-large",
  message: `${path} has ${size} bytes, more than the ${LIMITS.inMemory} that are taken into memory`,
  where: { file: path },
  remedy: "Unpack the archive and check the folder.",
});

/** Why a path may not be followed; null if it stays inside the container. */
export function dangerOf(path: string): string | null {
  if (path === "") return "it has no name";
  if (path.includes("\0")) return "it has a NUL in it";
  if (path.includes("\\")) return "it has a backslash in it, which other systems take for a folder";
  if (path.startsWith("/")) return "it begins at the root of the file system";
  if (/^[A-Za-z]:/.test(path)) return "it names a drive";
  if (path.startsWith("~")) return "it begins with a tilde, which stands for a person's home";
  return path.split("/").some((part) => part === "..") ? "it leads out of the package" : null;
}

/** A path in a message: control characters shown as "?", the end of a long one left out. */
export const shown = (path: string): string =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not reach a terminal
  path.replace(/[\u0000-\u001f\u007f]/g, "?").slice(0, 200);

/** A path without "." and empty parts, which archives begin with and which mean nothing. */
const plainPath = (path: string): string =>
  path.startsWith("/") ? path : path.replace(/(^|\/)(?:\.?\/)+/g, "$1");

/** Sorts out what may not be opened: unsafe paths and names that stand twice. */
export function sift(path: string, form: Container["form"], found: readonly ContainedFile[]): Container {
  const files = new Map<string, ContainedFile>();
  const refused: Problem[] = [];
  for (const entry of found) {
    const file = { ...entry, path: plainPath(entry.path) };
    const danger = dangerOf(file.path);
    if (danger !== null) refused.push(unsafe(path, file.path, danger));
    else if (files.has(file.path))
      refused.push({
        code: "package/twice",
        message: `${shown(file.path)} stands twice in the archive; the first is taken`,
        where: { file: `${path}/${shown(file.path)}` },
        remedy: "Pack the files again.",
      });
    else files.set(file.path, file);
  }
  return { path, form, files: [...files.values()], refused };
}

export const unsafe = (container: string, path: string, because: string): Problem => ({
  code: "package/unsafe-path",
  message: `"${shown(path)}" is refused: ${because}`,
  where: { file: container },
  remedy: "Do not unpack this archive. Ask its sender for another one.",
});

/** The problem of a container with more entries than are read; null if it has not. */
export const tooMany = (path: string, count: number): Problem | null =>
  count <= LIMITS.files
    ? null
    : {
        code: "package/too-many",
        message: `the package holds ${count} files, more than the ${LIMITS.files} that are read`,
        where: { file: path },
        remedy: "Divide it.",
      };

export const done = succeed(null);
