/** Upper and lower case, blanks, hyphens and underscores do not tell names apart when a person misspells one. */
const plain = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, "_");

/** Changes that still count as a misspelling of a text of this length. */
function tolerated(length: number): number {
  if (length <= 3) return 1;
  return length <= 7 ? 2 : Math.min(3 + Math.floor((length - 8) / 8), 6);
}

/**
 * Number of letters to insert, delete, replace or swap with the neighbour to make one text of the other; more than
 * `limit` is not counted out.
 */
export function editDistance(a: string, b: string, limit = Infinity): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let smallest = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, beforeLast[j - 2]! + 1);
      row.push(cost);
      smallest = Math.min(smallest, cost);
    }
    if (smallest > limit) return limit + 1;
    [beforeLast, last] = [last, row];
  }
  return last[b.length]!;
}

/**
 * Known names that a misspelt text probably means, nearest first, at most `limit`; none if nothing is near. Of names
 * equally near those come first that begin with the same letter, then in the order of the candidates.
 */
export function nearestNames(text: string, candidates: Iterable<string>, limit = 3): string[] {
  const typed = plain(text);
  const found: { name: string; distance: number; sameStart: boolean; order: number }[] = [];
  let order = 0;
  const reach = tolerated(typed.length);
  if (typed !== "")
    for (const name of candidates) {
      const wanted = plain(name);
      const distance = editDistance(typed, wanted, reach);
      order++;
      // a text of one or two letters would be near to any other
      if (distance > reach || distance >= Math.max(typed.length, wanted.length)) continue;
      found.push({ name, distance, sameStart: typed[0] === wanted[0], order });
    }
  found.sort(
    (a, b) => a.distance - b.distance || Number(b.sameStart) - Number(a.sameStart) || a.order - b.order,
  );
  return found.slice(0, limit).map((each) => each.name);
}
