/** A generator of numbers from 0 to 1 that always gives the same row (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** The bytes cut after every byte but the last. */
export function* truncationsOf(bytes: Uint8Array): Generator<Uint8Array> {
  for (let length = 0; length < bytes.length; length++) yield bytes.slice(0, length);
}

export interface Mutation {
  readonly kind: "change" | "delete" | "insert" | "double a block" | "lose a block";
  readonly bytes: Uint8Array;
}

/** Damaged copies: a byte changed, lost or added, a block lost or doubled. Printable bytes stand for added ones mostly. */
export function* mutationsOf(bytes: Uint8Array, count: number, seed = 20230614): Generator<Mutation> {
  const random = seeded(seed);
  const below = (limit: number) => Math.floor(random() * limit);
  const kinds = ["change", "change", "delete", "insert", "double a block", "lose a block"] as const;
  for (let i = 0; i < count; i++) {
    const kind = kinds[below(kinds.length)]!;
    const at = below(bytes.length);
    const sign = random() < 0.1 ? below(256) : 32 + below(95);
    const length = 1 + below(120);
    const [before, after] = [bytes.subarray(0, at), bytes.subarray(at)];
    const parts: Readonly<Record<Mutation["kind"], readonly ArrayLike<number>[]>> = {
      change: [before, [sign], after.subarray(1)],
      delete: [before, after.subarray(1)],
      insert: [before, [sign], after],
      "double a block": [before, after.subarray(0, length), after],
      "lose a block": [before, after.subarray(length)],
    };
    yield { kind, bytes: Uint8Array.from(parts[kind].flatMap((part) => Array.from(part))) };
  }
}
