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

interface Row {
  readonly name: string;
  readonly units: string | null;
  /** Places of the names that took the place of an alias. */
  readonly targets: readonly number[];
}

/** Reads lines sign by sign; the first of them must share no word with one before. */
function unpackRows(lines: readonly string[], words: readonly string[], units: readonly string[]): Row[] {
  let name = "";
  /** Where each word of the name ends. */
  const ends: number[] = [];
  return lines.map((line) => {
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
    return {
      name,
      units: unit === "" ? null : units[Number.parseInt(unit.slice(1), 36)]!,
      targets: targets.map((place) => Number.parseInt(place, 36)),
    };
  });
}

/** Names that begin with one word stand together: most runs ask for a few names, and unpack as many of these groups. */
class UnpackedNames implements ReadonlyMap<string, StandardName> {
  readonly #packed: PackedNames;
  readonly #words: readonly string[];
  readonly #units: readonly string[];
  readonly #groups = new Map<string, ReadonlyMap<string, StandardName | null>>();
  #all: ReadonlyMap<string, StandardName> | undefined;

  constructor(packed: PackedNames) {
    this.#packed = packed;
    this.#words = packed.words.split("|");
    this.#units = packed.units.split("|");
  }

  get(name: string): StandardName | undefined {
    const known = this.#all ?? this.#group(name.split("_", 1)[0]!);
    const found = known.get(name);
    // an alias points to names of other groups
    return found === null ? this.#whole.get(name) : found;
  }

  /** Names that begin with a word; null for an alias. */
  #group(first: string): ReadonlyMap<string, StandardName | null> {
    const known = this.#groups.get(first);
    if (known !== undefined) return known;
    const group = new Map<string, StandardName | null>();
    this.#groups.set(first, group);
    const word = this.#words.indexOf(first);
    const text = `\n${this.#packed.names}`;
    const start = word < 0 ? -1 : text.indexOf(`\n0${encodeWord(word)}`);
    if (start < 0) return group;
    const next = text.indexOf("\n0", start + 1);
    const lines = text.slice(start + 1, next < 0 ? text.length : next).split("\n");
    for (const { name, units, targets } of unpackRows(lines, this.#words, this.#units)) {
      const entry = { name, canonicalUnits: units || null, aliasOf: null, alsoAliasOf: [] };
      group.set(name, targets.length > 0 ? null : entry);
    }
    return group;
  }

  get #whole(): ReadonlyMap<string, StandardName> {
    if (this.#all !== undefined) return this.#all;
    const rows = unpackRows(this.#packed.names.split("\n"), this.#words, this.#units);
    this.#all = new Map(
      rows.map((row) => {
        const [target, ...others] = row.targets.map((place) => rows[place]!);
        const entry = {
          name: row.name,
          canonicalUnits: (target ? target.units : row.units) || null,
          aliasOf: target?.name ?? null,
          alsoAliasOf: others.map((other) => other.name),
        };
        return [row.name, entry];
      }),
    );
    return this.#all;
  }

  has(name: string): boolean {
    return this.get(name) !== undefined;
  }
  get size(): number {
    return this.#whole.size;
  }
  keys() {
    return this.#whole.keys();
  }
  values() {
    return this.#whole.values();
  }
  entries() {
    return this.#whole.entries();
  }
  [Symbol.iterator]() {
    return this.#whole[Symbol.iterator]();
  }
  forEach(call: (value: StandardName, key: string, map: ReadonlyMap<string, StandardName>) => void): void {
    this.#whole.forEach((value, key) => {
      call(value, key, this);
    });
  }
}

export const unpackNames = (packed: PackedNames): StandardNameTable => ({
  version: packed.version,
  lastModified: packed.lastModified,
  names: new UnpackedNames(packed),
});
