import type { DataArray, NcType, Slab } from "../dataset.ts";
import { fail, type Problem, type Result, succeed } from "../problem.ts";
import { runLength, runStarts, sizeOf } from "../slab.ts";
import { decodeText } from "../text.ts";
import { newArray } from "../types.ts";
import type { Hdf5Description, Hdf5File } from "./hdf5-file.ts";
import { Hdf5Error } from "./hdf5-library.ts";
import { fixedTexts } from "./numbers-of-bytes.ts";

/** Bytes that pass through the library's memory at once. */
const PIECE = 1 << 25;
/** Deflate packs no better than this (1032 to 1); more values than that a file has only by leaving them out. */
const BEST_PACKING = 1032;
const ALWAYS_ALLOWED = 1 << 28;

export interface StoredVariable {
  readonly name: string;
  readonly path: string;
  readonly type: NcType;
  readonly description: Hdf5Description;
  /** Stands where nothing was written, as an array of one. */
  readonly fill: DataArray;
}

/**
 * Values of a slab that lies inside the variable's shape. Records that the dataset doesn't have, because only
 * other variables along the unlimited dimension were written there, are the fill value.
 */
export function readBlock(file: Hdf5File, variable: StoredVariable, slab: Slab): Result<DataArray> {
  const { name, type, description, fill } = variable;
  const complain = (code: string, message: string, remedy: string): Result<never> =>
    fail({ code, message, where: { variable: name }, remedy } satisfies Problem);
  const size = sizeOf(slab.count);
  if (size * description.size > Math.max(ALWAYS_ALLOWED, BEST_PACKING * file.size))
    return complain(
      "netcdf/too-many-values",
      `${size} values were asked of ${name}, more than a file of ${file.size} bytes can hold`,
      "Most of them were never written: ask for smaller slabs.",
    );
  const extent = description.shape ?? [];
  const written = slab.count.map((count, axis) =>
    Math.max(0, Math.min(count, (extent[axis] ?? 0) - (slab.start[axis] ?? 0))),
  );
  try {
    const inside = newArray(type, sizeOf(written));
    if (inside.length > 0) readPieces(file, variable, slab.start, written, inside);
    if (inside.length === size) return succeed(inside);
    const data = newArray(type, size);
    (data as unknown[] & { fill(value: unknown): unknown }).fill(fill[0]);
    if (inside.length > 0) spread(inside, data, slab.count, written);
    return succeed(data);
  } catch (error) {
    if (error instanceof RangeError)
      return complain(
        "netcdf/memory",
        `there is no memory for ${size} values of ${name}`,
        "Ask for smaller slabs.",
      );
    if (!(error instanceof Hdf5Error)) throw error;
    const filters = unknownFilters(file, variable.path);
    if (filters !== "")
      return complain(
        "netcdf/unknown-filter",
        `the values of ${name} are packed by ${filters}, which is not known here`,
        "Write the file again with deflate: nccopy -d 4.",
      );
    return complain(
      "netcdf/damaged-values",
      `the values of ${name} can't be read: ${error.message}`,
      "The file is damaged here: fetch it again, or go back to a sound copy.",
    );
  }
}

/** Puts a block into the first corner of a larger one. */
function spread(block: DataArray, out: DataArray, shape: readonly number[], count: readonly number[]): void {
  const corner: Slab = { start: shape.map(() => 0), count };
  const length = runLength(shape, corner);
  let from = 0;
  for (const at of runStarts(shape, corner)) {
    if (Array.isArray(out)) for (let i = 0; i < length; i++) out[at + i] = (block as string[])[from + i]!;
    else (out as Float64Array).set((block as Float64Array).subarray(from, from + length), at);
    from += length;
  }
}

function readPieces(
  file: Hdf5File,
  variable: StoredVariable,
  start: readonly number[],
  count: readonly number[],
  out: DataArray,
): void {
  const { path, type, description } = variable;
  let done = 0;
  for (const piece of pieces(start, count, description)) {
    const raw = file.values(path, description, piece.start, piece.count);
    if (type === "string") {
      const texts = "texts" in raw ? raw.texts : fixedTexts(raw.bytes, description.size);
      for (const text of texts) (out as string[])[done++] = decodeText(text).text;
    } else if ("bytes" in raw) {
      const array = out as Exclude<DataArray, string[]>;
      new Uint8Array(array.buffer).set(raw.bytes, done * description.size);
      done += raw.bytes.length / description.size;
    }
  }
}

/**
 * Cuts a block along one axis into pieces that lie behind each other in the result, none above the limit if
 * possible, in whole chunks where it can be.
 */
function* pieces(
  start: readonly number[],
  count: readonly number[],
  { size, chunks }: Hdf5Description,
): Generator<Slab> {
  let axis = 0;
  while (axis < count.length - 1 && sizeOf(count.slice(axis + 1)) * size > PIECE) axis++;
  const inner = sizeOf(count.slice(axis + 1)) * size;
  const most = Math.max(1, Math.floor(PIECE / inner));
  const chunk = chunks?.[axis] ?? 1;
  const step = most > chunk ? most - (most % chunk) : most;
  const outer = count.slice(0, axis);
  const corner: Slab = { start: outer.map(() => 0), count: outer };
  for (const index of runStarts([...outer, 1], { start: [...corner.start, 0], count: [...outer, 1] }))
    for (let from = 0; from < (count[axis] ?? 1); from += step) {
      const outerStart = unravel(index, outer).map((at, i) => at + (start[i] ?? 0));
      if (count.length === 0) yield { start: [], count: [] };
      else
        yield {
          start: [...outerStart, (start[axis] ?? 0) + from, ...start.slice(axis + 1)],
          count: [...outer.map(() => 1), Math.min(step, (count[axis] ?? 1) - from), ...count.slice(axis + 1)],
        };
    }
}

/** Indices along each axis of the value at a row-major index. */
function unravel(index: number, shape: readonly number[]): number[] {
  const at = new Array<number>(shape.length).fill(0);
  let rest = index;
  for (let axis = shape.length - 1; axis >= 0; axis--) {
    at[axis] = rest % shape[axis]!;
    rest = Math.floor(rest / shape[axis]!);
  }
  return at;
}

/** Deflate, shuffle, Fletcher checksum, szip, n-bit and scale-offset come with the library. */
const HIGHEST_KNOWN_FILTER = 6;

function unknownFilters(file: Hdf5File, path: string): string {
  try {
    const unknown = file.filters(path).filter(({ id }) => id > HIGHEST_KNOWN_FILTER);
    return unknown.map(({ id, name }) => `filter ${id}${name === "" ? "" : ` (${name})`}`).join(" and ");
  } catch (error) {
    if (!(error instanceof Hdf5Error)) throw error;
    return "";
  }
}
