import type { Moment } from "./clock.ts";
import {
  dateParts,
  dayOfYearTimes,
  SERIAL_DAYS,
  type Since,
  serialTimes,
  sinceIn,
  timesOf,
  timesOfParts,
  timesSince,
} from "./counted-time.ts";
import type { FileFacts } from "./file-facts.ts";
import type { RawCast, RawColumn } from "./raw-cast.ts";
import { type RowTimes, rowTimesOf } from "./row-times.ts";
import { headerMoments } from "./time-facts.ts";
import { roleOfName } from "./vocabulary/quantity-words.ts";

const SECONDS = { s: 1, ms: 0.001, min: 60, h: 3600, day: 86_400 } as const;

/** Rows with times of a clock. */
export interface ClockRows {
  readonly kind: "clock";
  readonly times: RowTimes;
  readonly headers: readonly string[];
  readonly headZone: RawColumn["head"]["zone"];
}
/** Rows with times since the start. */
export interface ElapsedRows {
  readonly kind: "elapsed";
  readonly seconds: Float64Array;
  /** "minutes since …" in the head or header. */
  readonly since: Moment | null;
  /** The name does not say that they begin with the cast, and their first value does not look so. */
  readonly doubtful: boolean;
}

/** Times of rows by the columns that hold them; null if none does. */
export function readRowClock(
  cast: RawCast,
  id: string,
  facts: FileFacts,
  timeColumns: Map<string, "absolute" | "elapsed">,
): ClockRows | ElapsedRows | null {
  const times = cast.columns.filter(({ meaning }) => meaning.kind === "time");
  for (const { head } of times) timeColumns.set(head.header, "absolute");
  const ofForm = (form: string) =>
    times.filter(({ meaning }) => meaning.kind === "time" && meaning.form === form);
  // where a file has two clocks, the one in UTC is the one to read
  const utcFirst = (columns: readonly RawColumn[]) =>
    columns.find(({ head }) => head.zone?.minutes[0] === 0) ?? columns[0];
  const datetime = utcFirst(ofForm("datetime"));
  const clock = utcFirst(ofForm("clock"));
  const date = dateOf(clock, utcFirst(ofForm("date")), ofForm("clock"));
  const inParts = dateParts(cast);
  const ofParts = inParts && timesOfParts(inParts, clock ?? null, cast.rows.length);
  if (inParts && ofParts) {
    const columns = [...inParts.values(), ...(inParts.has("hour") || !clock ? [] : [clock])];
    for (const { head } of columns) timeColumns.set(head.header, "absolute");
    return clockRows(ofParts, columns);
  }
  const counted = cast.columns.find(
    ({ meaning }) => meaning.kind === "since" || meaning.kind === "serial" || meaning.kind === "dayOfYear",
  );
  const elapsed = cast.columns.find(({ meaning }) => meaning.kind === "elapsed");
  const epoch = cast.columns.find(({ meaning }) => meaning.kind === "epoch");
  if (elapsed) timeColumns.set(elapsed.head.header, "elapsed");
  if (epoch) timeColumns.set(epoch.head.header, "absolute");
  if (counted) timeColumns.set(counted.head.header, "absolute");
  if (datetime?.moments) return clockRows(rowTimesOf(datetime.moments, null, facts.orders), [datetime]);
  if (clock?.moments && counted?.meaning.kind !== "dayOfYear") {
    const columns = date ? [date, clock] : [clock];
    return clockRows(rowTimesOf(clock.moments, date?.moments ?? null, facts.orders), columns);
  }
  if (counted) {
    const { meaning } = counted;
    const read =
      meaning.kind === "since"
        ? timesSince(counted, meaning.since, facts)
        : meaning.kind === "serial"
          ? serialTimes(cast, id, counted, facts)
          : dayOfYearTimes(cast, id, counted, clock ?? null, facts);
    return read && clockRows(read, [counted, ...(clock ? [clock] : [])]);
  }
  if (epoch?.numbers && epoch.meaning.kind === "epoch") {
    const scale = SECONDS[epoch.meaning.unit];
    const local = Float64Array.from(epoch.numbers.values, (value) => value * scale);
    return clockRows(timesOf(local, epoch.meaning.utc ? 0 : NaN), [epoch]);
  }
  if (!elapsed) return null;
  return elapsedRows(cast, id, elapsed, facts);
}

/**
 * The column of dates that belongs to a clock; undefined where it may be another clock's and the two stand on
 * different days.
 */
function dateOf(
  clock: RawColumn | undefined,
  date: RawColumn | undefined,
  clocks: readonly RawColumn[],
): RawColumn | undefined {
  if (!clock || !date) return date;
  const own = clock.head.zone?.minutes[0];
  if (date.head.zone) return own === undefined || date.head.zone.minutes[0] === own ? date : undefined;
  if (own !== undefined && LOCAL.test(date.head.header)) return undefined;
  const apart = (other: RawColumn) =>
    clock.moments?.some((moment, row) => {
      const there = other.moments?.[row]?.secondOfDay ?? NaN;
      // no zone is further from UTC than 14 hours
      return Math.abs((moment?.secondOfDay ?? NaN) - there) > 14 * 3600;
    });
  return clocks.some((other) => other !== clock && apart(other)) ? undefined : date;
}

