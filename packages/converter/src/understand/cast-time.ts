import type { Evidence } from "@wherry/core";
import { type Moment, secondsOf } from "./clock.ts";
import { evidence, type FileFacts, type KnownZone, settleZone } from "./file-facts.ts";
import type { RawCast, RawColumn } from "./raw-cast.ts";
import { type RowTimes, rowTimesOf } from "./row-times.ts";
import { type HeaderMoment, headerMoments, oneDay, zoneFacts } from "./time-facts.ts";
import { toInteger } from "./zone.ts";

/** When a cast was made. */
export interface CastTime {
  /** Epoch seconds UTC of the first row, or the stated time; NaN if not known. */
  readonly time: number;
  readonly endTime: number;
  readonly elapsed: Float64Array | null;
  /** Minutes east of UTC of the clock that was read; null if it is not known. */
  readonly zone: number | null;
  readonly evidence: readonly Evidence[];
  /** Heads of the columns that hold times, with what they are. */
  readonly timeColumns: ReadonlyMap<string, "absolute" | "elapsed">;
  /** Rows whose time could not be read. */
  readonly unreadRows: readonly number[];
}

interface Picked {
  readonly date: HeaderMoment | null;
  readonly clock: HeaderMoment | null;
}

const SECONDS = { s: 1, ms: 0.001, min: 60, h: 3600, day: 86_400 } as const;
const TOLERANCE = 120;

