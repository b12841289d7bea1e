import { dayNumber } from "@wherry/core";
import { type Group, kindOf, type Report } from "./reports.ts";

/** A level of a report; NaN where slashes stand or the group is left out. */
export interface Level {
  readonly line: number;
  /** m */
  readonly depth: number;
  /** degree Celsius */
  temperature: number;
  salinity: number;
}

export interface DecodedReport {
  readonly kind: Report["kind"];
  readonly line: number;
  readonly yearDigit: number;
  readonly month: number;
  readonly day: number;
  /** Minutes of the day UTC; NaN if slashes stand. */
  readonly minutes: number;
  readonly latitude: number;
  readonly longitude: number;
  /** Degrees. */
  readonly resolution: number;
  readonly levels: readonly Level[];
  /** Whether a salinity is announced: codes 1 to 3 say how it was measured. */
  readonly salinityCode: number | null;
  /** Everything that has no place of its own, in words. */
  readonly notes: readonly string[];
  /** Group of each fact, for evidence. */
  readonly at: Readonly<Record<"date" | "time" | "latitude" | "longitude" | "depths", Group>>;
}

export interface GroupFault {
  readonly message: string;
  readonly group: Group;
  /** Nothing follows: the report may be cut. */
  readonly last: boolean;
}

/** Lowest temperature that sea water can have, with room. */
const COLDEST = -5;

/** Goes through the groups of a report; the first fault stays. */
class Groups {
  readonly #groups: readonly Group[];
  #at = 0;
  fault: GroupFault | null = null;

  constructor(groups: readonly Group[]) {
    this.#groups = groups;
  }

