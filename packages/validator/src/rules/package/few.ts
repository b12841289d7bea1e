/** The first three of a list, for a message; how many there are stands behind it as the count. */
export const few = (names: readonly string[]): readonly string[] =>
  names.length > 3 ? [...names.slice(0, 3), "…"] : names;
