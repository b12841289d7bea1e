import { type DateReading, findMoments, type Moment, secondsOf } from "./clock.ts";
import type { FileFacts } from "./file-facts.ts";
import type { HeaderLine } from "./header-lines.ts";
import type { RawCast, RawColumn } from "./raw-cast.ts";
import type { RowTimes } from "./row-times.ts";
import { headerMoments, oneDay } from "./time-facts.ts";
import { readUnit } from "./vocabulary/unit-spellings.ts";
import { plainWords } from "./words.ts";
import { toInteger } from "./zone.ts";

const SECONDS: Readonly<Record<string, number>> = { s: 1, ms: 0.001, min: 60, h: 3600, day: 86_400 };

/** "days since 1899-12-30", "seconds since 2023-06-02T08:20:00Z". */
export interface Since {
  /** Seconds that a unit of the numbers lasts. */
  readonly scale: number;
  readonly moment: Moment;
}

/** The unit and moment that numbers are counted from, by the words of a head or a header line. */
export function sinceIn(text: string): Since | null {
  for (const moment of findMoments(text)) {
    if (moment.dates.length === 0) continue;
    const unit =
      /([A-Za-zÀ-ÿ]+)\s+(?:since|after|from|seit|ab|depuis|desde|dal|da|sinds|siden|sedan|síðan)\s*$/i.exec(
        text.slice(0, moment.start),
      )?.[1];
    const spelling = unit
      ? readUnit(unit.replace(/^(?:tage|jours|d[ií]as|giorni|dagen|dage|dager|dagar)$/i, "days"))
      : null;
    const scale = spelling?.kind === "time" ? SECONDS[spelling.units] : undefined;
    if (scale !== undefined) return { scale, moment };
  }
  return null;
}

/** Rows counted from a stated moment. */
export function timesSince(column: RawColumn, { scale, moment }: Since, facts: FileFacts): RowTimes | null {
  const day = oneDay(moment.dates, facts.orders);
  if (!day || !column.numbers) return null;
  const from = secondsOf(day, moment.secondOfDay ?? 0);
  const whole = wholeSeconds(scale, column.numbers.decimals);
  const local = column.numbers.values.map((value) => from + whole(value * scale));
  return timesOf(local, moment.zone?.minutes.length === 1 ? moment.zone.minutes[0]! : NaN);
}

/**
 * Counts of days are printed to a part of a second: a whole second within half a unit of the last place is what was
 * meant.
 *
 * @param scale    seconds that a unit of the numbers lasts
 * @param decimals places printed
 */
function wholeSeconds(scale: number, decimals: number): (seconds: number) => number {
  const half = (0.5 * scale) / 10 ** decimals;
  return (seconds) => {
    const whole = Math.round(seconds);
    return Math.abs(seconds - whole) <= half ? whole : Math.round(seconds * 1000) / 1000;
  };
}

export const timesOf = (local: Float64Array, offset = NaN, dated = true): RowTimes => ({
  local,
  dated,
  offset,
  unread: [],
  ambiguousZone: null,
});

/** Days that spreadsheets count: from the end of 1899, or from 1904 on some. */
const EPOCHS = ["days since 1899-12-30", "days since 1904-01-01"] as const;
export const SERIAL_DAYS = { least: 20_000, most: 73_050 } as const;

/** Rows of serial day numbers; the day they count from is asked unless head or header say it. */
export function serialTimes(cast: RawCast, id: string, column: RawColumn, facts: FileFacts): RowTimes | null {
  const said = sinceIn(column.head.header) ?? sinceOfLines([...cast.own, ...cast.shared]);
  if (said) return timesSince(column, said, facts);
  const first = column.numbers?.first ?? NaN;
  const settled = facts.inquiry.settle({
    topic: "units",
    column: column.head.header,
    holds: [id],
    text: `"${column.head.header}" holds serial day numbers (${first}). From which day are they counted? Spreadsheets count from 1899-12-30, some from 1904-01-01.`,
    ...(cast.headLine === null ? {} : { line: cast.headLine }),
    candidates: EPOCHS,
    read: sinceIn,
    form: 'a unit and a day, such as "days since 1899-12-30"',
  });
  return settled && timesSince(column, settled.value, facts);
}

/** "dates count days since 1904-01-01" in a header line. */
export function sinceOfLines(lines: readonly HeaderLine[]): Since | null {
  for (const line of lines) {
    const since = line.topics.has("elsewhere") ? null : sinceIn(line.text);
    if (since) return since;
  }
  return null;
}

/**
 * Rows by the day of the year, with a fraction or beside a column of times of day. The year comes from a column, the
 * header or a header's date. Whole days count from 1; a fraction is asked about unless a date in the header tells.
 */
