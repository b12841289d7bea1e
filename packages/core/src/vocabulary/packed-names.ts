import type { StandardName, StandardNameTable } from "./standard-name-table.ts";

/**
 * A standard-name table as short text. Names are sorted and written as the number of words they share with the name
 * before, then codes of their other words; a unit is its place in a list; an alias ends with the places of its
 * targets.
 */
export interface PackedNames {
  readonly version: string;
  readonly lastModified: string | null;
  /** Words of names, the most used first, joined by "|" (an old alias holds a blank). */
  readonly words: string;
  /** Canonical units joined by "|"; the first is "" for names without a unit. */
  readonly units: string;
  /** One name a line: shared words (base 36), word codes, ":" and place of the unit, "=" and places of targets. */
  readonly names: string;
}

// printable signs but quotes, backslash, backquote, dollar, and those that separate parts
const SIGNS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789!#%&()*+,-./;<>?@[]^_{}~";
/** Words with a code of one sign; any other has two, the first of them from behind this many. */
const SHORT = 60;

function encodeWord(index: number): string {
  if (index < SHORT) return SIGNS[index]!;
  const rest = index - SHORT;
  return SIGNS[SHORT + Math.floor(rest / SIGNS.length)]! + SIGNS[rest % SIGNS.length]!;
}

function decodeWords(codes: string, words: readonly string[]): string[] {
  const out: string[] = [];
  for (let i = 0; i < codes.length; i++) {
    let index = SIGNS.indexOf(codes[i]!);
    if (index >= SHORT) index = SHORT + (index - SHORT) * SIGNS.length + SIGNS.indexOf(codes[++i]!);
    out.push(words[index]!);
  }
  return out;
}

function sharedWords(a: readonly string[], b: readonly string[]): number {
  let n = 0;
  while (n < a.length && n < b.length && a[n] === b[n]) n++;
  return Math.min(n, 35);
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

export function packNames(table: StandardNameTable): PackedNames {
  const sorted = [...table.names.values()].sort((a, b) => compare(a.name, b.name));
  const counts = new Map<string, number>();
  for (const { name } of sorted)
    for (const word of name.split("_")) counts.set(word, (counts.get(word) ?? 0) + 1);
  const words = [...counts].sort((a, b) => b[1] - a[1] || compare(a[0], b[0])).map(([word]) => word);
  if (words.length > SHORT + (SIGNS.length - SHORT) * SIGNS.length)
    throw new RangeError("too many words for the code");
  const wordPlaces = new Map(words.map((word, i) => [word, i]));
  const units = [...new Set(["", ...sorted.map(({ canonicalUnits }) => canonicalUnits ?? "")])].sort(compare);
  const places = new Map(sorted.map(({ name }, i) => [name, i]));
  let before: string[] = [];
  const names = sorted.map(({ name, canonicalUnits, aliasOf, alsoAliasOf }) => {
    const own = name.split("_");
    const shared = sharedWords(before, own);
    before = own;
    const codes = own.slice(shared).map((word) => encodeWord(wordPlaces.get(word)!));
    const targets = aliasOf === null ? [] : [aliasOf, ...alsoAliasOf];
    const alias = targets.map((target) => `=${places.get(target)!.toString(36)}`).join("");
    const unit = targets.length > 0 ? "" : `:${units.indexOf(canonicalUnits ?? "").toString(36)}`;
    return shared.toString(36) + codes.join("") + unit + alias;
  });
  return {
    version: table.version,
    lastModified: table.lastModified,
    words: words.join("|"),
    units: units.join("|"),
    names: names.join("\n"),
  };
}

export function unpackNames(packed: PackedNames): StandardNameTable {
  const words = packed.words.split("|");
  const units = packed.units.split("|");
  let before: string[] = [];
  const rows = packed.names.split("\n").map((line) => {
    const [, shared = "0", codes = "", unit, targets = ""] = /^(.)([^:=]*)(?::(\w+))?((?:=\w+)*)$/.exec(
      line,
    )!;
    before = [...before.slice(0, Number.parseInt(shared, 36)), ...decodeWords(codes, words)];
    const places = targets
      .split("=")
      .slice(1)
      .map((place) => Number.parseInt(place, 36));
    return {
      name: before.join("_"),
      units: unit === undefined ? null : units[Number.parseInt(unit, 36)]!,
      places,
    };
  });
  const names = new Map<string, StandardName>();
  for (const { name, units, places } of rows) {
    const [target, ...others] = places.map((place) => rows[place]!);
    names.set(name, {
      name,
      canonicalUnits: (target ? target.units : units) || null,
      aliasOf: target?.name ?? null,
      alsoAliasOf: others.map((other) => other.name),
    });
  }
  return { version: packed.version, lastModified: packed.lastModified, names };
}
