import type { DataArray } from "../dataset.ts";

const bigEndianHost = new Uint8Array(Uint16Array.of(1).buffer)[1] === 1;

/**
 * Changes typed-array values between the host's byte order and big-endian, in place, a word at a time.
 *
 * @param out values whose array starts at a multiple of 4 in its buffer; `width` bytes each (1, 2, 4 or 8)
 */
export function swapToBigEndian(out: Exclude<DataArray, string[]>): void {
  const width = out.BYTES_PER_ELEMENT;
  if (bigEndianHost || width === 1 || out.length === 0) return;
  if (swapByHost(out, width)) return;
  const words = new Uint32Array(out.buffer, out.byteOffset, out.byteLength >>> 2);
  if (width === 2) {
    for (let i = 0; i < words.length; i++) {
      const w = words[i]!;
      words[i] = ((w & 0x00ff00ff) << 8) | ((w >>> 8) & 0x00ff00ff);
    }
    if (out.length % 2 === 1) {
      const last = new Uint16Array(out.buffer, out.byteOffset + out.byteLength - 2, 1);
      last[0] = (last[0]! << 8) | (last[0]! >>> 8);
    }
    return;
  }
  // piece by piece: a function that is called often is compiled sooner than one that runs long
  const swap = width === 4 ? swapSingles : swapPairs;
  for (let from = 0; from < words.length; from += PIECE)
    swap(words, from, Math.min(from + PIECE, words.length));
}

const PIECE = 4096;

/** The part of Node's Buffer that is used where there is one; it is many times faster. */
interface Host {
  readonly Buffer?: {
    from(buffer: ArrayBufferLike, offset: number, length: number): Swaps;
  };
}

interface Swaps {
  swap16(): unknown;
  swap32(): unknown;
  swap64(): unknown;
}

/** Lets the host swap, if it can. */
function swapByHost(out: Exclude<DataArray, string[]>, width: number): boolean {
  const bytes = (globalThis as Host).Buffer?.from(out.buffer, out.byteOffset, out.byteLength);
  if (bytes === undefined) return false;
  if (width === 2) bytes.swap16();
  else if (width === 4) bytes.swap32();
  else bytes.swap64();
  return true;
}

function swapSingles(words: Uint32Array, from: number, to: number): void {
  for (let i = from; i < to; i++) words[i] = swapWord(words[i]!);
}

function swapPairs(words: Uint32Array, from: number, to: number): void {
  for (let i = from; i < to; i += 2) {
    const w = words[i]!;
    words[i] = swapWord(words[i + 1]!);
    words[i + 1] = swapWord(w);
  }
}

const swapWord = (w: number): number =>
  (w << 24) | ((w << 8) & 0x00ff0000) | ((w >>> 8) & 0x0000ff00) | (w >>> 24);

/** The bytes of a typed array. */
export const bytesOf = (data: Exclude<DataArray, string[]>): Uint8Array =>
  new Uint8Array(data.buffer, data.byteOffset, data.byteLength);
