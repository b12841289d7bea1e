import { parseNumber } from "../text/number.ts";
import { lenientDayNumber } from "../time/calendar.ts";

/** A moment as written in a unit of time, and what it means in UDUNITS. */
export interface Timestamp {
  readonly text: string;
  /** As written: year 0 and 30 February are kept. */
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
  readonly second: number;
  /** Sign between date and clock; null without a clock. */
  readonly separator: "T" | " " | null;
  /** Zone as written ("Z", "UTC", "-6:00"), null if none; minutes east of UTC. */
  readonly zone: string | null;
  readonly zoneMinutes: number;
  /** Seconds since 1970-01-01T00:00Z in the mixed Julian and Gregorian calendar, days running over. */
  readonly epochSeconds: number;
}

export type TimestampReading =
  | { readonly ok: true; readonly timestamp: Timestamp; readonly end: number }
  | { readonly ok: false; readonly message: string };

const BLANK = "[ \\t\\r\\f\\v]";
const DATE = /([+-]?\d+)-(\d{1,2})(?:-(\d{1,2}))?(?!\d)/y;
const PACKED_DATE = /([+-]?)(\d{1,8})(?![\d.eE])/y;
const CLOCK = new RegExp(`(T|${BLANK}+)(\\d{1,2}):(\\d{1,2})(?::(\\d{1,2}(?:\\.\\d*)?))?`, "y");
const PACKED_CLOCK = new RegExp(`(T|${BLANK}+)(\\d{1,6})(\\.\\d*)?`, "y");
const ZULU = new RegExp(`${BLANK}*(Z)(?![A-Za-z])`, "iy");
const NAMED_ZONE = new RegExp(`${BLANK}*(Z|UTC|GMT)(?![A-Za-z])`, "iy");
// without a sign only after a blank: older writers do so, and UDUNITS reads it
const ZONE = new RegExp(`(?:${BLANK}*([+-])|${BLANK}+)(\\d{1,2}):(\\d{2})`, "y");
const PACKED_ZONE = new RegExp(`(?:${BLANK}*([+-])|${BLANK}+)(\\d{1,4})`, "y");

const MONTH_LENGTHS = [31, 30, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * A moment at place `start` of a unit's text: date, then perhaps a clock, then perhaps a zone. Null if no date stands
 * there (it may be a number).
 *
 * @source UDUNITS-2 grammar, timestamps
 */
export function readTimestamp(text: string, start: number): TimestampReading | null {
  let at = start;
  const take = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (found) at += found[0].length;
    return found;
  };
  const date = readDate(take);
  if (!date) return null;
  const refuse = (message: string): TimestampReading => ({ ok: false, message });
  const { year, month, day } = date;
  if (Math.abs(year) > 5_000_000) return refuse(`year ${year} is out of range`);
  if (month < 1 || month > 12) return refuse(`there is no month ${month}`);
  if (day < 1 || day > MONTH_LENGTHS[month - 1]!) return refuse(`there is no day ${day} in month ${month}`);

  const clock = readClock(take);
  if (clock === "decimals") return refuse("a clock of less than five digits has no decimals");
  const { separator, hour, minute, second } = clock ?? { separator: null, hour: 0, minute: 0, second: 0 };
  const leapSecond = hour === 23 && minute === 59 && second < 61;
  if (hour > 23 || minute > 59 || !(second < 60 || leapSecond))
    return refuse(`there is no time ${hour}:${minute}:${second}`);

  const zone = readZone(take, clock !== null);
  if (Math.abs(zone.minutes) > 14 * 60 || zone.minute > 59)
    return refuse(`zone ${zone.text} is out of range`);
  const days = lenientDayNumber(date);
  return {
    ok: true,
    end: at,
    timestamp: {
      text: text.slice(start, at),
      ...{ year, month, day, hour, minute, second, separator },
      zone: zone.text,
      zoneMinutes: zone.minutes,
      epochSeconds: days * 86400 + hour * 3600 + (minute - zone.minutes) * 60 + second,
    },
  };
}

type Take = (pattern: RegExp) => RegExpExecArray | null;

function readDate(take: Take) {
  const broken = take(DATE);
  if (broken) {
    const [, year = "", month = "", day = "1"] = broken;
    return { year: parseNumber(year), month: parseNumber(month), day: parseNumber(day) };
  }
  const packed = take(PACKED_DATE);
  if (!packed) return null;
  const [, sign = "", digits = ""] = packed;
  const part = (from: number, to: number) => parseNumber(digits.slice(from, to) || "1");
  return {
    year: parseNumber(sign + digits.slice(0, 4)),
    month: part(4, digits.length === 5 ? 5 : 6),
    day: part(6, 8),
  };
}

function readClock(take: Take) {
  const separate = (sign: string | undefined) => (sign === "T" ? ("T" as const) : (" " as const));
  const broken = take(CLOCK);
  if (broken) {
    const [, sign, hour = "", minute = "", second = "0"] = broken;
    return {
      separator: separate(sign),
      hour: parseNumber(hour),
      minute: parseNumber(minute),
      second: parseNumber(second),
    };
  }
  const packed = take(PACKED_CLOCK);
  if (!packed) return null;
  const [, sign, digits = "", decimals = ""] = packed;
  if (decimals !== "" && digits.length < 5) return "decimals";
  const padded = digits.length % 2 === 1 ? `0${digits}` : digits;
  const part = (from: number) => parseNumber(padded.slice(from, from + 2) || "0");
  const second = parseNumber(`${padded.slice(4, 6) || "0"}${decimals}`);
  return { separator: separate(sign), hour: part(0), minute: part(2), second };
}

function readZone(take: Take, afterClock: boolean): { text: string | null; minutes: number; minute: number } {
  const named = take(afterClock ? NAMED_ZONE : ZULU);
  if (named) return { text: named[1]!, minutes: 0, minute: 0 };
  const found = afterClock ? (take(ZONE) ?? take(PACKED_ZONE)) : null;
  if (!found) return { text: null, minutes: 0, minute: 0 };
  const [whole, sign = "", first = "", second] = found;
  const [hours, minutes] =
    second !== undefined || first.length <= 2
      ? [first, second ?? "0"]
      : [first.slice(0, -2), first.slice(-2)];
  const total = parseNumber(hours) * 60 + parseNumber(minutes);
  return { text: whole.trim(), minutes: sign === "-" ? -total : total, minute: parseNumber(minutes) };
}
