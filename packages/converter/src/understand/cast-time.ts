import { type Evidence, parseNumber } from "@wherry/core";
import { secondsOf } from "./clock.ts";
import { allLines, evidence, type FileFacts, type KnownZone, settleZone } from "./file-facts.ts";
import { type Picked, pickMoments } from "./header-pick.ts";
import type { RawCast } from "./raw-cast.ts";
import { type ClockError, clockError } from "./reservations.ts";
import { type ClockRows, readRowClock, relativeTimes } from "./row-clock.ts";
import { type HeaderMoment, momentsOf, oneDay, otherDay, zoneFacts } from "./time-facts.ts";
import { readUtc, writeUtc } from "./utc-text.ts";

/** When a cast was made. */
export interface CastTime {
  /** Epoch seconds UTC of the first row, or the stated time; NaN if not known. */
  readonly time: number;
  readonly timeRole: "start" | "bottom" | "end" | "unknown";
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

const TOLERANCE = 120;

/** Times of a cast from its rows, its header, or both. Asks for zone, order, date or unit where they are open. */
export function castTime(cast: RawCast, id: string, facts: FileFacts): CastTime {
  const found: Evidence[] = [];
  const place = (line?: number | null) => (line == null ? { file: facts.path } : { file: facts.path, line });
  const moments = momentsOf(cast);
  const start = pickMoments(moments, "start");
  const end = pickMoments(moments, "end");
  const timeColumns = new Map<string, "absolute" | "elapsed">();
  const rows = readRowClock(cast, id, facts, timeColumns);
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
      const above = utc.find((value) => !Number.isNaN(value)) ?? NaN;
      const below = utc.findLast((value) => !Number.isNaN(value)) ?? NaN;
      // rows may stand in turned order
      const first = Math.min(above, below);
      time = first;
      endTime = Math.max(above, below);
      elapsed = utc.map((value) => value - first);
      found.push(
        evidence(
          "time",
          "stated",
          `the ${above > below ? "last" : "first"} row's time under ${quoted(rows.headers)}`,
          place(above > below ? cast.lines.at(-1) : cast.lines[0]),
        ),
      );
      if (stated && Math.abs(stated.utc - first) > 900) disagree(stated.utc, first);
    } else {
      const { local } = relativeTimes(cast, facts) ?? rows.times;
      const first = local.find((value) => !Number.isNaN(value)) ?? NaN;
      if (!Number.isNaN(first)) elapsed = local.map((value) => value - first);
    }
  } else if (rows?.kind === "elapsed") {
    const { seconds } = rows;
    const first = seconds.find((value) => !Number.isNaN(value)) ?? NaN;
    elapsed = seconds.map((value) => value - first);
    if (rows.since) {
      const zone = rows.since.zone;
      const day = oneDay(rows.since.dates, facts.orders);
      if (day && zone?.minutes.length === 1) {
        time = secondsOf(day, rows.since.secondOfDay ?? 0) - zone.minutes[0]! * 60 + first;
        found.push(evidence("time", "stated", `the head says "${rows.since.words}"`, place(cast.headLine)));
      }
    } else if (stated && rows.doubtful) sinceMidnight(stated, first);
    else if (stated) time = stated.utc + first;
    time = possible(time);
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
  let timeRole: CastTime["timeRole"] = "start";
  if (Number.isNaN(time) && !rows && !startPick?.clock && !conflict) otherRole();
  const near = [startPick?.clock, startPick?.date].find((picked) => picked?.approximate);
  if (near && rows?.kind !== "clock" && !Number.isNaN(time)) approximately(near, time);
  if (Number.isNaN(time)) {
    const answered = askTime();
    if (answered) {
      time = answered.value;
      found.push(evidence("time", "answered", answered.because, place()));
      if (elapsed) endTime = time + (elapsed.findLast((value) => !Number.isNaN(value)) ?? NaN);
    }
  }
  const wrongBy = clockError(allLines(cast));
  if (wrongBy) correctClock(wrongBy);
  return {
    time: possible(time),
    timeRole: Number.isNaN(time) ? "unknown" : timeRole,
    endTime: possible(endTime),
    elapsed,
    zone: clockZone,
    evidence: found,
    timeColumns,
    unreadRows: rows?.kind === "clock" ? rows.times.unread : [],
  };

  /** The header may tell only when the cast was at its bottom, or when it ended. */
  function otherRole(): void {
    const bottom = pickMoments(moments, "bottom");
    const picked = bottom && bottom !== "conflict" ? headerUtc(bottom, null) : null;
    if (bottom && bottom !== "conflict" && picked) {
      time = picked.utc;
      timeRole = "bottom";
      const { line } = bottom.clock!;
      found.push(evidence("time", "stated", `line ${line.number} says "${line.text}"`, place(line.number)));
    } else if (!Number.isNaN(endTime)) {
      time = endTime;
      timeRole = "end";
    }
  }

  function utcOfRows(
    read: ClockRows,
    header: Picked | null,
    headerTime: { utc: number; zone: KnownZone | null } | null,
  ): Float64Array | null {
    const { times } = read;
    if (times.local.every(Number.isNaN) || times.halfDay) return null;
    let midnight = 0;
    if (!times.dated) {
      const day = header?.date ? oneDay(header.date.moment.dates, facts.orders) : null;
      if (!day) return null;
      midnight = secondsOf(day, 0);
    }
    const zone = zoneOfRows(read, midnight, headerTime);
    if (!zone || (!times.dated && header?.date && otherDay(header.date, zone))) return null;
    found.push(zone.evidence);
    clockZone = zone.minutes;
    return times.local.map((value) => possible(value + midnight - zone.minutes * 60));
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
      text: `The header gives the time ${writeUtc(header)}, the first row ${writeUtc(row)}. When did the cast start?`,
      ...(startPick?.clock ? { line: startPick.clock.line.number } : {}),
      candidates: [writeUtc(row), writeUtc(header)],
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

  /** Seconds that begin late: of the day if the header's time of day is the same, else asked. */
  function sinceMidnight(header: { utc: number; zone: KnownZone | null }, first: number): void {
    const ofDay = (header.utc + (header.zone?.minutes ?? 0) * 60) % 86_400;
    if (Math.abs(ofDay - first) <= TOLERANCE) time = header.utc + (first - ofDay);
    else
      askStart(
        `The seconds of the rows begin at ${first}, and the header gives the time ${writeUtc(header.utc)}. When did the cast start?`,
        [header.utc, header.utc + first],
      );
  }

  function askStart(text: string, candidates: readonly number[], line?: number): void {
    const settled = facts.inquiry.settle({
      topic: "time",
      cast: id,
      holds: [id],
      text,
      ...(line === undefined ? {} : { line }),
      candidates: candidates.map(writeUtc),
      read: readUtc,
      form: "a time in UTC such as 2024-05-20T09:00:00Z",
    });
    time = settled?.value ?? NaN;
    if (settled) found.push(evidence("time", "answered", settled.because, place()));
  }

  /** A start that the header calls approximate is a person's to confirm or to better. */
  function approximately({ line }: HeaderMoment, about: number): void {
    askStart(
      `Line ${line.number} gives the time as approximate: "${line.text}". When did the cast start, as well as you know?`,
      [about],
      line.number,
    );
    endTime += time - about;
  }

  /** The header says that the clock was wrong; whether the times were put right nothing tells. */
  function correctClock({ line, corrections }: ClockError): void {
    const settled = facts.inquiry.settle({
      topic: "clockCorrection",
      holds: [id],
      text: `Line ${line.number} says "${line.text}". How many seconds have to be added to the times of the file? 0 if they were put right before.`,
      line: line.number,
      candidates: [...corrections.map((seconds) => `${seconds} s`), "0 s"],
      read: readSeconds,
      form: "a number of seconds such as -90 s",
    });
    if (!settled) return;
    time += settled.value;
    endTime += settled.value;
    found.push(evidence("clockCorrection", "answered", settled.because, place(line.number)));
  }

  function askTime() {
    const zoneOpen = facts.inquiry.questions.some(
      ({ about, casts }) =>
        casts.includes(id) &&
        (about === "timeZone" ||
          about === "dateOrder" ||
          about === "time" ||
          [...timeColumns.keys()].some((header) => about === `units:${header}`)),
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
        : rows?.kind === "clock" && rows.times.halfDay
          ? "The times of the rows go from 12 to 1 and say neither am nor pm. When did the cast start?"
          : cast.common !== "none"
            ? "When did this cast start? No time in the file is its own: those above the rows stand for several casts."
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

/** A time of the years 1850 to 2150; NaN for what damage makes of one. */
const possible = (time: number): number => (time > -3_786_912_000 && time < 5_680_281_600 ? time : NaN);

const readSeconds = (text: string): number | null => {
  const value = parseNumber(text.replace(/\s*s$/, ""));
  return Math.abs(value) <= 86_400 ? value : null;
};

const quoted = (headers: readonly string[]) => headers.map((header) => `"${header}"`).join(" and ");
