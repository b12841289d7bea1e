import { type DateOrder, type Moment, momentOfCell, secondsOf } from "./clock.ts";
import { oneDay } from "./time-facts.ts";

/** Times of rows on the file's own clock, before a zone is known. */
export interface RowTimes {
  /** Seconds on the local clock, counted as if it were UTC; NaN where missing. With times of day only: from midnight of the first row's day. */
  readonly local: Float64Array;
  /** Whether `local` holds dates. */
  readonly dated: boolean;
  /** Offset written in the cells, minutes east, if all have the same; NaN if none has; null if they differ. */
  readonly offset: number | null;
  /** Rows whose time could not be read. */
  readonly unread: readonly number[];
  /** Zones that cells name and that could mean more than one offset. */
  readonly ambiguousZone: readonly number[] | null;
  /** The clock goes from 12 to 1 without saying am or pm: which half of the day it is nothing tells. */
  readonly halfDay?: boolean;
}

/**
 * Reads a column of cells, each with its date, its time of day, or both. Cells that differ only in hh:mm:ss are read
 * once: long files are full of them.
 */
export function readMoments(cells: readonly string[]): readonly (Moment | null)[] {
  const patterns = new Map<string, Moment | null>();
  return cells.map((cell) => {
    const clock = clockIn(cell);
    const key = clock ? `${cell.slice(0, clock.start)}\0${cell.slice(clock.end)}` : cell;
    let pattern = patterns.get(key);
    if (pattern === undefined) {
      pattern = cell === "" ? null : momentOfCell(cell);
      patterns.set(key, pattern);
      return pattern;
    }
    if (!clock || !pattern) return pattern;
    const { dates, numeric, dotted, zone } = pattern;
    return {
      dates,
      numeric,
      dotted,
      zone,
      secondOfDay: clock.second,
      words: cell,
      start: 0,
      end: cell.length,
    };
  });
}

const digit = (text: string, at: number) => {
  const value = text.charCodeAt(at) - 48;
  return value >= 0 && value <= 9 ? value : NaN;
};

/** A clock time hh:mm:ss with its fraction; null where there is none or where am or pm follows. */
function clockIn(
  cell: string,
): { readonly second: number; readonly start: number; readonly end: number } | null {
  const colon = cell.indexOf(":");
  if (colon < 2 || cell[colon + 3] !== ":") return null;
  const hour = digit(cell, colon - 2) * 10 + digit(cell, colon - 1);
  const minute = digit(cell, colon + 1) * 10 + digit(cell, colon + 2);
  let second = digit(cell, colon + 4) * 10 + digit(cell, colon + 5);
  let end = colon + 6;
  if (cell[end] === "." || cell[end] === ",") {
    let digits = 0;
    let scale = 1;
    for (end++; end < cell.length && !Number.isNaN(digit(cell, end)); end++) {
      digits = digits * 10 + digit(cell, end);
      scale *= 10;
    }
    second += digits / scale;
  }
  if (end - colon > 16) return null;
  const whole = hour < 24 && minute < 60 && second < 60 && Number.isNaN(digit(cell, colon - 3));
  if (!whole || !Number.isNaN(digit(cell, end)) || /[ap]/i.test(cell.slice(end))) return null;
  return { second: hour * 3600 + minute * 60 + second, start: colon - 2, end };
}

/**
 * Times of rows from their moments: a column of dates with times, or of dates beside one of times of day, or of
 * times of day alone, which pass midnight where they fall by more than half a day.
 */
export function rowTimesOf(
  moments: readonly (Moment | null)[],
  dates: readonly (Moment | null)[] | null,
  allowed: ReadonlySet<DateOrder> | null,
): RowTimes {
  const local = new Float64Array(moments.length).fill(NaN);
  const offsets = new Float64Array(moments.length).fill(NaN);
  const unread: number[] = [];
  let dated = true;
  let ambiguousZone: readonly number[] | null = null;
  let days = 0;
  let previous = NaN;
  let lastDates: Moment["dates"] | null = null;
  let midnight = NaN;
  let halves = 0;
  let latest = NaN;
  let hours = 0;
  for (let row = 0; row < moments.length; row++) {
    const moment = moments[row];
    if (!moment || moment.secondOfDay === null) {
      unread.push(row);
      continue;
    }
    // from 12:59 to 1:00 within a row or two, and never an hour above 12
    if (latest - moment.secondOfDay > 42_600 && latest - moment.secondOfDay <= 43_200) halves++;
    latest = moment.secondOfDay;
    hours = Math.max(hours, moment.secondOfDay);
    const written = dates ? (dates[row]?.dates ?? []) : moment.dates;
    if (written.length === 0 && !dates) {
      dated = false;
      if (previous - moment.secondOfDay > 43_200) days++;
      previous = moment.secondOfDay;
      local[row] = days * 86_400 + moment.secondOfDay;
    } else {
      if (written !== lastDates) {
        const day = oneDay(written, allowed);
        midnight = day ? secondsOf(day, 0) : NaN;
        lastDates = written;
      }
      if (Number.isNaN(midnight)) {
        unread.push(row);
        continue;
      }
      local[row] = midnight + moment.secondOfDay;
    }
    const zone = moment.zone ?? dates?.[row]?.zone ?? null;
    if (zone && zone.minutes.length > 1) ambiguousZone = zone.minutes;
    else if (zone) offsets[row] = zone.minutes[0]!;
  }
  if (halves === 1 && hours < 13 * 3600) {
    const turned = local.findIndex((value, row) => row > 0 && value < local[row - 1]!);
    const whole = local.map((value, row) => (row >= turned ? value + 43_200 : value));
    return { local: whole, dated, offset: NaN, unread, ambiguousZone, halfDay: true };
  }
  return { local, dated, offset: oneOffset(local, offsets), unread, ambiguousZone };
}

/** The offset all rows share; where the clock was changed within the record, each row's own is taken off. */
function oneOffset(local: Float64Array, offsets: Float64Array): number | null {
  const first = offsets.find((_, row) => !Number.isNaN(local[row]!)) ?? NaN;
  const read = (row: number) => !Number.isNaN(local[row]!);
  if (offsets.every((offset, row) => !read(row) || Object.is(offset, first))) return first;
  if (offsets.some((offset, row) => read(row) && Number.isNaN(offset))) return null;
  for (let row = 0; row < local.length; row++) local[row] = local[row]! - offsets[row]! * 60;
  return 0;
}
