import type { Dataset } from "../dataset.ts";
import { fail, type Problem, type Result, succeed } from "../problem.ts";
import { datasetOf } from "./draft.ts";
import { CdlReader } from "./read-cdl.ts";

/** No text is so wrong that a person wants to see more than this at once. */
const MOST_PROBLEMS = 100;

/**
 * Reads CDL, the text form of netCDF, header and data, as the netCDF library's generator reads it, for the
 * types of the classic formats and the atomic types of netCDF-4, groups included.
 *
 * Fragments are read too: declarations without the `netcdf name { … }` around them or without section words,
 * such as `dimensions: x = 3 ; variables: float a(x) ; a:units = "m" ;`.
 *
 * Stricter than the generator: a number that its type can't hold, text for numbers and values beyond the
 * dimensions are problems; the generator cuts them silently. `_Format`, `_ChunkSizes` and the other special
 * attributes, which say how a file is stored, are left out as there.
 *
 * @returns the dataset in memory (kind "memory"), or every problem found, with line and column
 * @source  NetCDF User's Guide, CDL; netCDF utilities 4.9.0, manual page of ncgen
 */
export function parseCdl(text: string): Result<Dataset> {
  const reader = new CdlReader(text);
  const problems: Problem[] = [];
  const lines = lineStarts(text);
  reader.read((at, code, message, more) => {
    if (problems.length >= MOST_PROBLEMS) return undefined;
    const { remedy, ...where } = more ?? {};
    problems.push({
      code: `cdl/${code}`,
      message,
      where: { ...placeOf(lines, at), ...where },
      ...(remedy === undefined ? {} : { remedy }),
    });
    return undefined;
  });
  const [first, ...others] = problems;
  return first ? fail(first, ...others) : succeed(datasetOf(reader.draft));
}

function lineStarts(text: string): readonly number[] {
  const starts = [0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  return starts;
}

function placeOf(starts: readonly number[], at: number): { line: number; column: number } {
  let low = 0;
  for (let high = starts.length; high - low > 1; ) {
    const middle = (low + high) >> 1;
    if ((starts[middle] ?? 0) <= at) low = middle;
    else high = middle;
  }
  return { line: low + 1, column: at - (starts[low] ?? 0) + 1 };
}
