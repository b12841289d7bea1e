import {
  convertUnits,
  fail,
  nearestNames,
  type Problem,
  parseCells,
  parseDecimal,
  type Result,
} from "@wherry/core";
import type { Answer } from "@wherry/formats";
import { type Moment, momentOfCell, secondsOf } from "../understand/clock.ts";
import { type ColumnHead, readHead } from "../understand/column-head.ts";
import { openText } from "../understand/encoding.ts";
import { settleOrder, settleZone } from "../understand/file-facts.ts";
import { Inquiry } from "../understand/inquiry.ts";
import { oneDay } from "../understand/time-facts.ts";
import { readUnit, type UnitSpelling } from "../understand/vocabulary/unit-spellings.ts";
import { plainWords } from "../understand/words.ts";

/** What was written down of a cast. */
export interface LogLine {
  /** In the file, from 1. */
  readonly line: number;
  readonly cast: string | null;
  /** Epoch seconds; NaN if not told. */
  readonly time: number;
  readonly station: string | null;
  /** m; NaN if not told. */
  readonly sounding: number;
  readonly wind: string | null;
  readonly sea: string | null;
  readonly observer: string | null;
  readonly notes: string | null;
  readonly aborted: boolean;
}

export interface FieldLog {
  readonly path: string;
  readonly lines: readonly LogLine[];
  /** Settles what the log leaves open, and which line is a cast's. */
  readonly inquiry: Inquiry;
  /** Whether the log's zone and dates are known; without them only names join. */
  readonly hasTimes: boolean;
  readonly findings: readonly Problem[];
}

/** Names of the columns; each may have others beside the first. */
const COLUMNS = {
  cast: ["cast", "record", "cast name", "cast id"],
  station: ["station", "place", "site"],
  time: ["time", "start", "start time", "date time", "datetime", "date and time"],
  date: ["date", "day"],
  sounding: ["sounding", "water depth", "bottom depth"],
  wind: ["wind"],
  sea: ["sea", "sea state", "waves"],
  observer: ["observer", "observers", "by"],
  aborted: ["aborted"],
  notes: ["notes", "note", "remarks", "remark", "comment"],
} as const;
type Role = keyof typeof COLUMNS;

const YES = /^(?:yes|y|true|x|1|aborted)$/i;
const NO = /^(?:no|n|false|0|-)?$/i;

/**
 * A field log: CSV with one line a cast under the names cast, station, time (or date and time), sounding, wind, sea,
 * observer, aborted and notes, in any order; commas, semicolons or tabs.
 *
 * What the log does not say is asked: the zone of its times, the order of day and month, the unit of soundings. Times
 * of a line that can't be read are a finding, and the line joins by its name alone.
 *
 * @param path as answers and evidence call it
 * @param casts ids of the casts that wait where something is open
 * @returns problems fieldlog/… if it has no line of names or no rows
 */
export function readFieldLog(
  bytes: Uint8Array,
  path: string,
  answers: readonly Answer[],
  casts: readonly string[],
): Result<FieldLog> {
  const { bytes: content } = openText(bytes);
  const text = content.decode(0, content.size);
  const [firstLine = ""] = text.split(/\r\n?|\n/, 1);
  const delimiter = ["\t", ";", ","].find((sign) => firstLine.includes(sign)) ?? ",";
  const { rows } = parseCells(text, delimiter);
  const filled = rows.filter(({ cells }) => cells.some((cell) => cell.trim() !== ""));
  const [head, ...body] = filled;
  const heads = (head?.cells ?? []).map((cell) => readHead(cell, null));
  const roles = heads.map(roleOf);
  if (!head || !(roles.includes("time") || roles.includes("cast")))
    return fail({
      code: "fieldlog/columns",
      message: `${path} begins with no line of names that has cast or time`,
      where: { file: path, line: head?.line ?? 1 },
      remedy: `Name the columns: ${Object.keys(COLUMNS).join(", ")}.`,
    });
  const inquiry = new Inquiry(path, answers);
  const findings: Problem[] = unknownColumns(heads, roles, path, head.line);
  const cellsOf = (cells: readonly string[]) => (role: Role) => {
    const index = roles.indexOf(role);
    return index < 0 ? "" : (cells[index] ?? "").trim();
  };
  const moments = body.map(({ cells }) => {
    const cell = cellsOf(cells);
    return momentOfCell([cell("date"), cell("time")].filter((part) => part !== "").join(" "));
  });
  const headOf = (role: Role) => heads[roles.indexOf(role)] ?? null;
  const asking = { inquiry, path, casts, line: head.line };
  const times = timesOf(moments, headOf("time"), asking);
  const unit = soundingUnit(
    headOf("sounding"),
    body.map(({ cells }) => cellsOf(cells)("sounding")),
    asking,
  );
  const lines = body.map(({ cells, line }, index): LogLine => {
    const cell = cellsOf(cells);
    const text = (role: Role) => cell(role) || null;
    if (cell("time") !== "" && moments[index]?.secondOfDay == null)
      findings.push(unread("time", cell("time"), path, line));
    const depth = parseDecimal(cell("sounding"), { decimal: cell("sounding").includes(",") ? "," : "." });
    if (cell("sounding") !== "" && !(depth > 0))
      findings.push(unread("sounding", cell("sounding"), path, line));
    if (!YES.test(cell("aborted")) && !NO.test(cell("aborted")))
      findings.push(unread("aborted", cell("aborted"), path, line));
    return {
      line,
      cast: text("cast"),
      time: times?.[index] ?? Number.NaN,
      station: text("station"),
      sounding: unit && depth > 0 ? convertUnits(depth, unit.units, "m") : Number.NaN,
      wind: text("wind"),
      sea: text("sea"),
      observer: text("observer"),
      notes: text("notes"),
      aborted: !NO.test(cell("aborted")),
    };
  });
  return { ok: true, value: { path, lines, inquiry, hasTimes: times !== null, findings }, warnings: [] };
}

