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
  if (scratch.length < values.length) scratch = new Float64Array(values.length);
  const kept = scratch;
  let count = 0;
  for (let k = 0; k < values.length; k++) if (!Number.isNaN(values[k]!)) kept[count++] = values[k]!;
  if (count === 0) return Number.NaN;
  const place = fraction * (count - 1);
  const below = Math.floor(place);
  const low = select(kept, count, below);
  if (place === below) return low;
  // all that is right of the selected rank is at least as large
  let high = Number.POSITIVE_INFINITY;
  for (let k = below + 1; k < count; k++) high = Math.min(high, kept[k]!);
  return low + (place - below) * (high - low);
}

/** Kept from call to call: a dozen steps of a cast ask for medians of columns of one length. */
let scratch = new Float64Array();

/** Value of the given rank among the first `count` values (Hoare's selection); reorders them. */
function select(values: Float64Array, count: number, rank: number): number {
  let from = 0;
  let to = count - 1;
  while (from < to) {
    const pivot = values[(from + to) >> 1]!;
    let i = from;
    let j = to;
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
      if (i <= j) {
        const swapped = values[i]!;
        values[i] = values[j]!;
        values[j] = swapped;
        i++;
        j--;
      }
    }
    if (rank <= j) to = j;
    else if (rank >= i) from = i;
    else break;
  }
  return values[rank]!;
}

/** Standard deviation of white noise with the same median absolute deviation: median(|x - median|) / 0.6745. */
export function robustSd(values: Float64Array): number {
  const centre = median(values);
  const off = new Float64Array(values.length);
  for (let k = 0; k < off.length; k++) off[k] = Math.abs(values[k]! - centre);
  return median(off) / 0.6745;
}

/**
 * Standard deviation of the white noise on a slowly changing pressure record, from second differences.
 *
 * @param pressure dbar, in order of time; triples with a missing value are left out
 * @returns dbar; 0 if no three neighbours are present
 * @source house: median of |p(k+1) - 2 p(k) + p(k-1)| / 0.6745 / sqrt(6)
 */
export function pressureNoise(pressure: Float64Array): number {
  let noise = known.get(pressure);
  if (noise === undefined) {
    noise = noiseOf(pressure);
    known.set(pressure, noise);
  }
  return noise;
}

/** Half a dozen steps ask for the noise of the same column, which nobody changes. */
const known = new WeakMap<Float64Array, number>();

function noiseOf(pressure: Float64Array): number {
  if (pressure.length < 3) return 0;
  const bends = new Float64Array(pressure.length - 2);
  for (let k = 0; k < bends.length; k++)
    bends[k] = Math.abs(pressure[k + 2]! - 2 * pressure[k + 1]! + pressure[k]!);
  const middle = median(bends);
  return Number.isNaN(middle) ? 0 : middle / 0.6745 / Math.sqrt(6);
}
