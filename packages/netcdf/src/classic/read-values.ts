import type { DataArray, Slab, Source } from "../dataset.ts";
import { fail, type Result, succeed } from "../problem.ts";
import { runLength, runStarts, sizeOf } from "../slab.ts";
import { readExactly } from "../source.ts";
import { bytesPerValue, newArray } from "../types.ts";
import { bytesOf, swapToBigEndian } from "./byte-order.ts";
import type { ClassicType, Placement } from "./format.ts";

/** Runs that lie closer together than this are read at once, the bytes between them with them. */
const smallGap = 4096;
/** The most that is read at once. */
const window = 1 << 22;

export interface StoredVariable extends Placement {
  readonly name: string;
  readonly type: ClassicType;
  readonly shape: readonly number[];
  /** Bytes from one record to the next. */
  readonly stride: number;
}

/** Runs of bytes that lie together, all of one length, in rising order. */
interface ByteRuns {
  readonly length: number;
  readonly starts: Iterable<number>;
}

/**
 * Values of a slab, which must lie inside the variable's shape.
 *
 * The bytes that are needed are compared with the file's size before anything is allocated. No run is read
 * twice; neighbours are read together.
 */
export async function readValues(
  source: Source,
  variable: StoredVariable,
  slab: Slab,
): Promise<Result<DataArray>> {
  const { name, type } = variable;
  const values = sizeOf(slab.count);
  if (values === 0) return succeed(newArray(type, 0));
  const end = lastByte(variable, slab);
  if (end > source.size)
    return fail({
      code: "netcdf/data-missing",
      message: `the values asked of ${name} reach to byte ${end}; the file ends at byte ${source.size}`,
      where: { byte: variable.begin, variable: name },
      remedy: "The file is damaged or cut short: fetch it again, or ask for fewer values.",
    });
  let data: Exclude<DataArray, string[]>;
  try {
    data = newArray(type, values) as Exclude<DataArray, string[]>;
  } catch {
    return fail({
      code: "netcdf/too-large",
      message: `${values} values of ${name} do not fit into memory at once`,
      where: { variable: name },
      remedy: "Read the variable in slabs.",
    });
  }
  const read = await fillFrom(source, byteRuns(variable, slab), bytesOf(data));
  if (!read.ok) return read;
  swapToBigEndian(data);
  return succeed(data);
}

function lastByte({ shape, type, record, begin, stride }: StoredVariable, { start, count }: Slab): number {
  let index = 0;
  for (let axis = record ? 1 : 0; axis < shape.length; axis++)
    index = index * shape[axis]! + start[axis]! + count[axis]! - 1;
  const records = record ? start[0]! + count[0]! - 1 : 0;
  return begin + records * stride + (index + 1) * bytesPerValue(type);
}

function byteRuns(variable: StoredVariable, slab: Slab): ByteRuns {
  const { type, shape, record, begin, stride, bytes } = variable;
  const width = bytesPerValue(type);
  const inRows = (rows: readonly number[], part: Slab) => ({
    length: runLength(rows, part) * width,
    starts: scaled(runStarts(rows, part), width, begin),
  });
  // records without gaps are rows like any others
  if (!record || stride === bytes) return inRows(shape, slab);
  const row = shape.slice(1);
  const part = { start: slab.start.slice(1), count: slab.count.slice(1) };
  return {
    length: runLength(row, part) * width,
    starts: overRecords(slab, (base) => scaled(runStarts(row, part), width, base), begin, stride),
  };
}

function* scaled(starts: Iterable<number>, width: number, base: number): Generator<number> {
  for (const start of starts) yield base + start * width;
}

function* overRecords(
  slab: Slab,
  runs: (base: number) => Iterable<number>,
  begin: number,
  stride: number,
): Generator<number> {
  const first = slab.start[0]!;
  for (let record = first; record < first + slab.count[0]!; record++) yield* runs(begin + record * stride);
}

async function fillFrom(source: Source, runs: ByteRuns, out: Uint8Array): Promise<Result<void>> {
  const { length } = runs;
  let at = 0;
  let group: number[] = [];
  const flush = async (): Promise<Result<void>> => {
    const from = group[0];
    if (from === undefined) return succeed(undefined);
    const bytes = await readExactly(source, from, group.at(-1)! + length - from);
    if (!bytes.ok) return bytes;
    for (const start of group) {
      copy(bytes.value, start - from, length, out, at);
      at += length;
    }
    group = [];
    return succeed(undefined);
  };
  if (length > window) {
    for (const start of runs.starts) {
      for (let done = 0; done < length; done += window) {
        const piece = Math.min(window, length - done);
        const bytes = await readExactly(source, start + done, piece);
        if (!bytes.ok) return bytes;
        out.set(bytes.value, at);
        at += piece;
      }
    }
    return succeed(undefined);
  }
  for (const start of runs.starts) {
    const first = group[0];
    const last = group.at(-1);
    const together =
      first === undefined ||
      last === undefined ||
      (start - (last + length) <= smallGap && start + length - first <= window);
    if (!together) {
      const flushed = await flush();
      if (!flushed.ok) return flushed;
    }
    group.push(start);
  }
  return flush();
}

function copy(from: Uint8Array, start: number, length: number, out: Uint8Array, at: number): void {
  // for a few bytes a loop is several times faster than a view and a copy of it
  if (length <= 32) for (let i = 0; i < length; i++) out[at + i] = from[start + i]!;
  else out.set(from.subarray(start, start + length), at);
}
