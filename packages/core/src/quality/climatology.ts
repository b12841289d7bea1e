import { Flag } from "./flag.ts";
import { flagsFor } from "./flags-of-test.ts";

/** What is usual in a layer. */
export interface ClimatologyLayer {
  /** dbar: from the first (included) to the second (not included). */
  readonly pressureRange: readonly [number, number];
  /** In the unit of the values, both limits included. */
  readonly expectedRange: readonly [number, number];
}

/**
 * Climatology: each value against the range that a user's table gives for its layer; the first that fits counts.
 *
 * @param pressure dbar, one per row
 * @returns 1; 3 outside; 2 where no layer fits or pressure is missing; 9 missing
 * @source QARTOD test 5 (doi 10.25923/x02m-m555), never 4
 */
export function climatology(
  values: Float64Array,
  pressure: Float64Array,
  layers: readonly ClimatologyLayer[],
): Uint8Array {
  const flags = flagsFor(values, Flag.notEvaluated);
  for (let k = 0; k < values.length; k++) {
    if (Number.isNaN(values[k]!)) continue;
    const p = pressure[k]!;
    const layer = layers.find(({ pressureRange: [low, high] }) => p >= low && p < high);
    if (layer === undefined) continue;
    const [low, high] = layer.expectedRange;
    flags[k] = values[k]! < low || values[k]! > high ? Flag.questionable : Flag.good;
  }
  return flags;
}
