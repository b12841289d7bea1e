const DIGIT = 48;

/**
 * Remembers what was found out about a line by its shape: lines that differ in their digits alone look the same to
 * whatever tells numbers, times and words apart.
 */
export class LineShapes<T> {
  readonly #known = new Map<number, { readonly shape: Uint8Array; readonly found: T }>();

  of(line: Uint8Array, find: () => T): T {
    let hash = line.length;
    for (let i = 0; i < line.length; i++) hash = Math.imul(hash ^ plain(line[i]!), 16_777_619);
    const known = this.#known.get(hash);
    if (known && sameShape(known.shape, line)) return known.found;
    const found = find();
    this.#known.set(hash, { shape: line.slice(), found });
    return found;
  }
}

const plain = (byte: number) => (byte >= DIGIT && byte <= DIGIT + 9 ? DIGIT : byte);

function sameShape(a: Uint8Array, b: Uint8Array): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (plain(a[i]!) !== plain(b[i]!)) return false;
  return true;
}
