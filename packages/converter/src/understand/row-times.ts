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
}

/** Reads a column of cells (each with its date, its time of day, or both) once, remembering repeated dates. */
export function readMoments(cells: readonly string[]): readonly (Moment | null)[] {
  const seen = new Map<string, Moment | null>();
  return cells.map((cell) => {
    if (cell === "") return null;
    const quick = quickMoment(cell);
    if (quick) return quick;
    let moment = seen.get(cell);
    if (moment === undefined) {
      moment = momentOfCell(cell);
      seen.set(cell, moment);
    }
    return moment;
  });
}

const ISO = /^(\d{4})-(\d\d)-(\d\d)[T ](\d\d):(\d\d):(\d\d)(?:\.(\d{1,9}))?(Z)?$/;
const CLOCK = /^(\d\d):(\d\d):(\d\d)(?:\.(\d{1,9}))?$/;
const NO_MOMENT = { numeric: false, dotted: false, zone: null, start: 0 } as const;
const UTC = { minutes: [0], words: "Z" } as const;

/** The two commonest forms without a search: long files are full of them. */
function quickMoment(cell: string): Moment | null {
  const clock = CLOCK.exec(cell);
  const two = (text: string | undefined) =>
    text === undefined ? 0 : (text.charCodeAt(0) - 48) * 10 + text.charCodeAt(1) - 48;
  const digits = (text: string) => [...text].reduce((sum, digit) => sum * 10 + digit.charCodeAt(0) - 48, 0);
  const fraction = (text: string | undefined) => (text === undefined ? 0 : digits(text) / 10 ** text.length);
  if (clock) {
    const [h, m, s] = [two(clock[1]), two(clock[2]), two(clock[3])];
    if (h > 23 || m > 59 || s > 60) return null;
    return {
      ...NO_MOMENT,
      dates: [],
      secondOfDay: h * 3600 + m * 60 + s + fraction(clock[4]),
      words: cell,
      end: cell.length,
    };
  }
  const iso = ISO.exec(cell);
  if (!iso) return null;
  const [year, month, day] = [digits(iso[1]!), two(iso[2]), two(iso[3])];
  const [h, m, s] = [two(iso[4]), two(iso[5]), two(iso[6])];
  if (
    h > 23 ||
    m > 59 ||
    s > 60 ||
    month < 1 ||
    month > 12 ||
    day < 1 ||
    day > 28 ||
    year < 1850 ||
    year > 2150
  )
    return null;
  return {
    ...NO_MOMENT,
    dates: [{ order: "year-month-day", year, month, day }],
    secondOfDay: h * 3600 + m * 60 + s + fraction(iso[7]),
    zone: iso[8] ? UTC : null,
    words: cell,
    end: cell.length,
  };
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
  for (let row = 0; row < moments.length; row++) {
    const moment = moments[row];
    if (!moment || moment.secondOfDay === null) {
      unread.push(row);
      continue;
    }
    const written = dates ? (dates[row]?.dates ?? []) : moment.dates;
    if (written.length === 0 && !dates) {
      dated = false;
      if (previous - moment.secondOfDay > 43_200) days++;
      previous = moment.secondOfDay;
      local[row] = days * 86_400 + moment.secondOfDay;
    } else {
      const day = oneDay(written, allowed);
      if (!day) {
        unread.push(row);
        continue;
      }
      local[row] = secondsOf(day, moment.secondOfDay);
    }
    const zone = moment.zone ?? dates?.[row]?.zone ?? null;
    if (zone && zone.minutes.length > 1) ambiguousZone = zone.minutes;
    else if (zone) offsets[row] = zone.minutes[0]!;
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
