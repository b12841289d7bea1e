import { readdir, stat } from "node:fs/promises";
import { join } from "node:path";
import type { Problem } from "@wherry/core";
import { problemFromIo } from "./problem-from-io.ts";

export interface FoundFiles {
  readonly files: readonly string[];
  /** Folders within folders that were not looked into. */
  readonly passedOver: readonly string[];
  readonly problems: readonly Problem[];
}

/** Hidden files and unfinished results are nobody's input. */
const isHidden = (name: string) => name.startsWith(".");

/**
 * The files that paths stand for: a file is itself, a folder its files and those of its subfolders, in the order
 * of their names. A path named twice counts once. Links to folders are not followed.
 *
 * @param isApart tells by the names in a folder within a folder that it is not looked into
 */
export async function findFiles(
  paths: readonly string[],
  isApart: (names: readonly string[]) => boolean = () => false,
): Promise<FoundFiles> {
  const files = new Set<string>();
  const passedOver: string[] = [];
  const problems: Problem[] = [];
  const visit = async (folder: string, isInner: boolean): Promise<void> => {
    const entries = await readdir(folder, { withFileTypes: true });
    if (isInner && isApart(entries.map(({ name }) => name))) {
      passedOver.push(folder);
      return;
    }
    entries.sort((a, b) => (a.name < b.name ? -1 : 1));
    for (const entry of entries) {
      const path = join(folder, entry.name);
      if (isHidden(entry.name)) continue;
      if (entry.isDirectory()) await visit(path, true);
      else if (entry.isFile()) files.add(path);
      else if (entry.isSymbolicLink() && (await stat(path)).isFile()) files.add(path);
    }
  };
  for (const path of paths) {
    try {
      const found = await stat(path);
      if (found.isDirectory()) await visit(path, false);
      else files.add(path);
    } catch (error) {
      problems.push(problemFromIo(error, path));
    }
  }
  return { files: [...files], passedOver, problems };
}
