import { nearestNames, type StandardNameTable, shippedStandardNames } from "@wherry/core";

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

export function vocabularyOf(table: StandardNameTable): Vocabulary {
  return {
    version: Number.parseInt(table.version, 10),
    find(name) {
      const entry = table.names.get(name);
      if (entry === undefined) return null;
      return { name, units: entry.canonicalUnits ?? "", aliasOf: entry.aliasOf };
    },
    near: (name) => nearestNames(name, table.names.keys()),
  };
}

let shipped: Vocabulary | undefined;

/** The table that ships with Wherry. */
export function shippedVocabulary(): Vocabulary {
  shipped ??= vocabularyOf(shippedStandardNames());
  return shipped;
}
