import type { Evidence, Place } from "@wherry/core";
import type { DateOrder, Moment } from "./clock.ts";
import type { ExtraName } from "./extra-names.ts";
import type { HeaderLine } from "./header-lines.ts";
import { type Inquiry, oneOf } from "./inquiry.ts";
import type { ZoneFact } from "./time-facts.ts";
import { fittingOrders, oneDay } from "./time-facts.ts";
import { readZone, writeZone } from "./zone.ts";

/** What is settled once for a file and used by each of its casts. */
export interface FileFacts {
  readonly path: string;
  readonly sha256: string;
  readonly inquiry: Inquiry;
  /** Names of quantities that the person's notes add. */
  readonly names: readonly ExtraName[];
  /** Orders in which dates may be read; null if no date depends on it. */
  readonly orders: ReadonlySet<DateOrder> | null;
  readonly orderEvidence: Evidence | null;
  /** What the letter O means by the language of the file. */
  readonly letterO: { readonly sign: 1 | -1; readonly words: readonly string[] } | null;
}

export function evidence(
  fact: string,
  certainty: Evidence["certainty"],
  because: string,
  where: Place,
): Evidence {
  return { fact, certainty, because, where };
}

const ORDERS = ["day-month-year", "month-day-year", "year-month-day"] as const;

/** The order of day, month and year: from all dates of the file, from its language, or from an answer. */
export function settleOrder(
  moments: readonly Moment[],
  inquiry: Inquiry,
  file: string,
  casts: readonly string[],
  german: boolean,
  texts: readonly { readonly text: string; readonly line?: number }[] = [],
): Pick<FileFacts, "orders" | "orderEvidence"> {
  const { orders, dotted } = fittingOrders(moments);
  const doubtful = moments.filter(
    ({ dates }) => dates.length > 1 && oneDay(dates, orders.size > 0 ? orders : null) === null,
  );
  const [example] = doubtful;
  if (!example) {
    if (orders.size === 0) return { orders: null, orderEvidence: null };
    const telling = moments.find(({ numeric, dates }) => numeric && dates.length === 1);
    const because = telling
      ? `"${telling.words}" fits only ${[...orders].join(" or ")}`
      : "every order gives the same days";
    return { orders, orderEvidence: evidence("dateOrder", "implied", because, { file }) };
  }
  const named = statedOrder(texts);
  if (named && example.dates.some(({ order }) => order === named.order))
    return {
      orders: new Set([named.order]),
      orderEvidence: evidence("dateOrder", "stated", `"${named.text}"`, {
        file,
        ...(named.line === undefined ? {} : { line: named.line }),
      }),
    };
  if (dotted && german && orders.has("day-month-year"))
    return {
      orders: new Set(["day-month-year"]),
      orderEvidence: evidence(
        "dateOrder",
        "implied",
        `"${example.words}" is written with points in a file whose words put the day first`,
        { file },
      ),
    };
  const possible = ORDERS.filter((order) => example.dates.some((date) => date.order === order));
  const days = example.dates.map(
    ({ order, year, month, day }) => `${order} gives ${year}-${two(month)}-${two(day)}`,
  );
  const settled = inquiry.settle({
    topic: "dateOrder",
    holds: casts,
    text: `In which order are day, month and year written in the date "${example.words}"? ${days.join(", ")}.`,
    candidates: possible,
    read: oneOf(...ORDERS),
    form: "day-month-year, month-day-year or year-month-day",
  });
  if (!settled) return { orders: new Set(), orderEvidence: null };
  return {
    orders: new Set([settled.value]),
    orderEvidence: evidence("dateOrder", "answered", settled.because, { file }),
  };
}

