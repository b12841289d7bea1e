import { remember } from "./remember.ts";
import { monthOfWord } from "./vocabulary/months.ts";
import { toInteger, type ZoneReading, zoneAfter } from "./zone.ts";

export type DateOrder = "year-month-day" | "day-month-year" | "month-day-year";

/** One way to read a date. */
export interface DateReading {
  readonly order: DateOrder;
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** A date and/or time of day as written, with every reading that the calendar allows. */
export interface Moment {
  /** Empty if there is no date. */
  readonly dates: readonly DateReading[];
  /** Written in digits with the year last or short, so that day and month can be told only by their sizes. */
  readonly numeric: boolean;
  /** Day and month are told apart by points, as "2.6.2023". */
  readonly dotted: boolean;
  /** Null if there is no time of day. */
  readonly secondOfDay: number | null;
  readonly zone: ZoneReading | null;
  readonly words: string;
  readonly start: number;
  readonly end: number;
}

const WORD = "[A-Za-zÀ-ÿ]{3,12}";
const DATE = new RegExp(
  [
    String.raw`(?<![\d:/-]|\d[.,])(?<y1>\d{4})(?<s1>[-/.])(?<m1>\d{1,2})\k<s1>(?<d1>\d{1,2})(?![\d/-])`,
    String.raw`(?<![\d:/-]|\d[.,])(?<a2>\d{1,2})(?<s2>[-/.])(?<b2>\d{1,2})\k<s2>(?<c2>\d{4}|\d{2})(?![\d/.,-]\d|\d)`,
    String.raw`(?<![\d:/-]|\d[.,])(?<d3>\d{1,2})(?:st|nd|rd|th|er|\.)?[-\s/.,]{0,3}(?:de\s+)?(?<m3>${WORD})\.?[-\s/.,]{0,3}(?:de\s+)?(?<y3>\d{4}|\d{2})(?![\d:])`,
    String.raw`(?<![A-Za-z])(?<m4>${WORD})\.?\s+(?<d4>\d{1,2})(?:st|nd|rd|th)?,?\s+(?<y4>\d{4})(?!\d)`,
    String.raw`(?<![\d:/-]|\d[.,])(?<y5>\d{4})[-\s/.]{1,2}(?<m5>${WORD})[-\s/.]{1,2}(?<d5>\d{1,2})(?!\d)`,
    String.raw`(?<![\d:/-]|\d[.,])(?<y6>(?:19|20)\d{2})(?<m6>0[1-9]|1[0-2])(?<d6>0[1-9]|[12]\d|3[01])(?![\d.,])`,
  ].join("|"),
  "g",
);

const CLOCK = String.raw`(?<h>[01]?\d|2[0-4])(?:[:](?<mi>[0-5]\d)(?:[:](?<s>[0-5]\d|60)(?:[.,](?<f>\d{1,9}))?)?(?:\s?(?<ap>[AaPp])\.?[Mm]\.?)?|\s?[hH]\s?(?<mi2>[0-5]\d)(?:\s?(?:m|min|:)\s?(?<s2>[0-5]\d)\s?s?)?(?:\s?min)?)(?![\d:])`;
const COMPACT_CLOCK = String.raw`(?<h3>[01]\d|2[0-3])(?<mi3>[0-5]\d)(?<s3>[0-5]\d)?(?=\s?(?:Z\b|UTC\b|GMT\b|UT\b|h\b|hrs\b))`;
const DOTTED_CLOCK = String.raw`(?<h4>[01]?\d|2[0-3])\.(?<mi4>[0-5]\d)(?:\.(?<s4>[0-5]\d))?(?=\s?(?:Uhr|uhr|kl\b|[AaPp][Mm]\b))(?:\s?(?<ap4>[AaPp])[Mm])?`;
// "kl. 08.30": the word before it makes it a time of day
const SPOKEN_CLOCK = String.raw`\s*,?\s*(?:kl\.?|klo|um|ore|at|à|às|a\s+las)\s*(?<h6>[01]?\d|2[0-3])[.:](?<mi6>[0-5]\d)(?:[.:](?<s6>[0-5]\d))?(?![\d.:])`;
const T_CLOCK = String.raw`T(?<h5>[01]\d|2[0-3])(?<mi5>[0-5]\d)(?<s5>[0-5]\d)?(?=Z|[+-]|\s|$)`;
const SEPARATOR = String.raw`(?:T|\s*[,;|@]?\s*(?:at\s+|um\s+|à\s+|kl\.?\s+|a\s+las\s+|[A-Za-zÀ-ÿ ]{0,16}:\s*)?)`;
const TIME_AFTER_DATE = new RegExp(
  `(?:${SEPARATOR}(?:${CLOCK}|${DOTTED_CLOCK})|\\s*${COMPACT_CLOCK}|${T_CLOCK}|${SPOKEN_CLOCK})`,
  "y",
);
const TIME_ALONE = new RegExp(
  `(?<![\\d:/+\\-−°']|\\d[.,])(?:${CLOCK}|${COMPACT_CLOCK}|${DOTTED_CLOCK})`,
  "g",
);

/** All dates, with the time of day and zone that follow them, and times of day that stand alone. */
export const findMoments = remember((text): readonly Moment[] => {
  const moments: Moment[] = [];
  for (const match of text.matchAll(DATE)) {
    const groups = match.groups ?? {};
    const dates = datesOf(groups);
    if (dates.length === 0 || isAngle(text, match.index + match[0].length)) continue;
    TIME_AFTER_DATE.lastIndex = match.index + match[0].length;
    const time = TIME_AFTER_DATE.exec(text);
    let end = match.index + match[0].length;
    let secondOfDay: number | null = null;
    let zone: ZoneReading | null = null;
    if (time) {
      secondOfDay = secondOfDayOf(time.groups ?? {});
      end += time[0].length;
      const after = zoneAfter(text, end);
      if (after) {
        zone = { minutes: after.minutes, words: after.words };
        end = after.end;
      }
    }
    moments.push({
      dates,
      numeric: groups.a2 !== undefined,
      dotted: groups.s2 === ".",
      secondOfDay,
      zone,
      words: text.slice(match.index, end).trim(),
      start: match.index,
      end,
    });
  }
  for (const match of text.matchAll(TIME_ALONE)) {
    let end = match.index + match[0].length;
    if (moments.some((moment) => match.index < moment.end && end > moment.start)) continue;
    const secondOfDay = secondOfDayOf(match.groups ?? {});
    if (secondOfDay === null || isAngle(text, end)) continue;
    const after = zoneAfter(text, end);
    if (after) end = after.end;
    moments.push({
      dates: [],
      numeric: false,
      dotted: false,
      secondOfDay,
      zone: after && { minutes: after.minutes, words: after.words },
      words: text.slice(match.index, end).trim(),
      start: match.index,
      end,
    });
  }
  return moments.sort((a, b) => a.start - b.start);
});

/** "51-12-20 N" is an angle, although it could be a date. */
const isAngle = (text: string, end: number) => /^\s?[NSEWO](?![A-Za-z])/.test(text.slice(end, end + 3));

/** A cell that is a date, a time of day or both and nothing else; null otherwise. */
export function momentOfCell(text: string): Moment | null {
  const cell = text.trim();
  if (cell.length < 4 || cell.length > 45 || !/\d/.test(cell)) return null;
  const [only, other] = findMoments(cell);
  if (!only || other || only.start !== 0) return null;
  return only.end >= cell.length || cell.slice(only.end).trim() === "" ? only : null;
}

function datesOf(g: Readonly<Record<string, string | undefined>>): DateReading[] {
  const readings: DateReading[] = [];
  const add = (order: DateOrder, year: number, month: number, day: number) => {
    if (isDate(year, month, day)) readings.push({ order, year, month, day });
  };
  if (g.y1 !== undefined) add("year-month-day", toInteger(g.y1), toInteger(g.m1!), toInteger(g.d1!));
  else if (g.a2 !== undefined) {
    const [a, b, c] = [toInteger(g.a2), toInteger(g.b2!), toInteger(g.c2!)];
    const short = g.c2!.length === 2;
    add("day-month-year", short ? fullYear(c) : c, b, a);
    add("month-day-year", short ? fullYear(c) : c, a, b);
    if (short && g.a2.length === 2) add("year-month-day", fullYear(a), b, c);
  } else if (g.m3 !== undefined) {
    const month = monthOfWord(g.m3);
    if (month === null) return [];
    const [day, year] = [toInteger(g.d3!), toInteger(g.y3!)];
    const short = g.y3!.length === 2;
    add("day-month-year", short ? fullYear(year) : year, month, day);
    if (short && g.d3!.length === 2) add("year-month-day", fullYear(day), month, year);
  } else if (g.m4 !== undefined || g.m5 !== undefined) {
    const month = monthOfWord(g.m4 ?? g.m5!);
    if (month === null) return [];
    const order = g.m4 !== undefined ? "month-day-year" : "year-month-day";
    add(order, toInteger(g.y4 ?? g.y5!), month, toInteger(g.d4 ?? g.d5!));
  } else if (g.y6 !== undefined) add("year-month-day", toInteger(g.y6), toInteger(g.m6!), toInteger(g.d6!));
  return readings;
}

// common practice, no source: two digits mean 1969 to 2068
const fullYear = (short: number) => (short < 69 ? 2000 + short : 1900 + short);

function isDate(year: number, month: number, day: number): boolean {
  if (year < 1850 || year > 2150 || month < 1 || month > 12 || day < 1) return false;
  const last = new Date(Date.UTC(year, month, 0)).getUTCDate();
  return day <= last;
}

function secondOfDayOf(g: Readonly<Record<string, string | undefined>>): number | null {
  const hour = toInteger(g.h ?? g.h3 ?? g.h4 ?? g.h5 ?? g.h6 ?? "0");
  const minute = toInteger(g.mi ?? g.mi2 ?? g.mi3 ?? g.mi4 ?? g.mi5 ?? g.mi6 ?? "0");
  const second = toInteger(g.s ?? g.s2 ?? g.s3 ?? g.s4 ?? g.s5 ?? g.s6 ?? "0");
  const half = (g.ap ?? g.ap4)?.toLowerCase();
  if (half && (hour < 1 || hour > 12)) return null;
  const hour24 = half ? (hour % 12) + (half === "p" ? 12 : 0) : hour;
  if (hour24 === 24 && (minute > 0 || second > 0)) return null;
  const fraction = g.f === undefined ? 0 : toInteger(g.f) / 10 ** g.f.length;
  return hour24 * 3600 + minute * 60 + second + fraction;
}

/** Epoch seconds of a local date and time of day, as if it were UTC. */
export function secondsOf(date: Pick<DateReading, "year" | "month" | "day">, secondOfDay: number): number {
  return Date.UTC(date.year, date.month - 1, date.day) / 1000 + secondOfDay;
}
