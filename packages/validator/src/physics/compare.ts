/** A way to compute a quantity, carried out when it is needed. */
export interface Candidate {
  /** The equation, as a person names it. */
  readonly name: string;
  readonly column: () => Float64Array | Promise<Float64Array>;
}

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

/**
 * Compares a stored column with every way in which it may have been computed.
 *
 * @returns  null if one of them gives it, or if there is nothing to compare; else where the nearest of them differs
 */
export async function nearestDisagreement(
  stored: Float64Array,
  candidates: readonly Candidate[],
  tolerance: Tolerance,
): Promise<Disagreement | null> {
  let nearest: Disagreement | null = null;
  for (const { name, column } of candidates) {
    const found = disagreement(name, stored, await column(), tolerance);
    if (found.rows.length === 0) return null;
    if (nearest === null || found.rows.length < nearest.rows.length) nearest = found;
  }
  return nearest;
}
