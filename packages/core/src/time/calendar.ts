/** Calendars in which dates are computed here. "standard" is Julian before 1582-10-15 and Gregorian from then on. */
export type Calendar = "standard" | "proleptic_gregorian" | "julian";

/** A date. Years count astronomically: year 0 is 1 BC, year -1 is 2 BC. Month from 1, day from 1. */
export interface CivilDate {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** Julian day number (at noon) of 1970-01-01 in the Gregorian calendar. */
const EPOCH_JULIAN_DAY = 2440588;
/** 1582-10-15, the first day of the Gregorian calendar, in days since 1970-01-01. */
const REFORM = -141427;

const MONTH_LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Days of a month, 1 to 12. In the standard calendar October 1582 counts as the Gregorian month that it became. */
export function daysInMonth(year: number, month: number, calendar: Calendar): number {
  const julian = calendar === "julian" || (calendar === "standard" && year < 1582);
  const leap = year % 4 === 0 && (julian || year % 100 !== 0 || year % 400 === 0);
  return month === 2 && leap ? 29 : MONTH_LENGTHS[month - 1]!;
}

/** Days since 1970-01-01 of a day, by the count of days from March; months and days may run over. */
function countDays({ year, month, day }: CivilDate, gregorian: boolean): number {
  const beforeMarch = month < 3 ? 1 : 0;
  const y = year + 4800 - beforeMarch;
  const m = month + 12 * beforeMarch - 3;
  const days = day + Math.floor((153 * m + 2) / 5) + 365 * y + Math.floor(y / 4);
  const julianDay = gregorian ? days - Math.floor(y / 100) + Math.floor(y / 400) - 32045 : days - 32083;
  return julianDay - EPOCH_JULIAN_DAY;
}

/**
 * Days from 1970-01-01 (Gregorian) to a date.
 *
 * @returns a whole number; NaN where the calendar has no such date: 30 February, 1582-10-05 to 14 in the standard
 *          calendar, parts that are not whole numbers
 * @source  arithmetic of the Julian day number; check values JD 2440587.5 = 1970-01-01T00:00Z and
 *          JDN 0 = 1 January 4713 BC (Julian)
 */
export function dayNumber(date: CivilDate, calendar: Calendar): number {
  const { year, month, day } = date;
  if (![year, month, day].every(Number.isInteger) || month < 1 || month > 12) return NaN;
  if (day < 1 || day > daysInMonth(year, month, calendar)) return NaN;
  if (calendar !== "standard") return countDays(date, calendar === "proleptic_gregorian");
  const inGregorian = countDays(date, true);
  if (inGregorian >= REFORM) return inGregorian;
  const inJulian = countDays(date, false);
  return inJulian < REFORM ? inJulian : NaN;
}

/**
 * The same as UDUNITS reads it: mixed calendar, days may run over into the next month, the ten days dropped in
 * 1582 are taken as Julian, and year 0 is year 1.
 */
export function lenientDayNumber(date: CivilDate): number {
  const forgiven = { ...date, year: date.year === 0 ? 1 : date.year };
  const inGregorian = countDays(forgiven, true);
  return inGregorian >= REFORM ? inGregorian : countDays(forgiven, false);
}

/** The date that lies a whole number of days after 1970-01-01 (Gregorian). */
export function civilDate(days: number, calendar: Calendar): CivilDate {
  if (!Number.isSafeInteger(days)) throw new RangeError(`days must be a whole number, not ${days}`);
  const gregorian = calendar === "proleptic_gregorian" || (calendar === "standard" && days >= REFORM);
  const julianDay = days + EPOCH_JULIAN_DAY;
  const a = gregorian ? julianDay + 32044 : julianDay + 32082;
  const century = gregorian ? Math.floor((4 * a + 3) / 146097) : 0;
  const c = a - Math.floor((146097 * century) / 4);
  const d = Math.floor((4 * c + 3) / 1461);
  const e = c - Math.floor((1461 * d) / 4);
  const m = Math.floor((5 * e + 2) / 153);
  return {
    year: 100 * century + d - 4800 + Math.floor(m / 10),
    month: m + 3 - 12 * Math.floor(m / 10),
    day: e - Math.floor((153 * m + 2) / 5) + 1,
  };
}
