/** Smallest and largest of the values that are numbers, of those places that are asked for; null if there is none. */
export function extentOf(
  values: ArrayLike<number>,
  of: (index: number) => boolean = () => true,
): readonly [smallest: number, largest: number] | null {
  let smallest = Infinity;
  let largest = -Infinity;
  for (let k = 0; k < values.length; k++) {
    const value = values[k]!;
    if (Number.isNaN(value) || !of(k)) continue;
    if (value < smallest) smallest = value;
    if (value > largest) largest = value;
  }
  return smallest <= largest ? [smallest, largest] : null;
}