/** Times of a cast from its rows, its header, or both. Asks for zone, order, date or unit where they are open. */
export function castTime(cast: RawCast, id: string, facts: FileFacts): CastTime {
  const found: Evidence[] = [];
  const place = (line?: number | null) => (line == null ? { file: facts.path } : { file: facts.path, line });
  const own = headerMoments(cast.own);
  const moments = own.some(({ role }) => role !== "end") ? own : [...own, ...headerMoments(cast.shared)];
  const start = pick(moments, "start");
  const end = pick(moments, "end");
  const timeColumns = new Map<string, "absolute" | "elapsed">();
  const rows = rowTimes(cast, id, facts, timeColumns);
  const zones = {
    own: zoneFacts(cast.own),
    shared: zoneFacts(cast.shared),
  };
  if (facts.orderEvidence && moments.some(({ moment }) => moment.numeric)) found.push(facts.orderEvidence);
  else if (facts.orderEvidence && rows) found.push(facts.orderEvidence);

  /** Epoch seconds of a date and a clock time in the header; the zone that was used. */
  const headerUtc = (
    picked: Picked,
    fallbackDay: number | null,
  ): { utc: number; zone: KnownZone | null } | null => {
    const clock = picked.clock?.moment;
    if (!clock || clock.secondOfDay === null) return null;
    const day = picked.date ? oneDay(picked.date.moment.dates, facts.orders) : null;
    const midnight = day ? secondsOf(day, 0) : fallbackDay;
    if (midnight === null) return null;
    const written = clock.zone ?? picked.date?.moment.zone ?? null;
    const zone: KnownZone | null =
      written?.minutes.length === 1
        ? {
            minutes: written.minutes[0]!,
            evidence: evidence(
              "timeZone",
              "stated",
              `line ${picked.clock!.line.number} says "${written.words}"`,
              place(picked.clock!.line.number),
            ),
          }
        : settleZone(zones.own, zones.shared, facts, id, {
            text: written
              ? `"${written.words}" is the name of more than one time zone. Which offset from UTC is meant?`
              : `In which time zone is "${clock.words}" written? Nothing in the file says so.`,
            candidates: written?.minutes ?? [],
            line: picked.clock!.line.number,
          });
    return zone ? { utc: midnight + clock.secondOfDay - zone.minutes * 60, zone } : null;
  };

  const conflict = start === "conflict";
  const startPick = conflict ? null : start;
  const stated = startPick ? headerUtc(startPick, null) : null;
  let time = NaN;
  let endTime = NaN;
  let elapsed: Float64Array | null = null;
  let clockZone: number | null = stated?.zone?.minutes ?? null;

  if (rows?.kind === "clock") {
    const utc = utcOfRows(rows, startPick, stated);
    if (utc) {
      const first = utc.find((value) => !Number.isNaN(value)) ?? NaN;
      time = first;
      endTime = utc.findLast((value) => !Number.isNaN(value)) ?? NaN;
      elapsed = Float64Array.from(utc, (value) => value - first);
      found.push(
        evidence(
          "time",
          "stated",
          `the first row's time under ${quoted(rows.headers)}`,
          place(cast.lines[0]),
        ),
      );
      if (stated && Math.abs(stated.utc - first) > 900) disagree(stated.utc, first);
    } else {
      const { local } = relativeTimes(cast, facts) ?? rows.times;
      const first = local.find((value) => !Number.isNaN(value)) ?? NaN;
      if (!Number.isNaN(first)) elapsed = Float64Array.from(local, (value) => value - first);
    }
  } else if (rows?.kind === "elapsed") {
    const { seconds } = rows;
    const first = seconds.find((value) => !Number.isNaN(value)) ?? NaN;
    elapsed = Float64Array.from(seconds, (value) => value - first);
    if (rows.since) {
      const zone = rows.since.zone;
      const day = oneDay(rows.since.dates, facts.orders);
      if (day && zone?.minutes.length === 1) {
        time = secondsOf(day, rows.since.secondOfDay ?? 0) - zone.minutes[0]! * 60 + first;
        found.push(evidence("time", "stated", `the head says "${rows.since.words}"`, place(cast.headLine)));
      }
    } else if (stated) time = stated.utc + first;
    if (!Number.isNaN(time)) endTime = time + (elapsed.findLast((value) => !Number.isNaN(value)) ?? NaN);
  } else if (stated) time = stated.utc;

  if (stated?.zone) found.push(stated.zone.evidence);
  if (stated && startPick?.clock) {
    const words = startPick.clock.role;
    const { line } = startPick.clock;
    const because = `line ${line.number} says "${line.text}"`;
    if (rows?.kind !== "clock")
      found.push(
        evidence(
          "time",
          words === "start" ? "stated" : "implied",
          words === "start" ? because : `${because}, the only time given for the cast`,
          place(line.number),
        ),
      );
  }
  if (end && end !== "conflict" && Number.isNaN(endTime)) {
    const startDay =
      Number.isNaN(time) || !stated?.zone
        ? null
        : Math.floor((time + stated.zone.minutes * 60) / 86_400) * 86_400;
    const ended = headerUtc(end, startDay);
    if (ended) {
      endTime = end.date === null && ended.utc < time ? ended.utc + 86_400 : ended.utc;
      found.push(
        evidence(
          "endTime",
          "stated",
          `line ${end.clock!.line.number} says "${end.clock!.line.text}"`,
          place(end.clock!.line.number),
        ),
      );
    }
  }
  if (Number.isNaN(time)) {
    const answered = askTime();
    if (answered) {
      time = answered.value;
      found.push(evidence("time", "answered", answered.because, place()));
      if (elapsed) endTime = time + (elapsed.findLast((value) => !Number.isNaN(value)) ?? NaN);
    }
  }
  return {
    time,
    endTime,
    elapsed,
    zone: clockZone,
    evidence: found,
    timeColumns,
    unreadRows: rows?.kind === "clock" ? rows.times.unread : [],
  };

  function utcOfRows(
    read: ClockRows,
    header: Picked | null,
    headerTime: { utc: number; zone: KnownZone | null } | null,
  ): Float64Array | null {
    const { times } = read;
    if (times.local.every(Number.isNaN)) return null;
    let midnight = 0;
    if (!times.dated) {
      const day = header?.date ? oneDay(header.date.moment.dates, facts.orders) : null;
      if (!day) return null;
      midnight = secondsOf(day, 0);
    }
    const zone = zoneOfRows(read, midnight, headerTime);
    if (!zone) return null;
    found.push(zone.evidence);
    clockZone = zone.minutes;
    return Float64Array.from(times.local, (value) => value + midnight - zone.minutes * 60);
  }

  function zoneOfRows(
    read: ClockRows,
    midnight: number,
    headerTime: { utc: number; zone: KnownZone | null } | null,
  ): KnownZone | null {
    const { times, headers, headZone } = read;
    const says = (minutes: number, because: string): KnownZone => ({
      minutes,
      evidence: evidence("timeZone", "stated", because, place(cast.headLine)),
    });
    if (times.offset !== null && !Number.isNaN(times.offset))
      return says(times.offset, "the times of the rows carry their offset");
    if (headZone?.minutes.length === 1)
      return says(headZone.minutes[0]!, `the head ${quoted(headers)} says "${headZone.words}"`);
    const candidates = times.ambiguousZone ?? headZone?.minutes ?? [];
    const silent = candidates.length === 0 && zones.own.length === 0 && zones.shared.length === 0;
    const first = (times.local.find((value) => !Number.isNaN(value)) ?? NaN) + midnight;
    if (silent && headerTime?.zone) {
      // the header's clock is the rows' clock if both give the same start
      const difference = first - headerTime.zone.minutes * 60 - headerTime.utc;
      if (Math.abs(difference) <= TOLERANCE)
        return {
          minutes: headerTime.zone.minutes,
          evidence: evidence(
            "timeZone",
            "implied",
            `${headerTime.zone.evidence.because}, and the first row has the same clock time`,
            headerTime.zone.evidence.where,
          ),
        };
    }
    return settleZone(zones.own, zones.shared, facts, id, {
      text: `In which time zone are the times under ${quoted(headers)}? Nothing in the file says so.`,
      candidates,
      ...(cast.headLine === null ? {} : { line: cast.headLine }),
    });
  }

  function disagree(header: number, row: number): void {
    const settled = facts.inquiry.settle({
      topic: "time",
      cast: id,
      holds: [id],
      text: `The header gives the time ${iso(header)}, the first row ${iso(row)}. When did the cast start?`,
      ...(startPick?.clock ? { line: startPick.clock.line.number } : {}),
      candidates: [iso(row), iso(header)],
      read: readUtc,
      form: "a time in UTC such as 2024-05-20T09:00:00Z",
    });
    if (!settled) {
      time = NaN;
      endTime = NaN;
    } else {
      endTime += settled.value - time;
      time = settled.value;
      found.push(evidence("time", "answered", settled.because, place()));
    }
  }

  function askTime() {
    const zoneOpen = facts.inquiry.questions.some(
      ({ about, casts }) =>
        (about === "timeZone" || about === "dateOrder" || about === "time") && casts.includes(id),
    );
    const given = facts.inquiry.given({ topic: "time", cast: id, read: readUtc });
    if (given || zoneOpen) return given;
    const unclear = moments.filter(
      ({ role }) => role === "unclear" || role === "bare" || role === "time" || role === "start",
    );
    const words = unclear.map(({ line }) => `"${line.text}"`);
    const text = conflict
      ? `The header gives more than one time: ${words.join(", ")}. When did the cast start?`
      : words.length > 0
        ? `Is ${words[0]} the start of the cast? Give the date and time of its start.`
        : "When did the cast start? The file gives no complete date and time.";
    return facts.inquiry.settle({
      topic: "time",
      cast: id,
      holds: [id],
      text,
      ...(unclear[0] ? { line: unclear[0].line.number } : {}),
      candidates: [],
      example: "2024-05-20T09:00:00Z",
      read: readUtc,
      form: "a time in UTC such as 2024-05-20T09:00:00Z",
    });
  }
}

