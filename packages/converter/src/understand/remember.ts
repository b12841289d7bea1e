/** Longer texts are met once. */
const LONGEST = 300;

/**
 * A function of a text that remembers its latest results: the files of a survey have most of their header lines,
 * heads and words in common. What it gives must not be changed.
 */
export function remember<T>(find: (text: string) => T, most = 2000): (text: string) => T {
  let known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const found = find(text);
    if (text.length > LONGEST) return found;
    if (known.size >= most) known = new Map();
    known.set(text, found);
    return found;
  };
}
