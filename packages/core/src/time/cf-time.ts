import { fail, type Problem, type Result, succeed } from "../problem.ts";
import { factorValue } from "../units/factor.ts";
import { parseUnits } from "../units/parse.ts";
import type { Timestamp } from "../units/timestamp.ts";
import type { Unit } from "../units/unit.ts";
import { type Calendar, civilDate, dayNumber, daysInMonth, lenientDayNumber } from "./calendar.ts";

/** A calendar of CF, and whether dates in it are computed here. */
export interface CfCalendar {
  /** The name in lower case, as CF lists it; "gregorian" stays as written. */
  readonly name: string;
  /** Calendar of the computation; null if it is known by name only. */
  readonly computed: Calendar | null;
  /** First CF edition that lists the name. */
  readonly since: "1.6" | "1.12";
}

/** Calendars listed in CF 1.13, section 4.4.3. */
const CALENDARS: ReadonlyMap<string, CfCalendar> = new Map(
  (
    [
      ["standard", "standard", "1.6"],
      ["gregorian", "standard", "1.6"],
      ["proleptic_gregorian", "proleptic_gregorian", "1.6"],
      ["julian", "julian", "1.6"],
      ["noleap", null, "1.6"],
      ["365_day", null, "1.6"],
      ["all_leap", null, "1.6"],
      ["366_day", null, "1.6"],
      ["360_day", null, "1.6"],
      ["utc", null, "1.12"],
      ["tai", null, "1.12"],
      ["none", null, "1.6"],
    ] as const
  ).map(([name, computed, since]) => [name, { name, computed, since }]),
);

/** A calendar by its name in any case; null if CF does not list it (it may be one defined in the file). */
export const cfCalendar = (name: string): CfCalendar | null => CALENDARS.get(name.toLowerCase()) ?? null;

/** Time units such as "days since 1970-01-01", taken apart. */
export interface TimeUnits {
  readonly text: string;
  readonly unit: Unit;
  /** The unit's word as written ("days"), its decimal prefix ("" if none), and its first name in the database. */
  readonly word: string;
  readonly prefix: string;
  readonly entry: string;
  /** Seconds in one unit. A year is 365.242198781 days and a month a twelfth of it, as in UDUNITS. */
  readonly secondsPerUnit: number;
  /** "since", or another word that UDUNITS takes for it, as written. */
  readonly shiftWord: string;
  /** The reference moment as written, with its clock and zone. */
  readonly reference: Timestamp;
  /** Seconds from 1970-01-01T00:00Z (Gregorian) to the reference moment, in the calendar. */
  readonly epochSeconds: number;
  readonly calendar: Calendar;
  /** The reference has the form `y-m-d[ H:M:S[ zone]]` of CF 1.13, section 4.4.2: zone Z, or hours with a sign. */
  readonly strictForm: boolean;
}

// Requirement CF-4.4.2: parts of a clock may be one digit, seconds may have decimals
const STRICT =
  /^-?\d{1,7}-\d{1,2}-\d{1,2}(?: \d{1,2}:\d{1,2}:\d{1,2}(?:\.\d*)?(?: (?:Z|[+-]\d{1,2}(?::\d{2})?))?)?$/;

/** First names in the unit database of everything that is a year or a month. */
const YEARS_AND_MONTHS = new Set([
  ...["tropical_year", "sidereal_year", "common_year", "leap_year", "Julian_year", "Gregorian_year", "eon"],
  ...["month", "lunar_month", "sidereal_month", "tropical_month"],
]);

/** Whether the unit of a time is a year or month of any kind, which CF advises against (4.4.2). */
export const countsYearsOrMonths = (units: TimeUnits): boolean => YEARS_AND_MONTHS.has(units.entry);

