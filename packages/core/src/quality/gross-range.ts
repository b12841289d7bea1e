import { Flag } from "./flag.ts";
import { flagsFor, type Worst } from "./flags-of-test.ts";

export interface GrossRangeLimits {
  /** Lowest and highest value that the sensor can give or nature allows, both included. */
  readonly sensorRange: readonly [number, number];
  /** Lowest and highest value expected here, both included; null for no such test. */
  readonly expectedRange: readonly [number, number] | null;
  readonly worst?: Worst;
}

/**
 * Gross range test: outside `sensorRange` 4, else outside `expectedRange` 3, else 1; missing 9.
 *
 * @param judged rows of a judged segment; other rows are 4 outside `sensorRange`, else 2. Omitted: all rows.
 * @source QARTOD test 4 (doi 10.25607/OBP-1465); rows outside segments: house
 */
export function grossRange(
  values: Float64Array,
  { sensorRange, expectedRange, worst = 4 }: GrossRangeLimits,
  judged?: Uint8Array,
): Uint8Array {
  const flags = flagsFor(values, Flag.good);
  for (let k = 0; k < values.length; k++) {
    const value = values[k]!;
    if (Number.isNaN(value)) continue;
    if (value < sensorRange[0] || value > sensorRange[1]) flags[k] = worst;
    else if (judged !== undefined && judged[k] === 0) flags[k] = Flag.notEvaluated;
    else if (expectedRange !== null && (value < expectedRange[0] || value > expectedRange[1]))
      flags[k] = Flag.questionable;
  }
  return flags;
}
