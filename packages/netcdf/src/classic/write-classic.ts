import type { Dataset, Slab } from "../dataset.ts";
import { type Result, succeed } from "../problem.ts";
import { contiguousSlabs, sizeOf } from "../slab.ts";
import { bytesPerValue, isArrayOf } from "../types.ts";
import { bytesOf, swapToBigEndian } from "./byte-order.ts";
import { copyRuns } from "./copy-runs.ts";
import type { ClassicVersion } from "./format.ts";
import { type FilePlan, type PlannedVariable, planFile } from "./plan-file.ts";

/** Takes the bytes of a file, in order; each chunk is its own to keep. */
export type Sink = (chunk: Uint8Array) => void | Promise<void>;

/** Bytes that are collected before the sink gets them; about as much is read of the dataset at once. */
const chunkSize = 1 << 20;

/**
 * Writes a dataset as a classic netCDF file: version 1 is CDF-1, 2 is CDF-2 (64-bit offset), 5 is CDF-5 (64-bit
 * data). The same dataset gives the same bytes always. Memory is bounded, however large the variables are.
 *
 * What the version can't say (a type, a size, a name, a second unlimited dimension) is a problem, found before
 * the first byte is given out; a failure to read the dataset may come later. What the sink throws is not caught.
 *
 * @source NetCDF User's Guide, appendix "File Format Specifications"; for CDF-5 the PnetCDF C Interface Guide,
 *         appendix E
 */
export async function writeClassic(
  dataset: Dataset,
  { version }: { readonly version: ClassicVersion },
  sink: Sink,
): Promise<Result<void>> {
  const planned = planFile(dataset, version);
  if (!planned.ok) return planned;
  const plan = planned.value;
  const { records: many, stride, length } = plan;
  const out = new Chunks(sink, length + Math.max(0, many - 1) * stride);
  await out.push(plan.header);
  for (const variable of plan.fixed) {
    const written = await writeRows(dataset, variable, null, out);
    if (!written.ok) return written;
  }
  const records = await writeRecords(dataset, plan, out);
  if (!records.ok) return records;
  await out.finish();
  return succeed(undefined, planned.warnings);
}

/** The file as one array of bytes; see `writeClassic`. */
export async function classicBytes(
  dataset: Dataset,
  options: { readonly version: ClassicVersion },
): Promise<Result<Uint8Array>> {
  const chunks: Uint8Array[] = [];
  const written = await writeClassic(dataset, options, (chunk) => {
    chunks.push(chunk);
  });
  if (!written.ok) return written;
  const bytes = new Uint8Array(chunks.reduce((length, chunk) => length + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return succeed(bytes, written.warnings);
}

/** Writes a fixed variable, or one record of a variable, slab by slab, then its padding. */
async function writeRows(
  dataset: Dataset,
  { variable, padding }: PlannedVariable,
  record: number | null,
  out: Chunks,
): Promise<Result<void>> {
  const shape = record === null ? variable.shape : variable.shape.slice(1);
  for (const { start, count } of contiguousSlabs(shape, chunkSize / bytesPerValue(variable.type))) {
    const slab = record === null ? { start, count } : { start: [record, ...start], count: [1, ...count] };
    const bytes = await storedBytes(dataset, variable.name, slab);
    if (!bytes.ok) return bytes;
    await out.push(bytes.value);
  }
  await out.push(padding);
  return succeed(undefined);
}

/** Writes the records: many small ones at once, or a large one variable by variable. */
async function writeRecords(dataset: Dataset, plan: FilePlan, out: Chunks): Promise<Result<void>> {
  const { records, stride, recordVariables } = plan;
  if (recordVariables.length === 0) return succeed(undefined);
  const batch = Math.floor(chunkSize / stride);
  if (batch <= 1) {
    for (let record = 0; record < records; record++) {
      for (const variable of recordVariables) {
        const written = await writeRows(dataset, variable, record, out);
        if (!written.ok) return written;
      }
    }
    return succeed(undefined);
  }
  for (let first = 0; first < records; first += batch) {
    const many = Math.min(batch, records - first);
    const chunk = new Uint8Array(many * stride);
    let offset = 0;
    for (const { variable, bytes, padding } of recordVariables) {
      const inner = variable.shape.slice(1);
      const slab = { start: [first, ...inner.map(() => 0)], count: [many, ...inner] };
      const rows = await storedBytes(dataset, variable.name, slab);
      if (!rows.ok) return rows;
      copyRuns(rows.value, { start: 0, step: bytes }, chunk, { start: offset, step: stride }, bytes, many);
      if (padding.length > 0)
        for (let at = offset + bytes; at < chunk.length; at += stride) chunk.set(padding, at);
      offset += bytes + padding.length;
    }
    await out.push(chunk);
  }
  return succeed(undefined);
}

/** Values of a slab as big-endian bytes of a new buffer. */
async function storedBytes(dataset: Dataset, name: string, slab: Slab): Promise<Result<Uint8Array>> {
  const read = await dataset.read(name, slab);
  if (!read.ok) return read;
  const { type } = dataset.variables.get(name)!;
  const { value } = read;
  const wanted = sizeOf(slab.count);
  if (Array.isArray(value) || !isArrayOf(type, value) || value.length !== wanted)
    throw new TypeError(`${name}: the dataset gave ${value.length} values, not ${wanted} of type ${type}`);
  const copy = value.slice();
  swapToBigEndian(copy);
  return succeed(bytesOf(copy));
}

/** Collects bytes into chunks of one size. */
class Chunks {
  readonly #sink: Sink;
  readonly #size: number;
  #chunk = new Uint8Array(0);
  #used = 0;

  /** @param expected bytes of the whole file, nearly */
  constructor(sink: Sink, expected: number) {
    this.#sink = sink;
    this.#size = Math.min(chunkSize, expected);
  }

  async push(bytes: Uint8Array): Promise<void> {
    let taken = 0;
    while (taken < bytes.length) {
      if (this.#used === this.#chunk.length) {
        await this.finish();
        this.#chunk = new Uint8Array(this.#size);
      }
      const part = Math.min(bytes.length - taken, this.#chunk.length - this.#used);
      this.#chunk.set(bytes.subarray(taken, taken + part), this.#used);
      this.#used += part;
      taken += part;
    }
  }

  async finish(): Promise<void> {
    if (this.#used > 0) await this.#sink(this.#chunk.subarray(0, this.#used));
    this.#chunk = new Uint8Array(0);
    this.#used = 0;
  }
}
