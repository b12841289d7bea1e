import type { Moment } from "./clock.ts";
import type { HeaderMoment } from "./time-facts.ts";

/** The lines of the header that give the day and the time of day of a start or end. */
export interface Picked {
  readonly date: HeaderMoment | null;
  readonly clock: HeaderMoment | null;
}

/** Start or end of a cast from the header's dates and times. */
export function pickMoments(
  moments: readonly HeaderMoment[],
  wanted: "start" | "bottom" | "end",
): Picked | "conflict" | null {
  const of = (...roles: readonly HeaderMoment["role"][]) =>
    moments.filter(({ role }) => roles.includes(role));
  const dated = ({ moment }: HeaderMoment) => moment.dates.length > 0;
  const clocked = ({ moment }: HeaderMoment) => moment.secondOfDay !== null;
  const days = [...of("date"), ...of("start", "time"), ...of("bare")].filter(dated);
  if (wanted !== "start") {
    const clock = of(wanted).find(clocked);
    if (!clock) return null;
    const day = of(wanted).find(dated) ?? (wanted === "bottom" ? days[0] : undefined);
    return { clock, date: dated(clock) ? clock : (day ?? null) };
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