// day, month and year as letters of dates in several languages: dd/mm/yyyy, TT.MM.JJJJ, jj/mm/aaaa, gg/mm/aaaa
const [D, M, Y] = [
  "(?:d{1,2}|t{1,2}|j{1,2}|g{1,2}|p{1,2})",
  "(?:m{1,2}|k{1,2})",
  "(?:y{2,4}|j{2,4}|a{2,4}|å{2,4}|v{2,4})",
];
const WRITTEN: readonly (readonly [DateOrder, RegExp])[] = [
  [
    "day-month-year",
    new RegExp(`(?<![a-z])${D}[./-]${M}[./-]${Y}(?![a-z])|\\bday (?:before|\\/) ?month|\\bday first`, "i"),
  ],
  [
    "month-day-year",
    new RegExp(`(?<![a-z])${M}[./-]${D}[./-]${Y}(?![a-z])|\\bmonth (?:before|\\/) ?day|\\bmonth first`, "i"),
  ],
  ["year-month-day", new RegExp(`(?<![a-z])${Y}[./-]${M}[./-]${D}(?![a-z])|\\byear first`, "i")],
];

/** The order that a line or head spells out, if they spell out one. */
function statedOrder(texts: readonly { readonly text: string; readonly line?: number }[]) {
  const said = texts.flatMap((each) =>
    WRITTEN.filter(([, pattern]) => pattern.test(each.text)).map(([order]) => ({ ...each, order })),
  );
  const [first] = said;
  return first && said.every(({ order }) => order === first.order) ? first : null;
}

const two = (n: number) => String(n).padStart(2, "0");

export interface KnownZone {
  /** Minutes east of UTC. */
  readonly minutes: number;
  readonly evidence: Evidence;
}

/**
 * Zone of a clock whose times carry none: as the header states it, or as answered. Two statements that differ, an
 * abbreviation with two meanings or a bare number leave a question, and so does silence: UTC is never assumed.
 */
export function settleZone(
  own: readonly ZoneFact[],
  shared: readonly ZoneFact[],
  facts: Pick<FileFacts, "path" | "inquiry">,
  casts: string | readonly string[],
  hint: { readonly text: string; readonly candidates: readonly number[]; readonly line?: number },
): KnownZone | null {
  const stated = own.length > 0 ? own : shared;
  const distinct = new Set(stated.map(({ zone }) => zone.minutes.join()));
  const [first] = stated;
  const unsure = stated.some(({ zone }) => zone.doubtful);
  if (first && distinct.size === 1 && first.zone.minutes.length === 1 && !first.signDoubtful && !unsure)
    return {
      minutes: first.zone.minutes[0]!,
      evidence: evidence("timeZone", "stated", `line ${first.line} says "${first.words}"`, {
        file: facts.path,
        line: first.line,
      }),
    };
  let text = hint.text;
  let minutes = hint.candidates;
  let line = hint.line;
  if (first) {
    line = first.line;
    minutes = [
      ...new Set(
        stated.flatMap(({ zone, signDoubtful }) =>
          signDoubtful ? zone.minutes.flatMap((m) => [m, -m]) : zone.minutes,
        ),
      ),
    ];
    if (distinct.size > 1)
      text = `The file names more than one time zone: ${stated.map(({ words }) => `"${words}"`).join(", ")}. Which is that of the times?`;
    else if (unsure) text = `"${first.words}" leaves open in which time zone the times are. Which is it?`;
    else if (first.signDoubtful) text = `"${first.words}": is local time ahead of UTC by this, or behind it?`;
    else
      text = `"${first.zone.words}" is the name of more than one time zone. Which offset from UTC is meant?`;
  }
  const settled = facts.inquiry.settle({
    topic: "timeZone",
    holds: [casts].flat(),
    text,
    ...(line === undefined ? {} : { line }),
    candidates: minutes.map(writeZone),
    example: minutes.length > 0 ? writeZone(minutes[0]!) : "+00:00",
    read: (value) => {
      const zone = readZone(value, true);
      return zone?.minutes.length === 1 ? zone.minutes[0]! : null;
    },
    form: 'an offset from UTC such as "+02:00" or "UTC"',
  });
  return (
    settled && {
      minutes: settled.value,
      evidence: evidence("timeZone", "answered", settled.because, { file: facts.path }),
    }
  );
}

/** Header lines of a cast, its own before the shared ones. */
export const allLines = (cast: {
  readonly own: readonly HeaderLine[];
  readonly shared: readonly HeaderLine[];
}) => [...cast.own, ...cast.shared];
