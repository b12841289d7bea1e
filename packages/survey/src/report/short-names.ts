/**
 * Names short enough to stand in a picture: ids without what they all begin with, or numbers in the order given where
 * these would be longer than six characters.
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
  const fits = rests.every((rest) => rest !== "" && rest.length <= 6);
  return {
    names: new Map(ids.map((id, k) => [id, fits ? rests[k]! : String(k + 1)])),
    without: fits ? without : null,
  };
}
