import { dayNumber } from "@wherry/core";

const MONTH_LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Whether a calendar of CF has this date; true for calendars that are not known here. */
export function hasDate(calendar: string, year: number, month: number, day: number): boolean {
  const length = MONTH_LENGTHS[month - 1];
  if (length === undefined || day < 1) return false;
  switch (calendar) {
    case "standard":
    case "gregorian":
      return !Number.isNaN(dayNumber({ year, month, day }, "standard"));
    case "proleptic_gregorian":
    case "utc":
    case "tai":
      return !Number.isNaN(dayNumber({ year, month, day }, "proleptic_gregorian"));
    case "julian":
      return !Number.isNaN(dayNumber({ year, month, day }, "julian"));
    case "noleap":
    case "365_day":
      return day <= length;
    case "all_leap":
    case "366_day":
      return day <= (month === 2 ? 29 : length);
    case "360_day":
      return day <= 30;
    default:
      return true;
  }
}