const quoted = (headers: readonly string[]) => headers.map((header) => `"${header}"`).join(" and ");
const iso = (seconds: number) => new Date(Math.round(seconds * 1000)).toISOString().replace(/\.000Z$/, "Z");

/** "2024-05-20T09:00:00Z" or with an offset; a time without a zone is refused. */
export function readUtc(text: string): number | null {
  const match =
    /^(\d{4})-(\d\d)-(\d\d)[T ](\d\d):(\d\d)(?::(\d\d)(?:\.(\d{1,6}))?)?\s*(?:Z|UTC|([+-])(\d\d):?(\d\d))$/.exec(
      text,
    );
  if (!match) return null;
  const [y = 0, mo = 0, d = 0, h = 0, mi = 0, s = 0] = match
    .slice(1, 7)
    .map((part) => toInteger(part ?? "0"));
  if (mo < 1 || mo > 12 || d < 1 || d > 31 || h > 23 || mi > 59 || s > 60) return null;
  const fraction = match[7] ? toInteger(match[7]) / 10 ** match[7].length : 0;
  const offset =
    (toInteger(match[9] ?? "0") * 60 + toInteger(match[10] ?? "0")) * (match[8] === "-" ? -60 : 60);
  return secondsOf({ year: y, month: mo, day: d }, h * 3600 + mi * 60 + s + fraction) - offset;
}

/** Start or end of a cast from the header's dates and times. */
function pick(moments: readonly HeaderMoment[], wanted: "start" | "end"): Picked | "conflict" | null {
  const of = (...roles: readonly HeaderMoment["role"][]) =>
    moments.filter(({ role }) => roles.includes(role));
  const dated = ({ moment }: HeaderMoment) => moment.dates.length > 0;
  const clocked = ({ moment }: HeaderMoment) => moment.secondOfDay !== null;
  const days = [...of("date"), ...of("start", "time"), ...of("bare")].filter(dated);
  if (wanted === "end") {
    const clock = of("end").find(clocked);
    if (!clock) return null;
    return { clock, date: dated(clock) ? clock : (of("end").find(dated) ?? null) };
  }
  for (const role of ["start", "time", "bare"] as const) {
    const full = of(role).filter((each) => dated(each) && clocked(each));
    const [first] = full;
    if (first)
      return full.some((other) => differs(other.moment, first.moment))
        ? "conflict"
        : { date: first, clock: first };
    const clock = of(role).find(clocked);
    if (clock && days[0])
      return days.some((other) => differsInDay(other.moment, days[0]!.moment))
        ? "conflict"
        : { date: days[0], clock };
  }
  return days[0] ? { date: days[0], clock: null } : null;
}