/**
 * Takes CF time units apart.
 *
 * @param text     value of `units`
 * @param calendar value of `calendar`; "standard" if the attribute is absent
 * @returns        problems: units/… if UDUNITS does not read it; time/no-reference if nothing is counted from;
 *                 time/unknown-calendar; time/calendar-not-computed for the calendars that are known by name only
 *                 (noleap, 365_day, all_leap, 366_day, 360_day, utc, tai, none). Warnings: time/no-such-date if the
 *                 calendar has no such day (the days are then counted on, as UDUNITS does), time/year-zero for year
 *                 0 in a mixed or Julian calendar (taken as year 1, as UDUNITS does), time/negative-year.
 * @source         CF 1.13, sections 4.4.2 and 4.4.3; UDUNITS-2
 */
export function parseTimeUnits(text: string, calendar = "standard"): Result<TimeUnits> {
  const parsed = parseUnits(text);
  if (!parsed.ok) return parsed;
  const unit = parsed.value;
  const [part, ...others] = unit.parts;
  if (!unit.since || part?.kind !== "name" || others.length > 0)
    return fail({
      code: "time/no-reference",
      message: `"${text}" does not count one unit of time since a moment`,
      where: {},
      remedy: "Write it as seconds since 1970-01-01 00:00:00.",
    });
  const known = cfCalendar(calendar);
  if (!known?.computed)
    return fail({
      code: known ? "time/calendar-not-computed" : "time/unknown-calendar",
      message: known
        ? `times in the calendar ${known.name} are not computed here`
        : `"${calendar}" is no calendar that CF lists`,
      where: {},
      remedy: "Observed data take the calendar standard.",
    });
  const { moment, word } = unit.since;
  const warnings: Problem[] = [];
  const epochSeconds = referenceSeconds(moment, known.computed, (code, message) =>
    warnings.push({ code: `time/${code}`, message, where: {} }),
  );
  return succeed(
    {
      text,
      unit,
      word: part.text,
      prefix: part.prefix,
      entry: part.entry,
      secondsPerUnit: factorValue(unit.factor),
      shiftWord: word,
      reference: moment,
      epochSeconds,
      calendar: known.computed,
      strictForm: STRICT.test(moment.text),
    },
    warnings,
  );
}

function referenceSeconds(
  moment: Timestamp,
  calendar: Calendar,
  warn: (code: string, message: string) => void,
): number {
  const { year, month, day, hour, minute, second, zoneMinutes } = moment;
  const clock = hour * 3600 + (minute - zoneMinutes) * 60 + second;
  const mixed = calendar !== "proleptic_gregorian";
  if (mixed && year === 0) warn("year-zero", "the calendar has no year 0; it is taken as year 1");
  if (mixed && year < 0) warn("negative-year", `year ${year} is not valid in the calendar ${calendar}`);
  const counted = mixed && year === 0 ? 1 : year;
  const days = dayNumber({ year: counted, month, day }, calendar);
  if (!Number.isNaN(days)) return days * 86400 + clock;
  warn("no-such-date", `there is no day ${year}-${month}-${day} in the calendar ${calendar}`);
  if (calendar === "standard") return lenientDayNumber({ year: counted, month, day }) * 86400 + clock;
  const length = daysInMonth(counted, month, calendar);
  const last = dayNumber({ year: counted, month, day: length }, calendar);
  return (last + day - length) * 86400 + clock;
}

/** Epoch seconds (UTC) of a value in time units; NaN if the value is NaN. */
export const timeToEpoch = (value: number, units: TimeUnits): number =>
  value * units.secondsPerUnit + units.epochSeconds;

/** The value in time units of a moment given in epoch seconds. */
export const epochToTime = (epochSeconds: number, units: TimeUnits): number =>
  (epochSeconds - units.epochSeconds) / units.secondsPerUnit;

/**
 * Whether a moment has a valid date in a calendar: standard and julian have no year 0 (deprecated) and no negative
 * years (not valid).
 *
 * @source CF 1.13, section 4.4.3
 */
export function dateValidity(
  epochSeconds: number,
  calendar: Calendar,
): "valid" | "year-zero" | "negative-year" {
  if (calendar === "proleptic_gregorian") return "valid";
  const { year } = civilDate(Math.floor(epochSeconds / 86400), calendar);
  return year > 0 ? "valid" : year === 0 ? "year-zero" : "negative-year";
}
