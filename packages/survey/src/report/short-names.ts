/** Longest names, in characters, where casts are few and where they are many. */
const LONGEST = { few: 14, many: 6 } as const;
const FEW = 8;

/**
 * Names short enough to stand in a picture: ids without what they all begin with, or numbers in the order given where
 * these would be too long.
 *
 * @returns by id; and what was left out, null for numbers
 */
export function shortNames(ids: readonly string[]): {
  readonly names: ReadonlyMap<string, string>;
  readonly without: string | null;
} {
  const [first = ""] = ids;
  const common = [...first].findIndex((_, k) => ids.some((id) => id[k] !== first[k]));
  // cut behind a sign between words, so that no number loses its first digit
  const shared = ids.length < 2 ? "" : first.slice(0, common < 0 ? first.length : common);
  const without = /^.*[._-]/.exec(shared)?.[0] ?? "";
  const rests = ids.map((id) => id.slice(without.length));
  const longest = ids.length <= FEW ? LONGEST.few : LONGEST.many;
  const fits = rests.every((rest) => rest !== "" && rest.length <= longest);
  return {
    names: new Map(ids.map((id, k) => [id, fits ? rests[k]! : String(k + 1)])),
    without: fits ? without : null,
  };
}
