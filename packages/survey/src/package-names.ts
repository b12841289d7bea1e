import { dirname, extname } from "node:path";

const ARCHIVES = new Set([".zip", ".tar"]);

/** By its name. */
export const isArchiveName = (path: string): boolean => ARCHIVES.has(extname(path).toLowerCase());

/** The folders of deposit packages among found files: those with a bagit.txt, but none within another one. */
export function packageFolders(files: readonly string[]): string[] {
  const folders = files.filter((path) => /(?:^|[\\/])bagit\.txt$/.test(path)).map(dirname);
  return folders.filter((folder) => !folders.some((other) => other !== folder && isWithin(folder, other)));
}

export const isWithin = (path: string, folder: string): boolean =>
  folder === "." || path.startsWith(`${folder}/`) || path.startsWith(`${folder}\\`);
