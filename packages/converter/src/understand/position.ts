import { parseDecimal } from "@wherry/core";
import { remember } from "./remember.ts";

export type Axis = "latitude" | "longitude";

/** A latitude or longitude as written. */
export interface Coordinate {
  readonly axis: Axis | null;
  /** Degrees without the sign that a hemisphere gives. */
  readonly degrees: number;
  /** Sign by a hemisphere or a minus; null where the letter O leaves it open. */
  readonly sign: 1 | -1 | null;
  /** How the hemisphere is known. */
  readonly hemisphere: "letter" | "minus" | "none" | "letter O";
  readonly words: string;
  readonly start: number;
  readonly end: number;
}

/** Letters and words of hemispheres; O is west in French, Spanish, Portuguese and Italian and east in German. */
const HEMISPHERES: Readonly<Record<string, readonly [Axis, 1 | -1 | null]>> = {};
const hemispheres = HEMISPHERES as Record<string, readonly [Axis, 1 | -1 | null]>;
const words = (axis: Axis, sign: 1 | -1 | null, list: string) => {
  for (const word of list.split(" ")) hemispheres[word] = [axis, sign];
};
words("latitude", 1, "N NORTH NORD NORTE NOORD NB POHJOISTA POHJOINEN NORÐUR");
words("latitude", -1, "S Z SOUTH SUD SÜD SUR SUL SYD SØR ZUID ZB ETELÄÄ ETELÄISTÄ ETELÄ SUÐUR");
words("longitude", 1, "E Ø Ö EAST EST OST OOST ØST ÖST ESTE LESTE OL ITÄÄ ITÄISTÄ ITÄ AUSTUR");
words("longitude", -1, "W V WEST OUEST OESTE OVEST VEST VÄST WL LÄNTTÄ LÄNTISTÄ LÄNSI VESTUR");
words("longitude", null, "O");

// words in any case; single letters in capitals, since a small s is also a second
const LETTERS = Object.keys(HEMISPHERES)
  .sort((a, b) => b.length - a.length)
  .map((name) =>
    name.length === 1 ? name : [...name].map((char) => `[${char}${char.toLowerCase()}]`).join(""),
  )
  .join("|");
const WHOLE = String.raw`\d{1,3}`;
const MINUTES = String.raw`[0-5]?\d(?:[.,]\d+)?`;
const DEGREE = String.raw`(?:\s*[°ºd*˚]\s*|\s*deg\.?\s*|-|:|\s+)`;
const MINUTE = String.raw`(?:\s*['′’‘m]\s*|\s*min\.?\s*|-|:|\s+)`;
const SECOND = String.raw`(?:\s*(?:"|″|”|''|’’|s(?![a-z])|sec\.?))?`;
const ANGLE = String.raw`(?<minus>[-−–+])?\s?(?:(?<d3>${WHOLE})(?<sep3>${DEGREE})(?<m3>[0-5]?\d)${MINUTE}(?<s3>${MINUTES})${SECOND}|(?<d2>${WHOLE})(?<sep2>${DEGREE})(?<m2>${MINUTES})(?:\s*['′’‘m](?![a-z])|\s*min\b\.?)?|(?<d1>\d{1,7}(?:[.,]\d+)?)(?:\s*[°º˚]|\s*deg\b\.?)?)`;
const COORDINATE = new RegExp(
  String.raw`(?<![\wÀ-ÿ.])(?:(?<before>${LETTERS})\s*${ANGLE}(?![\w/]|[.,]\d)|${ANGLE.replaceAll("?<", "?<x")}\s*[,;|]?\s*[([]?(?<after>${LETTERS}|[nsewo])(?![\wÀ-ÿ/])|${ANGLE.replaceAll("?<", "?<y")}(?![\w/]|[.,]\d))`,
  "g",
);

/**
 * Coordinates in a text, in order: decimal degrees, degrees and minutes, degrees, minutes and seconds, or packed
 * ddmm.mmm; hemisphere by sign, letter or word, before or behind. Degrees and minutes that only a blank, hyphen or
 * colon parts are believed with a hemisphere letter or where `axis` says that the text is a coordinate.
 */
