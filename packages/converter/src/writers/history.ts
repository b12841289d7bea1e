import type { Cast } from "@wherry/core";

/**
 * Text of `history`: one line per step in the order taken, each with the moment of writing. A step whose words
 * differ from cast to cast is told in general; its parameters stand in the processing record.
 *
 * @param last words for what the writer itself did
 */
export function historyText(
  casts: readonly Cast[],
  created: string,
  software: string,
  last: readonly string[],
): string {
  const steps = new Map<string, { words: Map<string, string[]>; casts: number }>();
  for (const cast of casts) {
    const met = new Set<string>();
    for (const { step, words } of cast.steps) {
      let entry = steps.get(step);
      if (!entry) {
        entry = { words: new Map(), casts: 0 };
        steps.set(step, entry);
      }
      if (!met.has(step)) entry.casts++;
      met.add(step);
      const ids = entry.words.get(words) ?? [];
      if (ids.at(-1) !== cast.id) ids.push(cast.id);
      entry.words.set(words, ids);
    }
  }
  const lines = ["read"];
  // what the sources tell of themselves stands before what was done here
  const former = new Set(
    casts.flatMap(({ notes }) =>
      notes.filter((note) => note.startsWith(HISTORY)).map((note) => note.slice(HISTORY.length)),
    ),
  );
  for (const [step, { words, casts: count }] of steps) {
    const [only] = words.keys();
    if (words.size === 1 && count === casts.length) lines.push(only!);
    else if (words.size <= FEW)
      lines.push([...words].map(([text, ids]) => `${text} (${idsText(ids)})`).join("; "));
    else lines.push(`${step}: ${count} casts, the numbers of each stand in the processing record`);
  }
  return [...former, ...[...lines, ...last].map((line) => `${created} ${software}: ${oneLine(line)}`)].join(
    "\n",
  );
}

/** How readers of netCDF note the attribute. */
const HISTORY = "history = ";

/** Up to how many different wordings of a step are told one by one. */
const FEW = 3;

const idsText = (ids: readonly string[]): string =>
  ids.length <= 5 ? ids.join(", ") : `${ids.length} casts`;

const oneLine = (text: string): string => text.replaceAll(/\s+/g, " ").trim();
