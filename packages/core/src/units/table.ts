import { decimalFactor, type Factor, multiplyFactors, ONE } from "./factor.ts";
import { prefixTable, unitTable } from "./table.generated.ts";
import { baseUnit, scaleUnit, UNITY, type Unit } from "./unit.ts";

interface Entry {
  readonly definition: string;
  readonly title: string;
  readonly place: number;
}

interface Tables {
  /** By name in lower case. */
  readonly names: ReadonlyMap<string, Entry>;
  readonly symbols: ReadonlyMap<string, Entry>;
  readonly prefixNames: ReadonlyMap<string, Factor>;
  readonly prefixSymbols: ReadonlyMap<string, Factor>;
}

/** Regular English plural of a unit's name. */
function pluralOf(name: string): string {
  if (/[^aeiou]y$/i.test(name)) return `${name.slice(0, -1)}ies`;
  return /(?:s|x|z|ch|sh)$/i.test(name) ? `${name}es` : `${name}s`;
}

const words = (text: string | undefined): string[] => (text ? text.split(" ") : []);
const lines = (table: string): string[][] =>
  table
    .trim()
    .split("\n")
    .map((line) => line.split("|"));

function unpack(): Tables {
  const names = new Map<string, Entry>();
  const symbols = new Map<string, Entry>();
  // what comes first in the database stays
  const keep = <V>(map: Map<string, V>, key: string, value: V) => map.has(key) || map.set(key, value);
  for (const [place, [definition = "", nameList, symbolList]] of lines(unitTable).entries()) {
    const singulars = words(nameList).map((name) => name.split("/"));
    const entry = { definition, title: singulars[0]?.[0] ?? words(symbolList)[0]!, place };
    for (const [singular = "", plural] of singulars)
      for (const name of [singular, plural ?? pluralOf(singular)]) {
        keep(names, name.toLowerCase(), entry);
        keep(names, name.toLowerCase().replaceAll("_", "\u00A0"), entry);
      }
    for (const symbol of words(symbolList)) {
      keep(symbols, symbol, entry);
      keep(symbols, symbol.replaceAll("_", "\u00A0"), entry);
    }
  }
  const prefixNames = new Map<string, Factor>();
  const prefixSymbols = new Map<string, Factor>();
  for (const [value = "", nameList, symbolList] of lines(prefixTable)) {
    for (const name of words(nameList)) keep(prefixNames, name, decimalFactor(value));
    for (const symbol of words(symbolList)) keep(prefixSymbols, symbol, decimalFactor(value));
  }
  return { names, symbols, prefixNames, prefixSymbols };
}

let tables: Tables | null = null;
const units = new Map<Entry, Unit>();

/** Parser of a definition in the database; given by the caller because definitions are themselves unit texts. */
export type ParseDefinition = (text: string) => Unit;

export interface FoundUnit {
  readonly unit: Unit;
  /** As typed, "" if none. */
  readonly prefix: string;
  /** First name of the unit in the database. */
  readonly entry: string;
}

function unitOf(entry: Entry, parse: ParseDefinition): Unit {
  let unit = units.get(entry);
  if (!unit) {
    if (entry.definition === "base")
      unit = baseUnit(entry.place); // the first seven lines of the table
    else unit = entry.definition === "dimensionless" ? UNITY : parse(entry.definition);
    units.set(entry, unit);
  }
  return unit;
}

/** The longest key of the map with which the text begins; "" if there is none. */
function longestPrefix(text: string, map: ReadonlyMap<string, Factor>): string {
  for (let length = Math.min(5, text.length); length > 0; length--)
    if (map.has(text.slice(0, length))) return text.slice(0, length);
  return "";
}

/**
 * The unit that a name or symbol stands for. Names match in any case, symbols only as they are; the whole word is
 * tried before prefix and rest; of prefixes the longest counts, and only one may be a symbol.
 *
 * @source UDUNITS-2, behaviour of release 2.2.28
 */
export function lookupUnit(word: string, parse: ParseDefinition): FoundUnit | null {
  tables ??= unpack();
  let rest = word;
  let factor = ONE;
  let symbolSeen = false;
  while (rest !== "") {
    const entry = tables.names.get(rest.toLowerCase()) ?? tables.symbols.get(rest);
    if (entry) {
      const unit = unitOf(entry, parse);
      const prefix = word.slice(0, word.length - rest.length);
      return { unit: prefix === "" ? unit : scaleUnit(unit, factor), prefix, entry: entry.title };
    }
    const name = longestPrefix(rest.toLowerCase(), tables.prefixNames);
    const symbol = name !== "" || symbolSeen ? "" : longestPrefix(rest, tables.prefixSymbols);
    const value = tables.prefixNames.get(name) ?? tables.prefixSymbols.get(symbol);
    if (!value) return null;
    if (symbol !== "") symbolSeen = true;
    factor = multiplyFactors(factor, value);
    rest = rest.slice((name || symbol).length);
  }
  return null;
}

/** Names, plurals and symbols of the database without prefixes; names in lower case. */
export function knownUnitWords(): readonly string[] {
  tables ??= unpack();
  return [...tables.names.keys(), ...tables.symbols.keys()].filter((word) => !word.includes("\u00A0"));
}
