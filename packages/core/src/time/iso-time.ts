import { fail, type Problem, type Result, succeed } from "../problem.ts";
import { parseNumber } from "../text/number.ts";
import { civilDate, dayNumber } from "./calendar.ts";

/** A moment as an ISO 8601 text states it. */
export interface IsoTime {
  /** Seconds since 1970-01-01T00:00:00Z; where no zone is stated, the clock is taken as if it were UTC. */
  readonly epochSeconds: number;
  /** Minutes east of UTC; null if the text states no zone: then the moment is not known without being told. */
  readonly zoneMinutes: number | null;
  /** The smallest part that is written; missing parts count as their first (January, day 1, 0 o'clock). */
  readonly precision: "year" | "month" | "day" | "hour" | "minute" | "second";
  /** Places behind the decimal sign of the smallest part. */
  readonly decimals: number;
}

const YEAR = String.raw`(?<year>\d{4}|[+-]\d{6})`;
const DATES = [
  new RegExp(String.raw`^${YEAR}(?:-(?<month>\d{2})(?:-(?<day>\d{2}))?)?$`),
  new RegExp(String.raw`^${YEAR}(?<month>\d{2})(?<day>\d{2})$`),
  new RegExp(String.raw`^${YEAR}-?(?<ordinal>\d{3})$`),
  new RegExp(String.raw`^${YEAR}-?W(?<week>\d{2})-?(?<weekday>\d)$`),
];
const CLOCKS = [
  /^(?<hour>\d{2})(?::(?<minute>\d{2})(?::(?<second>\d{2}))?)?(?:[.,](?<fraction>\d+))?$/,
  /^(?<hour>\d{2})(?<minute>\d{2})(?<second>\d{2})?(?:[.,](?<fraction>\d+))?$/,
];
const ZONE = /(?:(?<utc>Z)|(?<sign>[+\-\u2212])(?<hours>\d{2})(?::?(?<minutes>\d{2}))?)$/i;

/**
 * Reads a date or a date with a clock.
 *
 * Dates: calendar (2024-05-06, 20240506, 2024-05, 2024), ordinal (2024-127), week (2024-W19-1). Between date and
 * clock stands T, t or one blank. The smallest part of a clock may have decimals. 24:00:00 is the end of a day; a
 * leap second (23:59:60 UTC) is read as the second after, with the warning time/leap-second.
 *
 * @returns the moment in the proleptic Gregorian calendar, or one problem: time/not-iso, time/no-such-date,
 *          time/no-such-clock
 * @source  ISO 8601:2004; RFC 3339, section 5.6, for lower case and the blank
 */
export function parseIsoTime(text: string): Result<IsoTime> {
  const refuse = (code: string, message: string) =>
    fail({ code: `time/${code}`, message, where: {}, remedy: "Write it as 2024-05-06T07:08:09Z." });
  const notIso = () => refuse("not-iso", `"${text.slice(0, 60)}" is no date and time of ISO 8601`);
  const split = /^([^Tt ]+)(?:[Tt ]([^Tt ]+))?$/.exec(text);
  if (!split) return notIso();
  const [, dateText = "", clockText] = split;

  const date = firstMatch(DATES, dateText);
  if (!date) return notIso();
  const days = isoDays(date);
  if (Number.isNaN(days)) return refuse("no-such-date", `there is no date ${dateText}`);
  if (clockText === undefined) {
    const precision = date.day || date.ordinal || date.week ? "day" : date.month ? "month" : "year";
    return succeed({ epochSeconds: days * 86400, zoneMinutes: null, precision, decimals: 0 });
  }

  const zone = ZONE.exec(clockText);
  const clock = firstMatch(CLOCKS, clockText.slice(0, zone?.index));
  if (!clock) return notIso();
  const zoneMinutes = zone ? minutesEast(zone.groups!) : null;
  const part = (digits: string | undefined) => parseNumber(digits ?? "0");
  const [hour, minute, second] = [part(clock.hour), part(clock.minute), part(clock.second)];
  const precision = clock.second ? "second" : clock.minute ? "minute" : "hour";
  const unit = { hour: 3600, minute: 60, second: 1 }[precision];
  const fraction = clock.fraction ? parseNumber(`0.${clock.fraction}`) : 0;
  const endOfDay = hour === 24 && minute === 0 && second === 0 && fraction === 0;
  const badZone = zoneMinutes !== null && (Number.isNaN(zoneMinutes) || Math.abs(zoneMinutes) > 24 * 60 - 1);
  if ((hour > 23 && !endOfDay) || minute > 59 || second > 60 || badZone)
    return refuse("no-such-clock", `there is no time ${clockText}`);
  const whole = days * 86400 + hour * 3600 + (minute - (zoneMinutes ?? 0)) * 60 + second;
  const warnings: Problem[] = [];
  if (second === 60) {
    if (whole % 86400 !== 0)
      return refuse("no-such-clock", `${clockText} is no leap second: not 23:59:60 UTC`);
    warnings.push({
      code: "time/leap-second",
      message: `the leap second ${text} is read as the second after it`,
      where: {},
    });
  }
  const decimals = clock.fraction?.length ?? 0;
  return succeed({ epochSeconds: whole + fraction * unit, zoneMinutes, precision, decimals }, warnings);
}

