/** What the CF standard-name table says of a name. */
export interface StandardName {
  readonly name: string;
  /** Canonical unit (of the current name for an alias); null for names of text and flags, which have none. */
  readonly canonicalUnits: string | null;
  /** The current name if this one is an alias, else null. */
  readonly aliasOf: string | null;
  /** Further current names that the alias may stand for; mostly empty. */
  readonly alsoAliasOf: readonly string[];
}

/** A version of the CF standard-name table. */
export interface StandardNameTable {
  /** "83". */
  readonly version: string;
  /** As the table states it; null if it does not. */
  readonly lastModified: string | null;
  readonly names: ReadonlyMap<string, StandardName>;
}
