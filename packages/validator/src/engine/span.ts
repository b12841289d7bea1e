/** Smallest and largest number; infinity and minus infinity if there are none. For lists of any length. */
export function spanOf(values: Iterable<number>): [min: number, max: number] {
  let min = Number.POSITIVE_INFINITY;
  let max = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (value < min) min = value;
    if (value > max) max = value;
  }
  return [min, max];
}
