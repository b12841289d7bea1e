/** Runs of bytes, all of one length, at equal distances. */
export interface Series {
  readonly start: number;
  /** From the start of one run to the start of the next. */
  readonly step: number;
}

/**
 * Copies `count` runs of `length` bytes from a series of places to another.
 *
 * Short runs, as records of a single number are, go word by word where the places allow: a view and a copy of
 * it for each run would take ten times as long.
 */
export function copyRuns(
  from: Uint8Array,
  { start, step }: Series,
  out: Uint8Array,
  to: Series,
  length: number,
  count: number,
): void {
  if (count === 1 || length > 32) {
    for (let run = 0, read = start, write = to.start; run < count; run++, read += step, write += to.step)
      out.set(from.subarray(read, read + length), write);
    return;
  }
  const inWords = [from.byteOffset + start, step, out.byteOffset + to.start, to.step, length].every(
    (bytes) => bytes % 4 === 0,
  );
  if (inWords) {
    const words = new Uint32Array(from.buffer, from.byteOffset + start, (from.length - start) >>> 2);
    const target = new Uint32Array(out.buffer, out.byteOffset + to.start, (out.length - to.start) >>> 2);
    copyElements(words, step >>> 2, target, to.step >>> 2, length >>> 2, count);
  } else {
    copyElements(from.subarray(start), step, out.subarray(to.start), to.step, length, count);
  }
}

function copyElements<T extends Uint8Array | Uint32Array>(
  from: T,
  fromStep: number,
  out: T,
  outStep: number,
  length: number,
  count: number,
): void {
  for (let run = 0, read = 0, write = 0; run < count; run++, read += fromStep, write += outStep)
    for (let i = 0; i < length; i++) out[write + i] = from[read + i]!;
}