function roleOf({ name, header }: ColumnHead): Role | null {
  const words = [plainWords(name), plainWords(header)];
  const found = Object.entries(COLUMNS).find(([, names]) => names.some((each) => words.includes(each)));
  return (found?.[0] as Role | undefined) ?? null;
}

function unknownColumns(
  heads: readonly ColumnHead[],
  roles: readonly (Role | null)[],
  file: string,
  line: number,
): Problem[] {
  return heads.flatMap(({ header }, index): Problem[] => {
    if (roles[index] !== null || header === "") return [];
    const near = nearestNames(header, Object.keys(COLUMNS));
    return [
      {
        code: "fieldlog/column",
        message: `the column "${header}" of the field log is not used`,
        where: { file, line },
        remedy:
          near.length > 0
            ? `Did you mean ${near.join(" or ")}?`
            : `Known are ${Object.keys(COLUMNS).join(", ")}.`,
      },
    ];
  });
}

const unread = (what: string, text: string, file: string, line: number): Problem => ({
  code: `fieldlog/${what}`,
  message: `"${text}" in the column ${what} of the field log is not understood`,
  where: { file, line },
  remedy:
    what === "time"
      ? "Write times as 2025-05-13 08:12."
      : what === "aborted"
        ? "Write yes or leave it empty."
        : "Write a number above 0, with its unit in the name of the column.",
});

interface LogAsking {
  readonly inquiry: Inquiry;
  readonly path: string;
  /** That wait where something is open. */
  readonly casts: readonly string[];
  /** Of the names of the columns. */
  readonly line: number;
}

/** Times of the lines in UTC; null while zone or order of dates is open. */
function timesOf(
  moments: readonly (Moment | null)[],
  head: ColumnHead | null,
  { inquiry, path, casts, line }: LogAsking,
): readonly number[] | null {
  const known = moments.filter(
    (moment) => moment?.secondOfDay != null && moment.dates.length > 0,
  ) as Moment[];
  if (known.length === 0) return null;
  const { orders } = settleOrder(known, inquiry, path, casts, false);
  const needsZone = known.some(({ zone }) => zone?.minutes.length !== 1);
  const stated = head?.zone ? [{ zone: head.zone, line, words: head.header, signDoubtful: false }] : [];
  const zone = needsZone
    ? settleZone(stated, [], { path, inquiry }, casts, {
        text: `In which time zone are the times of the field log written, such as "${known[0]!.words}"?`,
        candidates: [],
        line,
      })
    : null;
  if ((needsZone && !zone) || orders?.size === 0) return null;
  return moments.map((moment) => {
    const day = moment ? oneDay(moment.dates, orders) : null;
    if (!moment || moment.secondOfDay === null || !day) return Number.NaN;
    const minutes = moment.zone?.minutes.length === 1 ? moment.zone.minutes[0]! : (zone?.minutes ?? 0);
    return secondsOf(day, moment.secondOfDay) - minutes * 60;
  });
}

/** Unit of the soundings: from the column's name, or asked. */
function soundingUnit(
  head: ColumnHead | null,
  cells: readonly string[],
  { inquiry, casts, line }: LogAsking,
): UnitSpelling | null {
  if (!head || cells.every((cell) => cell === "")) return null;
  if (head.unit?.kind === "length") return head.unit;
  const answer = inquiry.settle({
    topic: "units",
    column: head.header,
    holds: casts,
    text: `In which unit are the soundings of the field log, "${head.header}"?`,
    candidates: ["m", "ft", "fathom"],
    line,
    read: (value) => {
      const unit = readUnit(value);
      return unit?.kind === "length" ? unit : null;
    },
    form: "a unit of length such as m, ft or fathom",
  });
  return answer?.value ?? null;
}
