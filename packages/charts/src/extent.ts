/** Smallest and largest of the values that are numbers; null if there is none. */
export function extentOf(values: Iterable<number>): readonly [smallest: number, largest: number] | null {
  let smallest = Infinity;
  let largest = -Infinity;
  for (const value of values) {
    if (value < smallest) smallest = value;
    if (value > largest) largest = value;
  }
  return smallest <= largest ? [smallest, largest] : null;
}
