import type { DataArray, Slab, Source } from "../dataset.ts";
import { fail, type Result, succeed } from "../problem.ts";
import { runLength, runStarts, sizeOf } from "../slab.ts";
import { fillExactly, readExactly } from "../source.ts";
import { bytesPerValue, newArray } from "../types.ts";
import { bytesOf, swapToBigEndian } from "./byte-order.ts";
import { copyRuns, type Series } from "./copy-runs.ts";
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
  /** Series of `count` runs each. */
  readonly series: Iterable<{ readonly start: number; readonly step: number; readonly count: number }>;
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

function byteRuns(variable: StoredVariable, { start, count }: Slab): ByteRuns {
  const { type, shape, record, begin, stride, bytes } = variable;
  const width = bytesPerValue(type);
  // records without gaps are rows like any others
  if (!record || stride === bytes) {
    const slab = { start, count };
    const singles = single(runStarts(shape, slab), width, begin);
    return { length: runLength(shape, slab) * width, series: singles };
  }
  const row = shape.slice(1);
  const part = { start: start.slice(1), count: count.slice(1) };
  const length = runLength(row, part) * width;
  const first = begin + start[0]! * stride;
  if (length === sizeOf(part.count) * width) {
    const [inRecord = 0] = runStarts(row, part);
    return { length, series: [{ start: first + inRecord * width, step: stride, count: count[0]! }] };
  }
  return {
    length,
    series: overRecords(count[0]!, (record) => single(runStarts(row, part), width, first + record * stride)),
  };
}

function* single(starts: Iterable<number>, width: number, base: number) {
  for (const start of starts) yield { start: base + start * width, step: 0, count: 1 };
}

function* overRecords<T>(records: number, runs: (record: number) => Iterable<T>) {
  for (let record = 0; record < records; record++) yield* runs(record);
}

/** Reads all runs, one behind the other, into `out`. */
async function fillFrom(
  source: Source,
  { length, series }: ByteRuns,
  out: Uint8Array,
): Promise<Result<void>> {
  let at = 0;
  let group: number[] = []; // runs that will be read at once
  const flush = async (): Promise<Result<void>> => {
    const from = group[0];
    if (from === undefined) return succeed(undefined);
    const bytes = await readExactly(source, from, group.at(-1)! + length - from);
    if (!bytes.ok) return bytes;
    for (const start of group) {
      out.set(bytes.value.subarray(start - from, start - from + length), at);
      at += length;
    }
    group = [];
    return succeed(undefined);
  };
  for (const { start, step, count } of series) {
    if (count > 1 || length > window) {
      const read = await fillFromSeries(source, { start, step }, length, count, out.subarray(at));
      if (!read.ok) return read;
      at += count * length;
      continue;
    }
    const first = group[0] ?? start;
    const last = group.at(-1) ?? start;
    if (start - (last + length) > smallGap || start + length - first > window) {
      const flushed = await flush();
      if (!flushed.ok) return flushed;
    }
    group.push(start);
  }
  return flush();
}

async function fillFromSeries(
  source: Source,
  { start, step }: Series,
  length: number,
  count: number,
  out: Uint8Array,
): Promise<Result<void>> {
  const near = step - length <= smallGap;
  const most = near && step > 0 ? Math.max(1, Math.floor((window - length) / step) + 1) : 1;
  for (let done = 0; done < count; done += most) {
    const runs = Math.min(most, count - done);
    const first = start + done * step;
    const end = first + (runs - 1) * step + length;
    // a run longer than the window, which is then alone, is read in pieces
    for (let from = first; from < end; from += window) {
      const size = Math.min(window, end - from);
      const at = done * length + from - first;
      if (runs === 1) {
        const filled = await fillExactly(source, from, out.subarray(at, at + size));
        if (!filled.ok) return filled;
        continue;
      }
      const bytes = await readExactly(source, from, size);
      if (!bytes.ok) return bytes;
      copyRuns(bytes.value, { start: 0, step }, out, { start: at, step: length }, length, runs);
    }
  }
  return succeed(undefined);
}
