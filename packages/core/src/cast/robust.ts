/** Median of the values that are not NaN; NaN if there is none. The input is not changed. */
export function median(values: Float64Array): number {
  return quantile(values, 0.5);
}

/**
 * Quantile of the values that are not NaN, linear between the two nearest ranks; NaN if there is none.
 *
 * @param fraction 0 (smallest) to 1 (largest)
 */
export function quantile(values: Float64Array, fraction: number): number {
  const sorted = values.filter((value) => !Number.isNaN(value)).sort();
  if (sorted.length === 0) return Number.NaN;
  const place = fraction * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below]!;
  const high = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return low + (place - below) * (high - low);
}

/** Standard deviation of white noise with the same median absolute deviation: median(|x - median|) / 0.6745. */
export function robustSd(values: Float64Array): number {
  const centre = median(values);
  return median(values.map((value) => Math.abs(value - centre))) / 0.6745;
}

/**
 * Standard deviation of the white noise on a slowly changing pressure record, from second differences.
 *
 * @param pressure dbar, in order of time; triples with a missing value are left out
 * @returns dbar; 0 if no three neighbours are present
 * @source house: median of |p(k+1) - 2 p(k) + p(k-1)| / 0.6745 / sqrt(6)
 */
export function pressureNoise(pressure: Float64Array): number {
  if (pressure.length < 3) return 0;
  const bends = new Float64Array(pressure.length - 2);
  for (let k = 0; k < bends.length; k++)
    bends[k] = Math.abs(pressure[k + 2]! - 2 * pressure[k + 1]! + pressure[k]!);
  const middle = median(bends);
  return Number.isNaN(middle) ? 0 : middle / 0.6745 / Math.sqrt(6);
}
