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

/** Value of each sign by its character code. */
const valueOfSign = new Uint8Array(128);
for (let value = 0; value < SIGNS.length; value++) valueOfSign[SIGNS.charCodeAt(value)] = value;

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

const COLON = 58;
const EQUALS = 61;

/** Reads sign by sign: at the start of a program, this is a good part of the time of a short run. */
export function unpackNames(packed: PackedNames): StandardNameTable {
  const words = packed.words.split("|");
  const units = packed.units.split("|");
  const rows: { name: string; units: string | null; targets: number[] }[] = [];
  let name = "";
  /** Where each word of the name ends. */
  const ends: number[] = [];
  for (const line of packed.names.split("\n")) {
    const shared = Number.parseInt(line[0]!, 36);
    name = shared === 0 ? "" : name.slice(0, ends[shared - 1]);
    ends.length = shared;
    let i = 1;
    for (; i < line.length; i++) {
      const code = line.charCodeAt(i);
      if (code === COLON || code === EQUALS) break;
      let index = valueOfSign[code]!;
      if (index >= SHORT) index = SHORT + (index - SHORT) * SIGNS.length + valueOfSign[line.charCodeAt(++i)]!;
      name = ends.length === 0 ? words[index]! : `${name}_${words[index]!}`;
      ends.push(name.length);
    }
    const [unit = "", ...targets] = line.slice(i).split("=");
    rows.push({
      name,
      units: unit === "" ? null : units[Number.parseInt(unit.slice(1), 36)]!,
      targets: targets.map((place) => Number.parseInt(place, 36)),
    });
  }
  const names = new Map<string, StandardName>();
  for (const row of rows) {
    const [target, ...others] = row.targets.map((place) => rows[place]!);
    names.set(row.name, {
      name: row.name,
      canonicalUnits: (target ? target.units : row.units) || null,
      aliasOf: target?.name ?? null,
      alsoAliasOf: others.map((other) => other.name),
    });
  }
  return { version: packed.version, lastModified: packed.lastModified, names };
}