type Groups = Readonly<Record<string, string | undefined>>;

function firstMatch(patterns: readonly RegExp[], text: string): Groups | null {
  for (const pattern of patterns) {
    const found = pattern.exec(text);
    if (found) return found.groups!;
  }
  return null;
}

function isoDays({ year: yearText, month, day, ordinal, week, weekday }: Groups): number {
  const year = parseNumber(yearText!);
  const newYear = dayNumber({ year, month: 1, day: 1 }, "proleptic_gregorian");
  const nextNewYear = dayNumber({ year: year + 1, month: 1, day: 1 }, "proleptic_gregorian");
  if (ordinal) {
    const days = newYear + parseNumber(ordinal) - 1;
    return days >= newYear && days < nextNewYear ? days : NaN;
  }
  if (week && weekday) {
    const [w, d] = [parseNumber(week), parseNumber(weekday)];
    const firstMonday = firstWeek(newYear);
    const days = firstMonday + (w - 1) * 7 + d - 1;
    return w >= 1 && d >= 1 && d <= 7 && days < firstWeek(nextNewYear) ? days : NaN;
  }
  return dayNumber(
    { year, month: parseNumber(month ?? "1"), day: parseNumber(day ?? "1") },
    "proleptic_gregorian",
  );
}

/** Monday of the week that holds 4 January. Day 0 was a Thursday. */
function firstWeek(newYear: number): number {
  const fourth = newYear + 3;
  return fourth - ((((fourth + 3) % 7) + 7) % 7);
}

function minutesEast({ utc, sign, hours, minutes = "0" }: Groups): number {
  if (utc) return 0;
  const [h, m] = [parseNumber(hours!), parseNumber(minutes)];
  if (m > 59) return NaN;
  return sign === "+" ? h * 60 + m : -(h * 60 + m);
}

/**
 * A moment in UTC as ISO 8601 text, such as 2024-05-06T07:08:09Z.
 *
 * @param epochSeconds seconds since 1970-01-01T00:00:00Z, finite, years -999999 to 999999
 * @param decimals     places of the seconds, 0 to 9; without it as many as the moment has, at most 6, so that whole
 *                     seconds have none. Rounded half up, which may change the date.
 * @returns            years outside 0 to 9999 have a sign and six digits (ISO 8601, expanded representation)
 * @throws             RangeError if the moment is not known (NaN) or out of range
 */
export function formatIsoTime(epochSeconds: number, decimals?: number): string {
  const places = decimals ?? 6;
  if (!Number.isFinite(epochSeconds)) throw new RangeError(`no moment: ${epochSeconds}`);
  if (!Number.isInteger(places) || places < 0 || places > 9)
    throw new RangeError(`decimals must be 0 to 9, not ${places}`);
  // seconds and fraction apart, since their sum in units of the last place may not be exact
  let seconds = Math.floor(epochSeconds);
  let fraction = Math.round((epochSeconds - seconds) * 10 ** places);
  if (fraction === 10 ** places) [seconds, fraction] = [seconds + 1, 0];
  const days = Math.floor(seconds / 86400);
  const { year, month, day } = civilDate(days, "proleptic_gregorian");
  if (Math.abs(year) > 999999) throw new RangeError(`year ${year} is out of range`);
  const digits = (value: number, length: number) => String(value).padStart(length, "0");
  const yearText =
    year >= 0 && year <= 9999 ? digits(year, 4) : `${year < 0 ? "-" : "+"}${digits(Math.abs(year), 6)}`;
  const ofDay = seconds - days * 86400;
  const clock = [Math.floor(ofDay / 3600), Math.floor(ofDay / 60) % 60, ofDay % 60];
  const printed = places > 0 ? `.${digits(fraction, places)}` : "";
  const tail = decimals === undefined ? printed.replace(/\.?0+$/, "") : printed;
  return `${yearText}-${digits(month, 2)}-${digits(day, 2)}T${clock.map((each) => digits(each, 2)).join(":")}${tail}Z`;
}