const LOCAL = /(?<![A-Za-z])(?:local\w*|lokal\w*|ortszeit|locale)(?![A-Za-z])/i;

const clockRows = (times: RowTimes, columns: readonly RawColumn[]): ClockRows => ({
  kind: "clock",
  times,
  headers: columns.map(({ head }) => head.header),
  headZone: columns.findLast(({ head }) => head.zone !== null)?.head.zone ?? null,
});

/** Times whose differences hold while the order of day and month is open: within a day every order gives the same. */
export function relativeTimes(cast: RawCast, facts: FileFacts): RowTimes | null {
  const column = cast.columns.find(({ meaning }) => meaning.kind === "time" && meaning.form === "datetime");
  const order = column?.moments?.find((moment) => moment !== null)?.dates[0]?.order;
  if (!column?.moments || !order || facts.orders?.size !== 0) return null;
  const read = rowTimesOf(column.moments, null, new Set([order]));
  const days = new Set(
    read.local.filter((value) => !Number.isNaN(value)).map((value) => Math.floor(value / 86_400)),
  );
  return days.size === 1 ? read : null;
}

function elapsedRows(
  cast: RawCast,
  id: string,
  column: RawColumn,
  facts: FileFacts,
): ClockRows | ElapsedRows | null {
  if (column.meaning.kind !== "elapsed") return null;
  if (!column.numbers) return clockedRows(cast, id, column, facts);
  const since = sinceOf(cast);
  const { first } = column.numbers;
  const serial = first > SERIAL_DAYS.least && first < SERIAL_DAYS.most && column.meaning.unit === null;
  let unit: Since | "s" | "min" | "h" | "ms" | "day" | null = column.meaning.unit;
  if (unit === null) {
    unit =
      facts.inquiry.settle({
        topic: "units",
        column: column.head.header,
        holds: [id],
        text: `"${column.head.header}" holds plain numbers (${first}). Are they seconds, minutes or hours since the start${serial ? ", or days since a day of the calendar" : ""}?`,
        ...(cast.headLine === null ? {} : { line: cast.headLine }),
        candidates: ["s", "min", "h", ...(serial ? ["days since 1899-12-30", "days since 1904-01-01"] : [])],
        read: (value) => (value === "s" || value === "min" || value === "h" ? value : sinceIn(value)),
        form: 's, min or h, or such as "days since 1899-12-30"',
      })?.value ?? null;
    if (unit === null) return null;
    if (typeof unit === "object") {
      const read = timesSince(column, unit, facts);
      return read && clockRows(read, [column]);
    }
  }
  const scale = SECONDS[unit];
  const seconds = column.numbers.values.map((value) => (unit === "ms" ? value / 1000 : value * scale));
  const named = roleOfName(column.head.name)?.role === "elapsed";
  return { kind: "elapsed", seconds, since, doubtful: !named && (seconds.find(isKnown) ?? 0) > 60 };
}

/** Elapsed time written as h:mm:ss, or with one colon, which is asked about. */
function clockedRows(cast: RawCast, id: string, column: RawColumn, facts: FileFacts): ElapsedRows | null {
  const { local } = rowTimesOf(column.moments ?? [], null, null);
  if (column.meaning.kind === "elapsed" && column.meaning.unit === "s")
    return { kind: "elapsed", seconds: local, since: sinceOf(cast), doubtful: false };
  const form = facts.inquiry.settle({
    topic: "units",
    column: column.head.header,
    holds: [id],
    text: `Does "${column.head.header}" count minutes and seconds, or hours and minutes? Its cells have one colon.`,
    ...(cast.headLine === null ? {} : { line: cast.headLine }),
    candidates: ["min:s", "h:min"],
    read: (value) => (value === "min:s" || value === "h:min" ? value : null),
    form: "min:s or h:min",
  })?.value;
  if (!form) return null;
  const scale = form === "min:s" ? 1 / 60 : 1;
  return {
    kind: "elapsed",
    seconds: local.map((value) => value * scale),
    since: sinceOf(cast),
    doubtful: false,
  };
}

const isKnown = (value: number) => !Number.isNaN(value);

/** A moment after "since" in a header line. */
function sinceOf(cast: RawCast): Moment | null {
  for (const { moment, line } of headerMoments([...cast.own, ...cast.shared])) {
    const before = line.text.slice(0, moment.start);
    if (/\b(?:since|seit|depuis|desde|sedan|siden|sinds|da)\s*$/i.test(before) && moment.zone) return moment;
  }
  return null;
}
