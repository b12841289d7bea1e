import { Flag } from "./flag.ts";
import { flagsFor } from "./flags-of-test.ts";

export type RateOfChangeLimits =
  | { readonly largestStep: number }
  | {
      /** Multiple of the standard deviation of the window that a step may have. */
      readonly deviations: number;
      /** Rows before the judged one from which the standard deviation is taken. */
      readonly windowRows: number;
      /** Steps up to this size always pass, in the unit of the values; 0 by default. */
      readonly floor?: number;
    };

/**
 * Rate of change from one row to the next, against a fixed step or the standard deviation (divisor n - 1) of the
 * non-missing values among the `windowRows` rows before.
 *
 * @returns 1; 3; 2 for the first row, after a missing one, and with fewer than 3 values in the window; 9 missing
 * @source QARTOD test 7 (doi 10.25923/x02m-m555)
 */
export function rateOfChange(values: Float64Array, limits: RateOfChangeLimits): Uint8Array {
  const flags = flagsFor(values, Flag.notEvaluated);
  const deviation = "deviations" in limits ? windowDeviation(values, limits.windowRows) : null;
  for (let k = 1; k < values.length; k++) {
    const step = Math.abs(values[k]! - values[k - 1]!);
    if (Number.isNaN(step)) continue;
    let limit: number;
    if ("largestStep" in limits) limit = limits.largestStep;
    else if (Number.isNaN(deviation![k]!)) continue;
    else limit = Math.max(limits.deviations * deviation![k]!, limits.floor ?? 0);
    flags[k] = step > limit ? Flag.questionable : Flag.good;
  }
  return flags;
}

/** Standard deviation (divisor n - 1) of the values in the window before each row (not of the row); NaN if fewer than three. */
export function windowDeviation(values: Float64Array, windowRows: number): Float64Array {
  const deviation = new Float64Array(values.length).fill(Number.NaN);
  // sums about a value of the record, made anew once a window, keep the rounding error of sliding sums small
  let centre = Number.NaN;
  let count = 0;
  let sum = 0;
  let squares = 0;
  const take = (value: number, sign: 1 | -1) => {
    if (Number.isNaN(value)) return;
    const x = value - centre;
    count += sign;
    sum += sign * x;
    squares += sign * x * x;
  };
  for (let k = 1; k < values.length; k++) {
    const from = Math.max(0, k - windowRows);
    if (Number.isNaN(centre) || k % windowRows === 0) {
      centre = Number.NaN;
      for (let j = from; j < k && Number.isNaN(centre); j++) centre = values[j]!;
      count = sum = squares = 0;
      for (let j = from; j < k; j++) take(values[j]!, 1);
    } else {
      take(values[k - 1]!, 1);
      if (k - windowRows >= 1) take(values[k - windowRows - 1]!, -1);
    }
    if (count >= 3) deviation[k] = Math.sqrt(Math.max(0, squares - (sum * sum) / count) / (count - 1));
  }
  return deviation;
}