export const findCoordinates = (text: string, axis: Axis | null = null): readonly Coordinate[] =>
  FINDERS[axis ?? "either"](text);

const FINDERS = {
  either: remember((text) => coordinatesIn(text, null)),
  latitude: remember((text) => coordinatesIn(text, "latitude")),
  longitude: remember((text) => coordinatesIn(text, "longitude")),
};

function coordinatesIn(text: string, axis: Axis | null): readonly Coordinate[] {
  const found: Coordinate[] = [];
  for (const match of text.slice(0, 400).matchAll(COORDINATE)) {
    const coordinate = readMatch(match, axis);
    if (coordinate) found.push(...coordinate);
  }
  return found;
}

function readMatch(match: RegExpMatchArray, hint: Axis | null): Coordinate[] | null {
  const groups = match.groups ?? {};
  const letter = groups.before ?? groups.after;
  const prefix = groups.before !== undefined ? "" : groups.after !== undefined ? "x" : "y";
  const group = (name: string) => groups[prefix + name];
  const start = match.index ?? 0;
  const base = { words: match[0].trim(), start, end: start + match[0].length };
  // "51 61.0 N" is damaged, not 61 degrees
  if (groups.after !== undefined && /\d\s+$/.test((match.input ?? "").slice(Math.max(0, start - 4), start)))
    return null;
  const minus = group("minus") === "-" || group("minus") === "−" || group("minus") === "–";
  const [letterAxis, letterSign] = (letter && HEMISPHERES[letter.toUpperCase()]) || [null, null];
  const separator = group("sep3") ?? group("sep2");
  const weak = separator !== undefined && /^(?:-|:|\s+)$/.test(separator);
  if (weak && !letter && !hint) {
    // "51.2 4.3" and the like: two numbers, not degrees and minutes
    const parts = [...match[0].matchAll(/[-−–+]?\d+(?:[.,]\d+)?/g)];
    if (!/\s/.test(separator)) return null;
    return parts.flatMap((part) => plain(part[0], start + part.index));
  }
  const number = (digits: string | undefined) => (digits === undefined ? 0 : readNumber(digits));
  let degrees: number;
  if (group("d3") !== undefined) {
    degrees = number(group("d3")) + number(group("m3")) / 60 + number(group("s3")) / 3600;
  } else if (group("d2") !== undefined) degrees = number(group("d2")) + number(group("m2")) / 60;
  else {
    const digits = group("d1") ?? "";
    const axis = letterAxis ?? hint;
    const wholeDigits = /^\d*/.exec(digits)?.[0].length ?? 0;
    // ddmm.mmm and dddmm.mmm, as receivers of satellite fixes print them
    const packed = letter !== undefined && wholeDigits === (axis === "latitude" ? 4 : 5);
    // 0030.0000 without a letter may be thirty degrees or thirty minutes
    if (!letter && wholeDigits > 3) return null;
    const value = number(digits);
    degrees = packed ? Math.floor(value / 100) + (value % 100) / 60 : value;
    if (packed && value % 100 >= 60) return null;
  }
  const axis = letterAxis ?? hint;
  if (letterAxis && hint && letterAxis !== hint) return null;
  if (Number.isNaN(degrees) || degrees > (axis === "latitude" ? 90 : 180)) return null;
  if (letter && minus) return null;
  return [
    {
      ...base,
      axis,
      degrees,
      sign: letter ? letterSign : minus ? -1 : 1,
      hemisphere: letter ? (letter.toUpperCase() === "O" ? "letter O" : "letter") : minus ? "minus" : "none",
    },
  ];
}

function plain(text: string, start: number): Coordinate[] {
  const minus = /^[-−–]/.test(text);
  const degrees = readNumber(text.replace(/^[-−–+]/, ""));
  if (Number.isNaN(degrees) || degrees > 180) return [];
  return [
    {
      axis: null,
      degrees,
      sign: minus ? -1 : 1,
      hemisphere: minus ? "minus" : "none",
      words: text,
      start,
      end: start + text.length,
    },
  ];
}

const readNumber = (digits: string) => parseDecimal(digits, { decimal: digits.includes(",") ? "," : "." });
