import { dayNumber } from "@wherry/core";
import { WodCursor, type WodText, type WodValue } from "./stream.ts";

/** A code with its number. */
export type WodEntry = readonly [code: number, value: WodValue | null];

export interface WodVariable {
  readonly code: number;
  readonly offset: number;
  /** Flag of the whole profile of this variable. */
  readonly profileFlag: string;
  readonly metadata: readonly WodEntry[];
}

/** A value of a level with its flags; `value` null where it is missing. */
export interface WodCell {
  readonly value: WodValue | null;
  readonly flag: string;
  readonly originatorFlag: string;
  readonly uncertainty: WodValue | null;
}

export interface WodLevel {
  readonly offset: number;
  readonly depth: WodCell;
  /** One for each variable; all missing where the depth is. */
  readonly cells: readonly WodCell[];
}

/** One profile as it stands in the file. */
export interface WodProfile {
  readonly version: string;
  readonly offset: number;
  /** Characters that the header states. */
  readonly size: number;
  readonly cast: number;
  readonly country: string;
  readonly cruise: number | null;
  readonly year: number;
  readonly month: number;
  /** 0 if not known. */
  readonly day: number;
  /** Decimal hours UTC. */
  readonly hours: WodValue | null;
  readonly latitude: WodValue | null;
  /** Degrees, of the variant Q. */
  readonly latitudeUncertainty: WodValue | null;
  readonly longitude: WodValue | null;
  readonly longitudeUncertainty: WodValue | null;
  readonly dateOffset: number;
  readonly levelCount: number;
  readonly profileType: string;
  readonly variables: readonly WodVariable[];
  /** Originator's cruise and station, and investigators, in words. */
  readonly texts: readonly string[];
  readonly secondary: readonly WodEntry[];
  /** Characters of the biological header, which is passed over. */
  readonly biology: number;
  readonly levels: readonly WodLevel[];
  /** The text ended before the last level. */
  readonly cut: boolean;
}

export interface WodFault {
  readonly message: string;
  readonly offset: number;
  /** Size that the header states; NaN if it could not be read. */
  readonly size: number;
}

const MISSING: WodCell = { value: null, flag: "", originatorFlag: "", uncertainty: null };

/**
 * Reads one profile, every section in order, and holds it against the size that it states.
 *
 * @param ownVersion whether the first character is the version alone. In the oldest release it is a digit, and not every
 *                   description of it agrees whether that digit begins the size; the size itself decides.
 * @source NODC Internal Report 14 (World Ocean Database 1998), table 12, and its reprint for 2001
 */
export function readProfile(
  text: WodText,
  offset: number,
  ownVersion = true,
): { readonly profile: WodProfile } | { readonly fault: WodFault } {
  const cursor = new WodCursor(text, offset);
  const version = text.slice(offset, offset + 1);
  if (!/^[A-CQ\d]$/.test(version))
    cursor.fail(`the version should be a digit, A, B, C or Q, it is "${version}"`);
  if (ownVersion) cursor.take(1, "the version");
  const withUncertainty = version === "Q";
  const size = cursor.count("the size of the profile");
  const faultOf = () => ({ fault: { ...cursor.fault!, size: size > 0 ? size : Number.NaN } });
  const head = readPrimary(cursor, withUncertainty);
  if (faultIn(cursor)) return faultOf();
  const texts = readCharacters(cursor);
  const secondary = readSecondary(cursor, withUncertainty);
  const biology = cursor.count("the size of the biological header");
  if (biology > 0) cursor.take(biology, "the biological header");
  if (faultIn(cursor)) return faultOf();
  const levels: WodLevel[] = [];
  for (let i = 0; i < head.levelCount; i++) {
    const level = readLevel(cursor, head.variables, withUncertainty);
    if (faultIn(cursor)) break;
    levels.push(level);
  }
  const fault = faultIn(cursor);
  const cut = fault?.cut === true && levels.length > 0;
  if (fault && !cut) return faultOf();
  const profile = { version, offset, size, ...head, texts, secondary, biology, levels, cut };
  if (!cut) checkEnd(cursor, offset, size);
  checkDepths(cursor, levels);
  const last = faultIn(cursor);
  if (last && !(last.cut && cut)) return faultOf();
  return { profile };
}

/** The fault as it is now: reading goes on changing it. */
const faultIn = (cursor: WodCursor) => cursor.fault;

function checkEnd(cursor: WodCursor, offset: number, size: number): void {
  const end = cursor.offset;
  if (end - offset !== size)
    cursor.fail(`the header states ${size} characters, the sections hold ${end - offset}`, offset);
  const rest = cursor.text.slice(end, Math.ceil(end / 80) * 80);
  const stray = rest.search(/\S/);
  if (stray >= 0) cursor.fail("after the last value the line should be blank", end + stray);
}

function checkDepths(cursor: WodCursor, levels: readonly WodLevel[]): void {
  let last = Number.NEGATIVE_INFINITY;
  for (const { depth, offset } of levels) {
    if (depth.value === null) continue;
    if (!(depth.value.value > last)) {
      // a text that was cut off has its own fault, but levels in disorder are worse
      cursor.fault = { message: `depth ${depth.value.value} m follows on ${last} m`, offset, cut: false };
      return;
    }
    last = depth.value.value;
  }
}

