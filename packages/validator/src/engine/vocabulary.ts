import { type StandardNameTable, shippedStandardNames } from "@wherry/core";

/** A standard name as its table has it. */
export interface KnownName {
  readonly name: string;
  /** Canonical unit as the table prints it; "1" for numbers without dimension, "" where there is none. */
  readonly units: string;
  /** The name that took its place, where this one is an alias. */
  readonly aliasOf: string | null;
}

/** The standard name table by which names are judged. */
export interface Vocabulary {
  readonly version: number;
  find(name: string): KnownName | null;
  /** Names that are spelt nearly so, nearest first, at most three. */
  near(name: string): readonly string[];
}

/** Number of letters to add, drop or change; more than `most` counts as `most + 1`. */
export function spellingDistance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, row[j]! + 1, next[j - 1]! + 1));
    }
    if (Math.min(...next) > most) return most + 1;
    row = next;
  }
  return Math.min(row[b.length]!, most + 1);
}

/** The names nearest in spelling, letter case aside, at most three. */
export function nearest(name: string, names: Iterable<string>, most = 2): string[] {
  const wanted = name.toLowerCase();
  const found: { known: string; distance: number }[] = [];
  for (const known of names) {
    const distance = spellingDistance(wanted, known.toLowerCase(), most);
    if (distance <= most) found.push({ known, distance });
  }
  return found
    .sort((a, b) => a.distance - b.distance || (a.known < b.known ? -1 : 1))
    .slice(0, 3)
    .map(({ known }) => known);
}

export function vocabularyOf(table: StandardNameTable): Vocabulary {
  return {
    version: Number.parseInt(table.version, 10),
    find(name) {
      const entry = table.names.get(name);
      if (entry === undefined) return null;
      return { name, units: entry.canonicalUnits ?? "", aliasOf: entry.aliasOf };
    },
    near: (name) => nearest(name, table.names.keys()),
  };
}

let shipped: Vocabulary | undefined;

/** The table that ships with Wherry. */
export function shippedVocabulary(): Vocabulary {
  shipped ??= vocabularyOf(shippedStandardNames());
  return shipped;
}
