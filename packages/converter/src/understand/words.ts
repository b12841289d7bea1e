import { remember } from "./remember.ts";

/** Two-letter codes of the languages whose words are known. */
export type Language = "en" | "fr" | "de" | "es" | "pt" | "it" | "nl" | "da" | "no" | "sv" | "fi" | "is";

/** Lower case without accents; anything but letters and digits becomes one blank. */
export const plainWords = remember((text) =>
  text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/[ØøÐð]/g, (letter) => (letter === "Ø" || letter === "ø" ? "o" : "d"))
    .replace(/[Þþ]/g, "th")
    .replace(/ß/g, "ss")
    .replace(/[Ææ]/g, "ae")
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, " ")
    .trim(),
);

export const wordsOf = remember((text): readonly string[] => {
  const plain = plainWords(text);
  return plain === "" ? [] : plain.split(" ");
});

/** The nearest of some names to a misspelt one, at most three; only those within a third of its length. */
export function nearest(name: string, known: readonly string[]): readonly string[] {
  const wanted = name.toLowerCase();
  return known
    .map((candidate) => ({ candidate, distance: editDistance(wanted, candidate.toLowerCase()) }))
    .filter(({ candidate, distance }) => distance <= Math.max(2, Math.floor(candidate.length / 3)))
    .sort((a, b) => a.distance - b.distance || (a.candidate < b.candidate ? -1 : 1))
    .slice(0, 3)
    .map(({ candidate }) => candidate);
}

function editDistance(a: string, b: string): number {
  if (Math.abs(a.length - b.length) > 20) return Number.POSITIVE_INFINITY;
  let previous = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = previous[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      row.push(Math.min(previous[j]! + 1, row[j - 1]! + 1, change));
    }
    previous = row;
  }
  return previous[b.length]!;
}
