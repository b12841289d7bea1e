import { plainByte } from "./cell-bytes.ts";

interface Known<T> {
  readonly shape: Uint8Array;
  readonly found: T;
}

/**
 * Remembers what was found out about a line by its shape: lines that differ in their digits alone look the same to
 * whatever tells numbers, times and words apart.
 */
export class LineShapes<T> {
  readonly #known = new Map<number, Known<T>>();

  /** What is known of the line that is `bytes` from `from` to `to`. */
  of(bytes: Uint8Array, from: number, to: number, find: () => T): T {
    let hash = to - from;
    for (let i = from; i < to; i++) hash = Math.imul(hash ^ plainByte(bytes[i]!), 16_777_619);
    const known = this.#known.get(hash);
    if (known && hasShape(bytes, from, to, known.shape)) return known.found;
    const found = find();
    this.#known.set(hash, { shape: bytes.slice(from, to).map(plainByte), found });
    return found;
  }
}

function hasShape(bytes: Uint8Array, from: number, to: number, shape: Uint8Array): boolean {
  if (shape.length !== to - from) return false;
  for (let i = 0; i < shape.length; i++) if (plainByte(bytes[from + i]!) !== shape[i]) return false;
  return true;
}