  get next(): Group | null {
    return this.fault ? null : (this.#groups[this.#at] ?? null);
  }

  skip(): void {
    this.#at++;
  }

  /** The parts of the next group, which must have a form. */
  take(form: RegExp, what: string): { readonly group: Group; readonly parts: readonly string[] } {
    const group = this.next ?? this.#groups.at(-1)!;
    const found = this.next ? form.exec(group.text) : null;
    if (!found)
      this.fail(
        this.next ? `${what} is expected, "${group.text}" stands there` : `${what} is missing`,
        group,
      );
    this.#at++;
    return { group, parts: found ? found.slice(1) : [] };
  }

  fail(message: string, group: Group): void {
    this.fault ??= { message, group, last: group === this.#groups.at(-1) };
  }
}

const number = (digits: string | undefined): number =>
  digits === undefined ? Number.NaN : Number.parseInt(digits, 10);

/** Tenths or hundredths with their sign: half the range above stands for below zero. */
function signed(digits: string, decimals: number): number {
  if (/^\/+$/.test(digits)) return Number.NaN;
  const half = 5 * 10 ** (digits.length - 1);
  const value = Number.parseInt(digits, 10);
  return (value >= half ? -(value - half) : value) / 10 ** decimals;
}

/** Degrees of a group whose last figures may be slashes, and the step that is left. */
function degrees(text: string): { readonly value: number; readonly step: number } {
  const digits = text.replaceAll("/", "");
  const decimals = 3 - (text.length - digits.length);
  return { value: Number.parseInt(digits, 10) / 10 ** decimals, step: 10 ** -decimals };
}

const SIGNS: Readonly<Record<string, readonly [north: number, east: number]>> = {
  1: [1, 1],
  3: [-1, 1],
  5: [-1, -1],
  7: [1, -1],
};

/**
 * Decodes one report, group by group.
 *
 * @param cut the report may have been cut off: a last group that has no known form is left out and not a fault
 * @source WMO Manual on Codes (No. 306), volume I.1, FM 63-XI BATHY and FM 64-XI TESAC
 */
export function decodeReport(
  report: Report,
  cut = false,
): { readonly report: DecodedReport; readonly lost: Group | null } | { readonly fault: GroupFault } {
  const groups = new Groups(report.groups);
  const notes: string[] = [];
  const { kind } = report;
  groups.skip();
  const date = groups.take(/^(\d\d)(\d\d)(\d)$/, "day, month and last figure of the year (YYMMJ)");
  const [day, month, yearDigit] = date.parts.map(number);
  const time = groups.take(/^(?:(\d\d)(\d\d)|\/{4})\/$/, "hour and minute (GGgg/)");
  const [hour, minute] = time.parts.map(number);
  const north = groups.take(/^([1357])(\d{5}|\d{4}\/|\d{3}\/\/)$/, "quadrant and latitude");
  const east = groups.take(/^(\d{6}|\d{5}\/|\d{4}\/\/)$/, "longitude of six figures");
  if (groups.fault) return { fault: groups.fault };
  // years that may be meant decide on 29 February later; 2000 is a leap year
  if (Number.isNaN(dayNumber({ year: 2000, month: month!, day: day! }, "standard")))
    groups.fail(`${day}.${month}. is no day of the calendar`, date.group);
  if (hour! > 23 || minute! > 59) groups.fail(`${hour}:${minute} is no time of day`, time.group);
  const latitude = degrees(north.parts[1]!);
  const longitude = degrees(east.parts[0]!);
  if (latitude.value > 90) groups.fail(`the latitude is ${latitude.value}`, north.group);
  if (longitude.value > 180) groups.fail(`the longitude is ${longitude.value}`, east.group);
  takeWeather(groups, kind, notes);
  const head = kind === "TESAC" ? /^888([78])([0-3])$/ : /^8888([78])$/;
  const depths = groups.take(head, kind === "TESAC" ? "the group 888k1k2" : "the group 8888k1");
  const salinityCode = kind === "TESAC" ? number(depths.parts[1]) : null;
  if (!groups.fault) {
    notes.push(
      `levels at ${depths.parts[0] === "7" ? "selected" : "significant"} depths (k1 = ${depths.parts[0]})`,
    );
    if (salinityCode !== null) notes.push(`salinity: ${SALINITY[salinityCode]} (k2 = ${salinityCode})`);
  }
  const device = groups.take(/^([\d/]{3})([\d/]{2})$/, "the group of instrument and recorder");
  if (!groups.fault)
    notes.push(
      `instrument ${device.parts[0]} (code table 1770), recorder ${device.parts[1]} (code table 4770)`,
    );
  const levels: Level[] = [];
  const lost =
    kind === "TESAC" ? takeTesac(groups, levels, notes, cut) : takeBathy(groups, levels, notes, cut);
  if (!groups.fault && levels.length === 0) groups.fail("the report holds no level", depths.group);
  if (!groups.fault && salinityCode === 0 && levels.some(({ salinity }) => !Number.isNaN(salinity)))
    groups.fail("k2 = 0 says that there is no salinity, and salinities stand there", depths.group);
  if (groups.fault) return { fault: groups.fault };
  const [n, e] = SIGNS[north.parts[0]!]!;
  return {
    lost,
    report: {
      kind,
      line: report.groups[0]!.line,
      yearDigit: yearDigit!,
      month: month!,
      day: day!,
      minutes: time.parts[0] === undefined ? Number.NaN : hour! * 60 + minute!,
      latitude: n * latitude.value,
      longitude: e * longitude.value,
      resolution: Math.max(latitude.step, longitude.step),
      levels,
      salinityCode,
      notes,
      at: {
        date: date.group,
        time: time.group,
        latitude: north.group,
        longitude: east.group,
        depths: depths.group,
      },
    },
  };
}

const SALINITY = [
  "not measured",
  "sensor in the water, better than 0.02",
  "sensor in the water, worse than 0.02",
  "analysis of samples",
];

/** Wind and air temperature may stand before the levels. They are kept as they are. */
function takeWeather(groups: Groups, kind: Report["kind"], notes: string[]): void {
  const isHead = (text: string) => (kind === "TESAC" ? /^888[78]/ : /^8888/).test(text);
  for (let count = 0; count < 2; count++) {
    const { next } = groups;
    if (!next || isHead(next.text) || !/^[\d/]{5}$/.test(next.text)) return;
    notes.push(`weather group ${next.text}`);
    groups.skip();
  }
}

function addLevel(groups: Groups, levels: Level[], group: Group, depth: number): Level | null {
  const last = levels.at(-1);
  if (last && !(depth > last.depth)) {
    groups.fail(`depth ${depth} m follows on ${last.depth} m`, group);
    return null;
  }
  const level = { line: group.line, depth, temperature: Number.NaN, salinity: Number.NaN };
  levels.push(level);
  return level;
}

function setTemperature(groups: Groups, level: Level, group: Group, value: number): void {
  if (value < COLDEST)
    groups.fail(`${value} degrees Celsius in group ${group.text} is no temperature of sea water`, group);
  else level.temperature = value;
}

/** Levels of a TESAC report by the leading figure of each group, then what follows on them. */
function takeTesac(groups: Groups, levels: Level[], notes: string[], cut: boolean): Group | null {
  const seen = new Set<string>();
  for (let { next } = groups; next; next = groups.next) {
    const found = /^([234])(\d{4}|\/{4})$/.exec(next.text);
    if (!found || next.text === "00000") break;
    const [, lead = "", digits = ""] = found;
    const level = levels.at(-1);
    if (lead === "2") {
      seen.clear();
      if (digits === "////") groups.fail("a depth is missing", next);
      else addLevel(groups, levels, next, number(digits));
    } else if (!level) groups.fail(`group ${next.text} stands before the first depth`, next);
    else if (seen.has(lead)) groups.fail(`group ${next.text} stands twice at ${level.depth} m`, next);
    else if (lead === "3") setTemperature(groups, level, next, signed(digits, 2));
    else level.salinity = digits === "////" ? Number.NaN : number(digits) / 100;
    if (lead !== "2") seen.add(lead);
    groups.skip();
  }
  return takeEnd(groups, notes, cut);
}

/** Levels of a BATHY report: tens and units of depth with tenths of a degree; 999zz sets the hundreds. */
function takeBathy(groups: Groups, levels: Level[], notes: string[], cut: boolean): Group | null {
  let hundreds = 0;
  // whether a depth of 00 may come: before the first level, and after new hundreds
  let fresh = true;
  for (let { next } = groups; next && !ENDS.has(next.text); next = groups.next) {
    const [, newHundreds] = /^999(\d\d)$/.exec(next.text) ?? [];
    const [, units, tenths] = /^(\d\d)(\d{3}|\/{3})$/.exec(next.text) ?? [];
    // once there are levels, 00000 says that the deepest lies at the bottom
    if (next.text === "00000" && !fresh) break;
    if (newHundreds !== undefined) {
      if (number(newHundreds) <= hundreds) groups.fail(`${next.text} does not lead deeper`, next);
      hundreds = number(newHundreds);
      fresh = true;
    } else if (units !== undefined && tenths !== undefined) {
      const level = addLevel(groups, levels, next, hundreds * 100 + number(units));
      if (level) setTemperature(groups, level, next, signed(tenths, 1));
      fresh = false;
    } else break;
    groups.skip();
  }
  return takeEnd(groups, notes, cut);
}

/** Groups that end the levels: no sea water is so cold at these depths that they could be levels. */
const ENDS = new Set(["55555", "66666", "99999"]);

/** Bottom, currents, total depth, and who reports. */
function takeEnd(groups: Groups, notes: string[], cut: boolean): Group | null {
  if (groups.next?.text === "00000") {
    notes.push("the deepest level lies at the bottom");
    groups.skip();
  }
  const currents: string[] = [];
  if (/^66[\d/]{3}$/.test(groups.next?.text ?? ""))
    for (
      let { next } = groups;
      next && /^[\d/]{5}$/.test(next.text) && next.text !== "55555";
      next = groups.next
    ) {
      if (next.text === "99999") break;
      currents.push(next.text);
      groups.skip();
    }
  if (currents.length > 0) notes.push(`groups of currents: ${currents.join(" ")}`);
  if (groups.next?.text === "55555") {
    groups.skip();
    const total = groups.take(/^1(\d{4}|\/{4})$/, "the total depth (1ZdZdZdZd)");
    if (total.parts[0] && total.parts[0] !== "////") notes.push(`bottom depth = ${number(total.parts[0])} m`);
  }
  if (groups.next?.text === "99999") {
    groups.skip();
    const buoy = groups.take(/^(\d{5,7})$/, "the number of a buoy");
    if (buoy.parts[0]) notes.push(`buoy ${buoy.parts[0]}`);
  } else if (groups.next && /^(?=.*[A-Z])[A-Z0-9]{3,9}$/.test(groups.next.text)) {
    notes.push(`call sign ${groups.next.text}`);
    groups.skip();
  }
  const rest = groups.next;
  if (!rest) return null;
  if (cut) {
    groups.skip();
    if (!groups.next) return rest;
  }
  groups.fail(
    kindOf(rest.text) ? "a report begins inside another" : `group ${rest.text} has no place in the code form`,
    rest,
  );
  return null;
}
