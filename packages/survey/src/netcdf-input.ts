import { createHash } from "node:crypto";
import { understandNetcdf } from "@wherry/converter";
import { fail, type Problem, type Result } from "@wherry/core";
import type { Answer, UnderstoodFile } from "@wherry/formats";
import { openDataset, type Source } from "@wherry/netcdf";
import { type FileSource, firstBytes, openFileSource } from "./file-source.ts";

const HDF5 = [0x89, 0x48, 0x44, 0x46, 0x0d, 0x0a, 0x1a, 0x0a];

/** Whether a file is netCDF by its first bytes: "CDF" and the version, or the signature of HDF5. */
function isNetcdf(path: string): boolean {
  const start = firstBytes(path, HDF5.length);
  const [c, d, f, version = 0] = start;
  if (c === 0x43 && d === 0x44 && f === 0x46) return [1, 2, 5].includes(version);
  return start.length === HDF5.length && HDF5.every((byte, i) => start[i] === byte);
}

/**
 * What a netCDF file holds; null if by its first bytes it is none.
 *
 * @param name what the casts call their source
 * @throws     the system's error if the file can't be opened or read
 */
export async function readNetcdf(
  path: string,
  name: string,
  answers: readonly Answer[],
): Promise<Result<UnderstoodFile> | null> {
  if (!isNetcdf(path)) return null;
  return withSource(path, async (source) => {
    const opened = await openDataset(source);
    if (!opened.ok) {
      const [first, ...others] = opened.problems.map((problem) => inFile(problem, name));
      return first ? fail(first, ...others) : opened;
    }
    try {
      return await understandNetcdf(opened.value, name, { sha256: await sha256Of(source), answers });
    } finally {
      opened.value.close?.();
    }
  });
}

async function withSource<T>(path: string, use: (source: FileSource) => Promise<T>): Promise<T> {
  const source = await openFileSource(path);
  try {
    return await use(source);
  } finally {
    await source.close();
  }
}

const inFile = (problem: Problem, file: string): Problem => ({
  ...problem,
  where: { ...problem.where, file },
});

/** Bytes that are hashed at once. */
const PIECE = 1 << 20;

async function sha256Of(source: Source): Promise<string> {
  const hash = createHash("sha256");
  for (let at = 0; at < source.size; at += PIECE)
    hash.update(await source.read(at, Math.min(PIECE, source.size - at)));
  return hash.digest("hex");
}