const differsInDay = (a: Moment, b: Moment) =>
  JSON.stringify(a.dates.map((d) => [d.year, d.month, d.day])) !==
  JSON.stringify(b.dates.map((d) => [d.year, d.month, d.day]));
const differs = (a: Moment, b: Moment) =>
  a.secondOfDay !== b.secondOfDay || differsInDay(a, b) || a.zone?.minutes[0] !== b.zone?.minutes[0];

interface ClockRows {
  readonly kind: "clock";
  readonly times: RowTimes;
  readonly headers: readonly string[];
  readonly headZone: RawColumn["head"]["zone"];
}
interface ElapsedRows {
  readonly kind: "elapsed";
  readonly seconds: Float64Array;
  /** "minutes since …" in the head or header. */
  readonly since: Moment | null;
}

function rowTimes(
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
  const date = utcFirst(ofForm("date"));
  const clock = utcFirst(ofForm("clock"));
  const elapsed = cast.columns.find(({ meaning }) => meaning.kind === "elapsed");
  const epoch = cast.columns.find(({ meaning }) => meaning.kind === "epoch");
  if (elapsed) timeColumns.set(elapsed.head.header, "elapsed");
  if (epoch) timeColumns.set(epoch.head.header, "absolute");
  if (datetime?.moments)
    return {
      kind: "clock",
      times: rowTimesOf(datetime.moments, null, facts.orders),
      headers: [datetime.head.header],
      headZone: datetime.head.zone,
    };
  if (clock?.moments) {
    const read = rowTimesOf(clock.moments, date?.moments ?? null, facts.orders);
    const columns = date ? [date, clock] : [clock];
    return {
      kind: "clock",
      times: read,
      headers: columns.map(({ head }) => head.header),
      headZone: clock.head.zone ?? date?.head.zone ?? null,
    };
  }
  if (epoch?.numbers && epoch.meaning.kind === "epoch") {
    const scale = SECONDS[epoch.meaning.unit];
    const local = Float64Array.from(epoch.numbers.values, (value) => value * scale);
    const read: RowTimes = { local, dated: true, offset: 0, unread: [], ambiguousZone: null };
    return { kind: "clock", times: read, headers: [epoch.head.header], headZone: null };
  }
  if (!elapsed) return null;
  return elapsedRows(cast, id, elapsed, facts);
}

/** Times whose differences hold while the order of day and month is open: within a day every order gives the same. */
function relativeTimes(cast: RawCast, facts: FileFacts): RowTimes | null {
  const column = cast.columns.find(({ meaning }) => meaning.kind === "time" && meaning.form === "datetime");
  const order = column?.moments?.find((moment) => moment !== null)?.dates[0]?.order;
  if (!column?.moments || !order || facts.orders?.size !== 0) return null;
  const read = rowTimesOf(column.moments, null, new Set([order]));
  const days = new Set(
    read.local.filter((value) => !Number.isNaN(value)).map((value) => Math.floor(value / 86_400)),
  );
  return days.size === 1 ? read : null;
}

function elapsedRows(cast: RawCast, id: string, column: RawColumn, facts: FileFacts): ElapsedRows | null {
  if (column.meaning.kind !== "elapsed") return null;
  const since = sinceOf(cast);
  let unit = column.meaning.unit;
  if (unit === null) {
    unit =
      facts.inquiry.settle({
        topic: "units",
        column: column.head.header,
        holds: [id],
        text: `"${column.head.header}" holds plain numbers. Are they seconds, minutes or hours since the start?`,
        ...(cast.headLine === null ? {} : { line: cast.headLine }),
        candidates: ["s", "min", "h"],
        read: (value) => (value === "s" || value === "min" || value === "h" ? value : null),
        form: "s, min or h",
      })?.value ?? null;
    if (unit === null) return null;
  }
  const scale = SECONDS[unit];
  const seconds = column.numbers
    ? Float64Array.from(column.numbers.values, (value) => (unit === "ms" ? value / 1000 : value * scale))
    : (rowTimesOf(column.moments ?? [], null, null).local as Float64Array);
  return { kind: "elapsed", seconds, since };
}

/** A moment after "since" in a header line. */
function sinceOf(cast: RawCast): Moment | null {
  for (const { moment, line } of headerMoments([...cast.own, ...cast.shared])) {
    const before = line.text.slice(0, moment.start);
    if (/\b(?:since|seit|depuis|desde|sedan|siden|sinds|da)\s*$/i.test(before) && moment.zone) return moment;
  }
  return null;
}
