import { type AtmosphericOffsetParameters, atmosphericReading } from "./atmospheric-offset.ts";
import type { Cast } from "./cast.ts";
import { median } from "./robust.ts";

/** An offset from the readings in air of other casts. */
export interface BorrowedOffset {
  /** dbar. */
  readonly value: number;
  /** Where it comes from, in words: how many casts, and how far they lie apart. */
  readonly from: string;
}

/**
 * The offset that a cast without a reading in air may borrow, if a person chose so: the median of the readings of
 * other casts. The caller picks them: the same instrument, the same day.
 *
 * @returns null if the cast needs none, or if no other cast has a reading that is a zero error
 * @source house
 */
export function borrowedOffset(
  cast: Cast,
  others: readonly Cast[],
  parameters: AtmosphericOffsetParameters,
): BorrowedOffset | null {
  if (!cast.columns.has("pressure") || !Number.isNaN(cast.pressureOffset)) return null;
  if (cast.state.pressureZeroed || cast.state.processing === "averaged") return null;
  if (atmosphericReading(cast, parameters).kind !== "unknown") return null;
  const readings = others
    .filter((other) => other.id !== cast.id)
    .map((other) => atmosphericReading(other, parameters))
    .filter(({ kind }) => kind === "zero error")
    .map(({ reading }) => reading)
    .sort((a, b) => a - b);
  if (readings.length === 0) return null;
  const spread = readings.at(-1)! - readings[0]!;
  return {
    value: median(Float64Array.from(readings)),
    from:
      readings.length === 1
        ? "reading in air of one other cast of the instrument on the day"
        : `median reading in air of ${readings.length} other casts of the instrument on the day, which lie ${spread.toFixed(3)} dbar apart`,
  };
}
