import { readdir, stat } from "node:fs/promises";
import { join } from "node:path";
import { succeed } from "@wherry/core";
import { type ContainedFile, type Container, eachPiece, holdsBag, openArchive, sift } from "@wherry/formats";
import { type CheckedFile, checkedFile, checkPackage, type FileContext, findingOf } from "@wherry/validator";
import { type FileSource, openFileSource } from "./file-source.ts";

/** What every file of a run is judged by. */
type Judging = Omit<FileContext, "path" | "metadata">;

/** A folder as a container, hidden files included; links are refused. */
export async function openFolder(folder: string): Promise<Container> {
  const files: ContainedFile[] = [];
  const links: string[] = [];
  const visit = async (below: string): Promise<void> => {
    const entries = await readdir(join(folder, below), { withFileTypes: true });
    entries.sort((a, b) => (a.name < b.name ? -1 : 1));
    for (const entry of entries) {
      const path = below === "" ? entry.name : `${below}/${entry.name}`;
      if (entry.isDirectory()) await visit(path);
      else if (entry.isFile()) files.push(await fileIn(folder, path));
      else links.push(path);
    }
  };
  await visit("");
  const container = sift(folder, "folder", files);
  const refused = links.map((path) => ({
    code: "package/unsafe-path",
    message: `"${path}" is refused: it is a link, not a file`,
    where: { file: folder },
    remedy: "Put the file itself in its place.",
  }));
  return { ...container, refused: [...container.refused, ...refused] };
}

async function fileIn(folder: string, path: string): Promise<ContainedFile> {
  const full = join(folder, path);
  const { size } = await stat(full);
  return {
    path,
    size,
    use: async (work) => succeed(await withSource(full, work)),
    async each(take) {
      await withSource(full, (source) => eachPiece(source, take));
      return succeed(null);
    },
  };
}

/** Opens a file, hands it to the work, and closes it again. */
async function withSource<T>(path: string, work: (source: FileSource) => Promise<T>): Promise<T> {
  const source = await openFileSource(path);
  try {
    return await work(source);
  } finally {
    await source.close();
  }
}

/** The verdicts on the deposit package in a folder, and on its data files. */
export const checkPackageFolder = async (folder: string, judging: Judging): Promise<CheckedFile[]> =>
  checkPackage(await openFolder(folder), judging);

/**
 * The verdicts on the deposit package in a zip or tar archive, and on its data files.
 *
 * @param isNamed  whether a person named the archive, so that it is a fault if there is no package in it
 * @returns        null if there is none in an archive that nobody named
 */
export const checkPackageArchive = (
  path: string,
  isNamed: boolean,
  judging: Judging,
): Promise<CheckedFile[] | null> =>
  withSource(path, async (source) => {
    const archive = await openArchive(source, path);
    if (archive.ok) return isNamed || holdsBag(archive.value) ? checkPackage(archive.value, judging) : null;
    const findings = archive.problems.map((problem) => findingOf(problem, path));
    return [checkedFile(path, null, findings)];
  });
