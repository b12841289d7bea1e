import { type Problem, type Result, succeed } from "@wherry/core";
import type { ContainedFile } from "../package/container.ts";
import type { Bag } from "./open-bag.ts";

/** Names that manifests have for the algorithms that are computed here (RFC 8493, section 2.4). */
const ALGORITHMS: ReadonlySet<string> = new Set(["sha512", "sha384", "sha256", "sha224", "sha1", "md5"]);

export const isKnownAlgorithm = (name: string): boolean => ALGORITHMS.has(name);

/** Checksums of a file by algorithm: hexadecimal, in lower case. The file is read once, piece by piece. */
async function digestsOf(
  file: ContainedFile,
  algorithms: readonly string[],
): Promise<Result<ReadonlyMap<string, string>>> {
  // loaded when needed: most files that are checked are no packages
  const { createHash } = await import("node:crypto");
  const hashes = algorithms.map((name) => [name, createHash(name)] as const);
  const read = await file.each((bytes) => {
    for (const [, hash] of hashes) hash.update(bytes);
  });
  return read.ok ? succeed(new Map(hashes.map(([name, hash]) => [name, hash.digest("hex")]))) : read;
}

export interface BagDigests {
  /** Checksums of the files that manifests list, by path and algorithm. */
  readonly byPath: ReadonlyMap<string, ReadonlyMap<string, string>>;
  /** Files that could not be read to their end. */
  readonly unread: readonly Problem[];
}

/** The checksums of every file that a manifest lists, by the algorithms of the manifests that list it. */
export async function bagDigests(bag: Bag): Promise<BagDigests> {
  const wanted = new Map<string, Set<string>>();
  for (const { algorithm, entries } of bag.manifests) {
    if (!isKnownAlgorithm(algorithm)) continue;
    for (const { path } of entries) {
      const algorithms = wanted.get(path) ?? new Set();
      wanted.set(path, algorithms.add(algorithm));
    }
  }
  const byPath = new Map<string, ReadonlyMap<string, string>>();
  const unread: Problem[] = [];
  for (const [path, algorithms] of wanted) {
    const file = bag.files.get(path);
    if (file === undefined) continue;
    const digests = await digestsOf(file, [...algorithms]);
    if (digests.ok) byPath.set(path, digests.value);
    else unread.push(...digests.problems);
  }
  return { byPath, unread };
}
