import type { Cast } from "../cast/cast.ts";
import { timeFlag } from "./fix-flags.ts";
import { Flag } from "./flag.ts";

export interface RowTimeFlags {
  /** One per row. */
  readonly flags: Uint8Array;
  /** Rows whose time an earlier row has. */
  readonly repeated: number;
  /** Whether so many repeat that the clock of the export must be coarser than the rows. */
  readonly isCoarse: boolean;
}

/** From this part of the rows on, times that repeat are those of a clock coarser than the rows. */
const COARSE = 0.25;

/**
 * Flags of the times of a series' rows: 9 where missing, 3 where an earlier row has the same time, else the flag of
 * the cast's time. With a clock coarser than the rows, repeating is no fault of a row.
 *
 * @param madeAt moment at which the data set was made, epoch seconds
 * @source house
 */
export function rowTimeFlags(cast: Cast, madeAt?: number): RowTimeFlags {
  const flags = new Uint8Array(cast.rows).fill(Flag.missing);
  const same: number[] = [];
  const own = timeFlag(cast, madeAt);
  let latest = Number.NEGATIVE_INFINITY;
  for (const [row, time] of (cast.elapsed ?? []).entries()) {
    if (Number.isNaN(time) || own === Flag.missing) continue;
    flags[row] = own;
    if (time === latest) same.push(row);
    latest = Math.max(latest, time);
  }
  const isCoarse = same.length >= COARSE * cast.rows && same.length > 0;
  if (!isCoarse) for (const row of same) flags[row] = Flag.questionable;
  return { flags, repeated: same.length, isCoarse };
}
