import { createHash } from "node:crypto";
import { understandNetcdf } from "@wherry/converter";
import { fail, type Problem, type Result } from "@wherry/core";
import { type Answer, recogniseArgoProfile, type UnderstoodFile } from "@wherry/formats";
import { type Dataset, openDataset, type Source } from "@wherry/netcdf";
import { type FileSource, openFileSource } from "./file-source.ts";

const HDF5 = [0x89, 0x48, 0x44, 0x46, 0x0d, 0x0a, 0x1a, 0x0a];

/** Whether a file is netCDF by its first bytes: "CDF" and the version, or the signature of HDF5. */
async function isNetcdf(source: Source): Promise<boolean> {
  const start = await source.read(0, Math.min(HDF5.length, source.size));
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
export const lookAtNetcdf = (path: string, name: string): Promise<Result<UnderstoodFile> | null> =>
  withDataset(path, name, [], () => true);

/**
 * The casts of a netCDF file that can be converted, which are those of Argo profile files; a problem for any other, and
 * null if it is none.
 *
 * @throws the system's error if the file can't be opened or read
 */
export const readNetcdfExport = (
  path: string,
  name: string,
  answers: readonly Answer[],
): Promise<Result<UnderstoodFile> | null> =>
  withDataset(path, name, answers, (dataset) => recogniseArgoProfile(dataset) !== null);

async function withDataset(
  path: string,
  name: string,
  answers: readonly Answer[],
  isWanted: (dataset: Dataset) => boolean,
): Promise<Result<UnderstoodFile> | null> {
  return withSource(path, async (source) => {
    if (!(await isNetcdf(source))) return null;
    const opened = await openDataset(source);
    if (!opened.ok) {
      const [first, ...others] = opened.problems.map((problem) => inFile(problem, name));
      return first ? fail(first, ...others) : opened;
    }
    try {
      if (!isWanted(opened.value)) return fail(notConverted(name));
      return await understandNetcdf(opened.value, name, { sha256: await sha256Of(source), answers });
    } finally {
      opened.value.close?.();
    }
  });
}

const notConverted = (name: string): Problem => ({
  code: "input/netcdf",
  message: `${name} is a netCDF file, and products are not yet made from netCDF other than Argo profiles`,
  where: { file: name },
  remedy: `Convert the text export that it came from. wherry look ${name} says what it holds, wherry check ${name} judges it.`,
});

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