function readPrimary(cursor: WodCursor, withUncertainty: boolean) {
  const castAt = cursor.offset;
  const cast = cursor.counted("the cast number");
  if (cast === null) cursor.fail("the cast has no number", castAt);
  const countryAt = cursor.offset;
  const country = cursor.take(2, "the country");
  if (!cursor.fault && !/^[A-Z0-9 ]{2}$/.test(country))
    cursor.fail(`the country should be two letters, it is "${country}"`, countryAt);
  const cruise = cursor.counted("the cruise number");
  const dateOffset = cursor.offset;
  const year = cursor.field(4, "the year");
  const month = cursor.field(2, "the month");
  const day = cursor.field(2, "the day");
  if (
    !cursor.fault &&
    Number.isNaN(dayNumber({ year, month, day: day === 0 ? 1 : day }, "proleptic_gregorian"))
  )
    cursor.fail(`${year}-${month}-${day} is no day of the calendar`, dateOffset);
  const within = (value: WodValue | null, low: number, high: number, what: string) => {
    if (value && !(value.value >= low && value.value <= high))
      cursor.fail(`${what} is ${value.value}, outside ${low} to ${high}`, value.offset);
    return value;
  };
  const hours = within(cursor.value("the time of day"), 0, 24, "the time of day");
  const latitude = within(cursor.value("the latitude"), -90, 90, "the latitude");
  const uncertainty = (what: string) =>
    withUncertainty ? cursor.value(`the uncertainty of the ${what}`) : null;
  const latitudeUncertainty = uncertainty("latitude");
  const longitude = within(cursor.value("the longitude"), -180, 180, "the longitude");
  const longitudeUncertainty = uncertainty("longitude");
  const levelCount = cursor.count("the number of levels");
  const typeAt = cursor.offset;
  const profileType = cursor.take(1, "the profile type");
  if (!cursor.fault && !/^[01]$/.test(profileType))
    cursor.fail(`the profile type should be 0 or 1, it is "${profileType}"`, typeAt);
  const count = cursor.field(2, "the number of variables");
  const variables: WodVariable[] = [];
  for (let i = 0; i < count && !cursor.fault; i++) {
    const at = cursor.offset;
    const code = cursor.counted("the variable code") ?? 0;
    if (!cursor.fault && (code < 1 || variables.some((variable) => variable.code === code)))
      cursor.fail(`the variable code is ${code}`, at);
    const profileFlag = String(cursor.digit("the flag of the whole profile"));
    const entries = cursor.count("the number of metadata");
    variables.push({
      code,
      offset: at,
      profileFlag,
      metadata: readEntries(cursor, entries, withUncertainty),
    });
  }
  return {
    cast: cast ?? 0,
    country,
    cruise,
    year,
    month,
    day,
    hours,
    latitude,
    latitudeUncertainty,
    longitude,
    longitudeUncertainty,
    dateOffset,
    levelCount,
    profileType,
    variables,
  };
}

function readEntries(cursor: WodCursor, count: number, withUncertainty: boolean): WodEntry[] {
  const entries: WodEntry[] = [];
  for (let i = 0; i < count && !cursor.fault; i++) {
    const code = cursor.counted("the code of an entry") ?? 0;
    entries.push([code, cursor.value(`entry ${code}`)]);
    if (withUncertainty) cursor.digit(`the digit after entry ${code}`);
  }
  return entries;
}

function readCharacters(cursor: WodCursor): string[] {
  const size = cursor.count("the size of the character section");
  if (size === 0) return [];
  const from = cursor.offset;
  const texts: string[] = [];
  const count = cursor.digit("the number of entries of the character section");
  for (let i = 0; i < count && !cursor.fault; i++) {
    const at = cursor.offset;
    const type = cursor.digit("the type of a text");
    if (type === 1 || type === 2) {
      const length = cursor.field(2, "the length of a text");
      if (length < 0) cursor.fail(`the length of a text is ${length}`, at);
      const words = cursor.take(Math.max(length, 0), "a text").trim();
      texts.push(`originator's ${type === 1 ? "cruise" : "station"}: ${words}`);
    } else if (type === 3) {
      const people = cursor.field(2, "the number of investigators");
      for (let k = 0; k < people && !cursor.fault; k++) {
        const variable = cursor.counted("the variable of an investigator") ?? 0;
        const person = cursor.counted("the code of an investigator") ?? 0;
        texts.push(`investigator ${person} for variable ${variable}`);
      }
    } else cursor.fail(`the type of a text should be 1, 2 or 3, it is ${type}`, at);
  }
  checkSection(cursor, from, size, "the character section");
  return texts;
}

function readSecondary(cursor: WodCursor, withUncertainty: boolean): WodEntry[] {
  const size = cursor.count("the size of the secondary header");
  if (size === 0) return [];
  const from = cursor.offset;
  const count = cursor.count("the number of entries of the secondary header");
  const entries = readEntries(cursor, count, withUncertainty);
  checkSection(cursor, from, size, "the secondary header");
  return entries;
}

function checkSection(cursor: WodCursor, from: number, size: number, what: string): void {
  const found = cursor.offset - from;
  if (!cursor.fault && found !== size)
    cursor.fail(`${what} states ${size} characters and holds ${found}`, from);
}

function readLevel(cursor: WodCursor, variables: readonly WodVariable[], withUncertainty: boolean): WodLevel {
  const offset = cursor.offset;
  const cell = (what: string): WodCell => {
    const value = cursor.value(what);
    if (value === null) return MISSING;
    const flag = String(cursor.digit(`the flag of ${what}`));
    const originatorFlag = String(cursor.digit(`the originator's flag of ${what}`));
    const uncertainty = withUncertainty ? cursor.value(`the uncertainty of ${what}`) : null;
    return { value, flag, originatorFlag, uncertainty };
  };
  const depth = cell("a depth");
  if (depth.value === null) return { offset, depth, cells: variables.map(() => MISSING) };
  return { offset, depth, cells: variables.map(({ code }) => cell(`variable ${code}`)) };
}
