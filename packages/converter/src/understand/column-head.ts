import { remember } from "./remember.ts";
import { roleOfName } from "./vocabulary/quantity-words.ts";
import { readUnit, type UnitSpelling } from "./vocabulary/unit-spellings.ts";
import { readZone, type ZoneReading, zoneAmong } from "./zone.ts";

/** A column's head taken apart. */
export interface ColumnHead {
  readonly header: string;
  /** The name without its unit; empty if the head is a unit and nothing else. */
  readonly name: string;
  /** The unit as it stands, null if none is given. */
  readonly unitText: string | null;
  /** The unit if it is known. */
  readonly unit: UnitSpelling | null;
  /** A time zone named in the head. */
  readonly zone: ZoneReading | null;
}

/**
 * Takes a head apart: unit in brackets or parentheses, after a comma, slash, underscore or blank, or joined to the
 * name ("TempF"); or the whole head is a unit. `below` is the cell of a line of units.
 */
export function readHead(header: string, below: string | null): ColumnHead {
  const head = bareHead(header.trim());
  if (below === null || below.trim() === "") return head;
  const unit = readUnit(below);
  const zone = zoneIn(below) ?? head.zone;
  return {
    ...head,
    unitText: below.trim().replace(/^[[(]\s*(.*?)\s*[\])]$/, "$1"),
    unit,
    zone,
    name: head.name || header.trim(),
  };
}

const bareHead = remember(takeApart);

function takeApart(header: string): ColumnHead {
  const none = { header, name: header, unitText: null, unit: null, zone: null };
  if (header === "") return none;
  const zone = zoneIn(header);
  const bracket = /^(.*?)\s*[[({<]\s*([^[\](){}<>]*(?:\([^()]*\))?)\s*[\])}>]\s*(.*)$/.exec(header);
  if (bracket) {
    const [, before = "", inside = "", behind = ""] = bracket;
    const unit = readUnit(inside);
    const rest = `${before} ${behind}`.trim();
    if (unit) {
      // "Temp, deg C (ITS-90)": a unit before the scale
      const inner = roleOfName(rest) === null && rest.length > 1 ? takeApart(rest) : null;
      const name = inner?.unit?.kind === unit.kind ? inner.name : rest;
      return {
        header,
        name,
        unitText: name === rest ? inside : `${inner?.unitText} (${inside})`,
        unit,
        zone,
      };
    }
    // a second pair of brackets may hold the unit: "Temp (in situ) [degC]"
    const again = /[[({]/.test(behind) ? takeApart(`${before} ${behind}`.trim()) : null;
    if (again?.unit) return { ...again, header, zone };
    if (zone) return { ...none, name: rest, zone };
    const words = roleOfName(`${before} ${inside} ${behind}`);
    if (words) return { ...none, name: `${before} ${inside} ${behind}`.trim(), zone };
    return { header, name: rest, unitText: inside === "" ? null : inside, unit: null, zone };
  }
  // a single letter is a name, not a unit
  const whole = header.length > 1 ? readUnit(header) : null;
  const role = roleOfName(header);
  if (whole && (!role || role.role === "elapsed"))
    return { header, name: "", unitText: header, unit: whole, zone };
  if (role) return { ...none, zone };
  if (zone) return { ...none, name: withoutZone(header, zone), zone };
  for (const separator of [/,\s*/g, /\s+/g, /_/g, /\//g]) {
    for (const match of header.matchAll(separator)) {
      const [name, rest] = [
        header.slice(0, match.index).trim(),
        header.slice(match.index + match[0].length).trim(),
      ];
      const unit = name === "" ? null : (readUnit(rest) ?? readUnit(withSlash(rest)));
      if (unit) return { header, name, unitText: rest, unit, zone };
    }
  }
  const joined = /^(.*[a-z0-9])_?(C|F|K|M|dbar|psi|PSI|degC|degF|mS|uS)$/.exec(header);
  const joinedUnit = joined ? readUnit(joined[2] === "M" ? "m" : joined[2]!) : null;
  if (joined && joinedUnit && roleOfName(joined[1]!))
    return { header, name: joined[1]!, unitText: joined[2]!, unit: joinedUnit, zone };
  return none;
}

function zoneIn(text: string): ZoneReading | null {
  const inside = /[[(]\s*([^\])]*)\s*[\])]/.exec(text)?.[1];
  return (inside ? (readZone(inside) ?? zoneAmong(inside)) : null) ?? zoneAmong(text);
}

/** In names of one word the line under a unit is its slash: "conductivity_ms_cm", "oxygen_umol_kg". */
const withSlash = (text: string) => text.replace("_", "/");

const withoutZone = (text: string, { words }: ZoneReading) =>
  text
    .replace(words, " ")
    .replace(/[_\s]+/g, " ")
    .trim() || text;
