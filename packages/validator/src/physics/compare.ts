/** Fills `out`, of length `to - from`, with the values of rows `from` to `to` (exclusive). */
export type Fill = (from: number, to: number, out: Float64Array) => void;

/** A way to compute a quantity, carried out when it is needed. */
export interface Candidate {
  /** The equation, as a person names it. */
  readonly name: string;
  readonly fill: Fill;
  /** The same sooner, to within `error`: enough to see that all values agree. */
  readonly quick?: { readonly error: number; readonly fill: Fill };
}

/** An equation as core has it for columns: three inputs and the result, of equal length. */
export type Equation = (a: Float64Array, b: Float64Array, c: Float64Array, out: Float64Array) => void;

/** The three inputs of an equation, on the rows of the stored column. */
export type Columns = readonly [Float64Array, Float64Array, Float64Array];

/** The candidate that an equation gives. */
export const byEquation = (name: string, equation: Equation, [a, b, c]: Columns): Candidate => ({
  name,
  fill: (from, to, out) => equation(a.subarray(from, to), b.subarray(from, to), c.subarray(from, to), out),
});

export interface Disagreement {
  readonly equation: string;
  readonly rows: readonly number[];
  /** Rows where both values are there. */
  readonly of: number;
  /** Row that differs most. */
  readonly worst: number;
  readonly stored: number;
  readonly computed: number;
  /** Most rows differ: not a few values but the whole column is of another making. */
  readonly systematic: boolean;
}

export interface Tolerance {
  readonly fixed: number;
  /** Added row by row. */
  readonly perRow: Float64Array | null;
}

function disagreement(
  equation: string,
  stored: Float64Array,
  computed: Float64Array,
  { fixed, perRow }: Tolerance,
): Disagreement {
  const rows: number[] = [];
  let of = 0;
  let worst = 0;
  let beyond = 0;
  for (let i = 0; i < stored.length; i += 1) {
    const difference = Math.abs(stored[i]! - computed[i]!);
    if (Number.isNaN(difference)) continue;
    of += 1;
    const over = difference - fixed - (perRow?.[i] ?? 0);
    if (over <= 0) continue;
    rows.push(i);
    if (over > beyond) {
      beyond = over;
      worst = i;
    }
  }
  return {
    equation,
    rows,
    of,
    worst,
    stored: stored[worst] ?? Number.NaN,
    computed: computed[worst] ?? Number.NaN,
    systematic: rows.length * 2 > of,
  };
}

/** Rows computed at once: what is filled and read again at once stays in the processor's cache. */
export const PIECE = 4096;

/** Whether all values agree, and would do so though a quick value be wrong by as much as it may be. */
function agrees(stored: Float64Array, { fill, quick }: Candidate, { fixed, perRow }: Tolerance): boolean {
  const limit = fixed - (quick?.error ?? 0);
  if (limit <= 0) return false;
  const scratch = new Float64Array(Math.min(PIECE, stored.length));
  for (let from = 0; from < stored.length; from += PIECE) {
    const to = Math.min(from + PIECE, stored.length);
    const computed = scratch.subarray(0, to - from);
    (quick?.fill ?? fill)(from, to, computed);
    for (let i = from; i < to; i += 1)
      if (Math.abs(stored[i]! - computed[i - from]!) > limit + (perRow === null ? 0 : perRow[i]!))
        return false;
  }
  return true;
}

/**
 * Compares a stored column with every way in which it may have been computed.
 *
 * @returns  null if one of them gives it, or if there is nothing to compare; else where the nearest of them differs
 */
export function nearestDisagreement(
  stored: Float64Array,
  candidates: readonly Candidate[],
  tolerance: Tolerance,
): Disagreement | null {
  if (candidates.some((candidate) => agrees(stored, candidate, tolerance))) return null;
  let nearest: Disagreement | null = null;
  for (const { name, fill } of candidates) {
    const computed = new Float64Array(stored.length);
    fill(0, stored.length, computed);
    const found = disagreement(name, stored, computed, tolerance);
    if (found.rows.length === 0) return null;
    if (nearest === null || found.rows.length < nearest.rows.length) nearest = found;
  }
  return nearest;
}