export function dayOfYearTimes(
  cast: RawCast,
  id: string,
  column: RawColumn,
  clock: RawColumn | null,
  facts: FileFacts,
): RowTimes | null {
  if (!column.numbers) return null;
  const { values: days, decimals } = column.numbers;
  const whole = wholeSeconds(86_400, decimals);
  const seconds = days.map((day, row) => {
    const inDay = clock?.moments ? (clock.moments[row]?.secondOfDay ?? NaN) : whole((day % 1) * 86_400);
    return Math.floor(day) * 86_400 + inDay;
  });
  const first = Math.floor(days.find((day) => !Number.isNaN(day)) ?? NaN);
  const dates = datesOfHeader(cast, facts);
  const year = yearOf(cast, dates);
  if (year === null) {
    // without a year the rows still tell how long the cast took
    return timesOf(
      seconds.map((value) => value - first * 86_400),
      NaN,
      false,
    );
  }
  const newYear = secondsOf({ year, month: 1, day: 1 }, 0);
  const told = dates.map((date) => first - 1 - (secondsOf(date, 0) - newYear) / 86_400);
  const fractional = days.some((day) => day % 1 !== 0);
  let base = 1;
  if (told.includes(0)) base = 1;
  else if (told.includes(-1)) base = 0;
  else if (fractional) {
    const settled = facts.inquiry.settle({
      topic: "units",
      column: column.head.header,
      holds: [id],
      text: `Is noon of 1 January 1.5 or 0.5 under "${column.head.header}"? Both ways of counting days of the year are in use.`,
      ...(cast.headLine === null ? {} : { line: cast.headLine }),
      candidates: ["1.5", "0.5"],
      read: (value) => (value === "1.5" ? 1 : value === "0.5" ? 0 : null),
      form: "1.5 or 0.5",
    });
    if (!settled)
      return timesOf(
        seconds.map((value) => value - first * 86_400),
        NaN,
        false,
      );
    base = settled.value;
  }
  return timesOf(seconds.map((value) => newYear + value - base * 86_400));
}

function datesOfHeader(cast: RawCast, facts: FileFacts): readonly DateReading[] {
  return headerMoments([...cast.own, ...cast.shared])
    .map(({ moment }) => oneDay(moment.dates, facts.orders))
    .filter((date) => date !== null);
}

const YEAR_WORDS = new Set("year yyyy annee jahr ano anno jaar ar aar vuosi".split(" "));

function yearOf(cast: RawCast, dates: readonly DateReading[]): number | null {
  const column = cast.columns.find(({ head }) => YEAR_WORDS.has(plainWords(head.name)));
  const inRows = column?.numbers?.first;
  if (inRows !== undefined && inRows > 1850 && inRows < 2150) return inRows;
  for (const { key, value } of [...cast.own, ...cast.shared])
    if (key !== null && YEAR_WORDS.has(plainWords(key)) && /^\d{4}$/.test(value)) return toInteger(value);
  const years = new Set(dates.map(({ year }) => year));
  return years.size === 1 ? [...years][0]! : null;
}

const PARTS: Readonly<Record<string, readonly string[]>> = {
  year: [...YEAR_WORDS],
  month: "month mon mois monat mes mese maand maned manad kuukausi manudur".split(" "),
  day: "day dd jour tag dia giorno dag paiva dagur".split(" "),
  hour: "hour hh hr hrs stunde heure hora ora uur time timme tunti klukkustund".split(" "),
  minute: "minute min minuut minuto minut minuutti minuta".split(" "),
  second: "second sec s ss seconde sekunde segundo secondo sekund sekunti sekunda".split(" "),
};

/** Columns that hold year, month, day and so on, each a number of its own. */
export function dateParts(cast: RawCast): ReadonlyMap<string, RawColumn> | null {
  const parts = new Map<string, RawColumn>();
  for (const column of cast.columns) {
    const words = plainWords(column.head.name || column.head.header).replace(/ (?:utc|gmt)$/, "");
    const part = Object.keys(PARTS).find((name) => PARTS[name]!.includes(words));
    if (part && column.numbers && !parts.has(part)) parts.set(part, column);
  }
  return parts.has("year") && parts.has("month") && parts.has("day") ? parts : null;
}

/** Rows whose dates stand in columns of their own, with the time of day beside them or in a column of clock times. */
export function timesOfParts(
  parts: ReadonlyMap<string, RawColumn>,
  clock: RawColumn | null,
  rows: number,
): RowTimes | null {
  if (!parts.has("hour") && !clock?.moments) return null;
  const local = new Float64Array(rows);
  for (let row = 0; row < rows; row++) {
    const of = (part: string) => parts.get(part)?.numbers?.values[row] ?? 0;
    const [year, month, day] = [of("year"), of("month"), of("day")];
    const inDay = parts.has("hour")
      ? of("hour") * 3600 + of("minute") * 60 + of("second")
      : (clock?.moments?.[row]?.secondOfDay ?? NaN);
    const whole = year > 1850 && year < 2150 && month >= 1 && month <= 12 && day >= 1 && day <= 31;
    local[row] = whole ? secondsOf({ year, month, day }, inDay) : NaN;
  }
  return timesOf(local);
}
