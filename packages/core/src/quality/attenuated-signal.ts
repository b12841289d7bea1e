import { Flag } from "./flag.ts";
import { flagsFor, type Worst } from "./flags-of-test.ts";

export interface AttenuatedSignalLimits {
  /** Range of the values, in their unit, below which all are bad. */
  readonly badBelow: number;
  /** … and below which all are questionable. */
  readonly questionableBelow: number;
  readonly worst?: Worst;
}

/**
 * Attenuated signal: values that hardly vary although the water should.
 *
 * @returns one flag for all that are not missing: 1, 3, 4 (or `worst`); 2 with fewer than two values; 9 missing
 * @source QARTOD test 10 (doi 10.25923/x02m-m555), by the largest less the smallest value
 */
export function attenuatedSignal(
  values: Float64Array,
  { badBelow, questionableBelow, worst = 4 }: AttenuatedSignalLimits,
): Uint8Array {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  let known = 0;
  for (const value of values) {
    if (Number.isNaN(value)) continue;
    known++;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  const range = most - least;
  const flag =
    known < 2
      ? Flag.notEvaluated
      : range < badBelow
        ? worst
        : range < questionableBelow
          ? Flag.questionable
          : Flag.good;
  return flagsFor(values, flag);
}
