import { type DateOrder, type DateReading, findMoments, type Moment } from "./clock.ts";
import { type HeaderLine, topicsOfLine } from "./header-lines.ts";
import type { RawCast } from "./raw-cast.ts";
import { isApproximate } from "./reservations.ts";
import { headerTopics } from "./vocabulary/header-words.ts";
import { wordsOf } from "./words.ts";
import { readZone, winterInSummer, type ZoneReading, zoneAmong } from "./zone.ts";

/** A date or time in the header, and what the words before it make of it. */
export interface HeaderMoment {
  readonly moment: Moment;
  readonly role: "start" | "end" | "bottom" | "time" | "date" | "bare" | "unclear";
  readonly line: HeaderLine;
  /** "approx. 08:30" */
  readonly approximate: boolean;
}

/** Moments of header lines. Dates of calibrations, exports and the like are left out. */
export function headerMoments(lines: readonly HeaderLine[]): readonly HeaderMoment[] {
  const found: HeaderMoment[] = [];
  for (const line of lines) {
    const isAngle = line.key !== null && (line.topics.has("latitude") || line.topics.has("longitude"));
    if (line.topics.has("elsewhere") || isAngle) continue;
    const moments = findMoments(line.text);
    let from = 0;
    let role: HeaderMoment["role"] | null = null;
    for (const moment of moments) {
      const before = line.text.slice(from, moment.start);
      const topics = headerTopics(wordsOf(before));
      from = moment.end;
      if (topics.has("elsewhere") || topics.has("serial") || topics.has("model")) continue;
      if (topics.has("end")) role = "end";
      else if (topics.has("bottom")) role = "bottom";
      else if (topics.has("start")) role = "start";
      else if (topics.has("date") && moment.secondOfDay === null) role = "date";
      else if (topics.has("time") || topics.has("date") || topics.has("local") || topics.has("clock"))
        role = "time";
      else if (topics.has("zone")) continue;
      else if (role === null) role = line.key === null || line.topics.has("cast") ? "bare" : "unclear";
      // a lone clock time among words that do not speak of time ("ratio 10:30") tells nothing
      if (moment.dates.length === 0 && (role === "bare" || role === "unclear")) continue;
      const unsure = moment.zone !== null && winterInSummer(moment.zone, line.text.slice(moment.end));
      found.push({
        moment: unsure ? { ...moment, zone: null } : moment,
        role,
        line,
        approximate: isApproximate(before, line.text.slice(moment.end)),
      });
    }
  }
  return found;
}

/** A statement about the zone of the file's clock. */
export interface ZoneFact {
  readonly zone: ZoneReading;
  readonly line: number;
  readonly words: string;
  /** "Zone: -7": by the sea's own custom the sign may be turned round. */
  readonly signDoubtful: boolean;
}

/** Zones that header lines state for the whole file, not only for one moment. */
export function zoneFacts(lines: readonly HeaderLine[]): readonly ZoneFact[] {
  const facts: ZoneFact[] = [];
  for (const line of lines) {
    if (line.topics.has("elsewhere")) continue;
    const keyed = line.topics.get("zone");
    if (keyed && line.key !== null) {
      const offsetWord = /offset|utc|gmt|decalage|differen/.test(keyed);
      const zone = readZone(line.value, true) ?? zoneAmong(line.value);
      const bare = /^[+\-−–]?\s*\d{1,2}(?:[:.]?\d{2})?\s*(?:h|hours?)?$/i.test(line.value);
      if (zone)
        facts.push({
          zone,
          line: line.number,
          words: line.text,
          signDoubtful: bare && !offsetWord && zone.minutes[0] !== 0,
        });
      continue;
    }
    // "clock UTC", "all times are UTC+2", "Heure locale (UTC+2)", or the zone alone on its line
    const spoken = keyed || line.topics.has("clock") || line.topics.has("local") || mentionsTime(line);
    const zone = spoken ? zoneAmong(line.text) : readZone(line.text);
    if (!zone) continue;
    const ownMoment = findMoments(line.text).some(
      (moment) => moment.zone !== null && moment.zone.words === zone.words,
    );
    if (!ownMoment || line.topics.has("local") || line.topics.has("clock"))
      facts.push({ zone, line: line.number, words: line.text, signDoubtful: false });
  }
  return facts;
}

const mentionsTime = (line: HeaderLine) => {
  const topics = topicsOfLine(line);
  return (
    topics.has("clock") ||
    topics.has("date") ||
    topics.has("time") ||
    topics.has("zone") ||
    topics.has("local")
  );
};

/** Orders of day, month and year that fit every date of the file that is written in digits with the year last. */
export function fittingOrders(moments: Iterable<Moment>): {
  readonly orders: ReadonlySet<DateOrder>;
  readonly dotted: boolean;
} {
  let orders: Set<DateOrder> | null = null;
  let dotted = true;
  for (const { dates, numeric, dotted: withPoints } of moments) {
    if (!numeric) continue;
    dotted &&= withPoints;
    const own = dates.map(({ order }) => order);
    orders = new Set(orders === null ? own : own.filter((order) => orders!.has(order)));
  }
  return { orders: orders ?? new Set(), dotted: dotted && orders !== null };
}

/** The one day that the readings of a date leave, with the orders that are allowed; null if several do. */
export function oneDay(
  dates: readonly DateReading[],
  allowed: ReadonlySet<DateOrder> | null,
): DateReading | null {
  const left = allowed === null ? dates : dates.filter(({ order }) => allowed.has(order));
  const [first, ...others] = left;
  if (!first) return null;
  const same = (other: DateReading) =>
    other.year === first.year && other.month === first.month && other.day === first.day;
  return others.every(same) ? first : null;
}

/**
 * Dates and times of a cast's own lines; the lines for all casts add what these do not give. A time of day in lines
 * that several casts have in common is not the time of each of them.
 */
export function momentsOf(cast: RawCast): readonly HeaderMoment[] {
  const own = headerMoments(cast.own);
  const shared = headerMoments(cast.shared);
  const dayOnly = ({ moment }: HeaderMoment) => moment.secondOfDay === null;
  const ownOnes = cast.common === "all" ? own.filter(dayOnly) : own;
  const sharedOnes = cast.common === "none" ? shared : shared.filter(dayOnly);
  if (ownOnes.every(({ role }) => role === "end")) return [...ownOnes, ...sharedOnes];
  return ownOnes.some(({ moment }) => moment.dates.length > 0)
    ? ownOnes
    : [...ownOnes, ...shared.filter(dayOnly)];
}

/** Whether a date in the header is that of another clock than the one with this zone: then it may be a day off. */
export function otherDay({ line, moment }: HeaderMoment, zone: { readonly minutes: number }): boolean {
  const own = moment.zone ?? zoneAmong(line.text);
  if (own) return !own.minutes.includes(zone.minutes);
  return zone.minutes === 0 && topicsOfLine(line).has("local");
}
