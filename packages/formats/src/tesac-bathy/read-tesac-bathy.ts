import {
  type Cast,
  dayNumber,
  type Evidence,
  fail,
  type Problem,
  parseNumber,
  type Result,
  succeed,
} from "@wherry/core";
import type { Answered, Asking, ReadContext, Recognition } from "../asking.ts";
import { fileStem } from "../file-stem.ts";
import { settleTime } from "../settle-cast.ts";
import type { UnderstoodFile } from "../understood.ts";
import { type DecodedReport, decodeReport } from "./read-groups.ts";
import { columnsOf } from "./report-columns.ts";
import { type Group, type Report, splitReports } from "./reports.ts";

const NAMES = { TESAC: "WMO FM 64 TESAC", BATHY: "WMO FM 63 BATHY" } as const;

/** First years of the decades in which a report of these codes can have been sent. */
const DECADES = [1970, 1980, 1990, 2000, 2010, 2020] as const;

const decode = (bytes: Uint8Array): string => new TextDecoder("windows-1252").decode(bytes);

/** Signs of transmission lines before and after bulletins are no groups. */
const printable = (text: string): string => text.replace(/[^ -~\s]/g, "");

/** Whether a file begins like a bulletin: a report's first word with a date behind it, perhaps after headings. */
export function recogniseTesacBathy(bytes: Uint8Array): Recognition | null {
  const head = printable(decode(bytes.subarray(0, 400)));
  const found = /^(?:[A-Z0-9\s]*\s)?(KKYY|KKXX|JJVV|JJYY|JJXX)\s+\d{5}\s/.exec(head);
  if (!found) return null;
  const word = found[1]!;
  return {
    format: word.startsWith("KK") ? NAMES.TESAC : NAMES.BATHY,
    because: `a report begins with ${word} and a date`,
  };
}

/**
 * Casts of a bulletin of TESAC or BATHY reports, several in one file.
 *
 * Strict: every group has its place and form, depths increase, dates and positions exist; a report that breaks this is
 * refused and told, and reading goes on with the next. The year's decade is not in the report: it is asked.
 *
 * @source WMO Manual on Codes (No. 306), volume I.1, FM 63-XI and FM 64-XI
 */
export function readTesacBathy(
  bytes: Uint8Array,
  path: string,
  context: ReadContext,
): Result<UnderstoodFile> {
  const text = decode(bytes);
  const { reports, strays } = splitReports(printable(text));
  const findings: Problem[] = [];
  const decoded: { readonly report: DecodedReport; readonly source: Report }[] = [];
  for (const source of reports) {
    const read = decodeReport(source, !source.ended);
    if ("fault" in read) {
      findings.push(
        problem(
          "report",
          `the report that begins in line ${source.groups[0]!.line} is not taken: ${read.fault.message}`,
          read.fault.group,
          path,
          "Compare with the code form, or get the bulletin again.",
        ),
      );
      continue;
    }
    decoded.push({ report: read.report, source });
    if (!source.ended)
      findings.push(
        problem(
          "not-ended",
          `the report that begins in line ${source.groups[0]!.line} is not ended by "=": it may be cut off${read.lost ? `, and its last group ${read.lost.text} is left out` : ""}`,
          source.groups.at(-1)!,
          path,
          "Get the bulletin again, or compare its last level with the source.",
        ),
      );
  }
  for (const stray of strays) {
    if (stray.every(({ text: word }) => /^[A-Z]*$/.test(printable(word)))) continue;
    findings.push(
      problem(
        "stray",
        `groups that belong to no report: ${stray
          .slice(0, 6)
          .map(({ text: word }) => word)
          .join(" ")}`,
        stray[0]!,
        path,
        "A report begins with KKYY or JJVV. Get the bulletin again.",
      ),
    );
  }
  if (decoded.length === 0) {
    const [first, ...others] = findings;
    const none = problem(
      "no-report",
      "the file holds no report",
      { text: "", line: 1, column: 1 },
      path,
      "Is this the right file?",
    );
    return fail(first ?? none, ...others);
  }
  const stem = fileStem(path);
  const named = decoded.map((each, i) => ({ ...each, id: decoded.length === 1 ? stem : `${stem}-${i + 1}` }));
  const decades = settleDecades(named, context.asking);
  const casts = named.map(({ report, source, id }, i) =>
    castOf(report, source, id, decades[i]!, path, context),
  );
  const kinds = [...new Set(decoded.map(({ report }) => NAMES[report.kind]))];
  return succeed(
    {
      path,
      format: kinds.join(" and "),
      sha256: context.sha256,
      encoding: /[\x80-\xff]/.test(text) ? "windows-1252" : "utf-8",
      lineEnding: lineEndOf(text),
      delimiter: "whitespace",
      decimal: null,
      missingMarkers: ["/"],
      casts,
      questions: [],
      findings,
    },
    findings,
  );
}

function problem(
  code: string,
  message: string,
  { line, column }: Group,
  file: string,
  remedy: string,
): Problem {
  return { code: `tesac-bathy/${code}`, message, where: { file, line, column }, remedy };
}

function lineEndOf(text: string): UnderstoodFile["lineEnding"] {
  const ends = new Set(text.match(/\r\n|\n|\r/g));
  if (ends.size > 1) return "mixed";
  return ends.has("\r\n") ? "CRLF" : ends.has("\r") ? "CR" : "LF";
}

/** The year of each report by the decade that a person gives, for all reports or for one; null where it stays open. */
function settleDecades(
  reports: readonly { readonly report: DecodedReport; readonly id: string }[],
  asking: Asking,
): readonly (Answered<number> | null)[] {
  const digits = new Set(reports.map(({ report }) => report.yearDigit));
  const [digit] = digits;
  const candidates = DECADES.map((decade) => String(digits.size === 1 ? decade + digit! : decade));
  const matter = (wanted: readonly DecodedReport[]) => ({
    topic: "decade" as const,
    text:
      digits.size === 1
        ? `The year is told by its last figure, ${digit}, alone. Which year is it?`
        : "The years are told by their last figures alone. In which decade were the reports sent?",
    line: wanted[0]?.at.date.line ?? 1,
    candidates,
    read: (text: string) => readDecade(text, wanted),
    form: "a year with that last figure, or a decade such as 1990",
  });
  const own = reports.map(({ report, id }) => asking.given({ ...matter([report]), cast: id }));
  const open = reports.filter((_, i) => own[i] === null);
  if (open.length > 0)
    asking.settle({ ...matter(open.map(({ report }) => report)), holds: open.map(({ id }) => id) });
  return reports.map(({ report }, i) => {
    const answer = own[i];
    return answer ? { value: answer.value + report.yearDigit, because: answer.because } : null;
  });
}

/** First year of a decade, from it or from a year in it that fits every report; dates must exist in that year. */
function readDecade(text: string, reports: readonly DecodedReport[]): number | null {
  const year = /^\d{4}s?$/.test(text) ? parseNumber(text.slice(0, 4)) : Number.NaN;
  const decade = Math.floor(year / 10) * 10;
  if (!(decade >= 1950 && decade <= 2090)) return null;
  const fits = ({ yearDigit, month, day }: DecodedReport) =>
    (year === decade || year - decade === yearDigit) &&
    !Number.isNaN(dayNumber({ year: decade + yearDigit, month, day }, "standard"));
  return reports.every(fits) ? decade : null;
}

const two = (value: number) => String(value).padStart(2, "0");

function castOf(
  report: DecodedReport,
  source: Report,
  id: string,
  year: Answered<number> | null,
  path: string,
  { sha256, asking }: ReadContext,
): Cast {
  const evidence: Evidence[] = [];
  const say = (fact: string, certainty: Evidence["certainty"], because: string, { line, column }: Group) =>
    evidence.push({ fact, certainty, because, where: { file: path, line, column } });
  const { at, month, day, minutes, levels, yearDigit, resolution } = report;
  const clock = Number.isNaN(minutes) ? null : `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
  say(
    "date",
    "stated",
    `${at.date.text} says day ${day}, month ${month}, a year that ends in ${yearDigit}`,
    at.date,
  );
  let time = Number.NaN;
  if (clock === null) {
    const answer = settleTime(asking, {
      id,
      text: "The report leaves the time of day missing. When did the cast start?",
      line: at.time.line,
    });
    if (answer) {
      time = answer.value;
      say("time", "answered", answer.because, at.time);
    }
  } else {
    if (year) {
      time = dayNumber({ year: year.value, month, day }, "standard") * 86_400 + minutes * 60;
      say(
        "time",
        "answered",
        `${year.because}; ${at.time.text} says ${clock} UTC, the time of launch`,
        at.time,
      );
    } else
      say(
        "time",
        "unknown",
        `${at.time.text} says ${clock} UTC, but the decade of the year is not told`,
        at.time,
      );
  }
  const step = `to ${resolution} degree`;
  say(
    "latitude",
    "stated",
    `${at.latitude.text} gives quadrant ${at.latitude.text[0]} and the latitude, ${step}`,
    at.latitude,
  );
  say("longitude", "stated", `${at.longitude.text} gives the longitude, ${step}`, at.longitude);
  const columns = columnsOf(report, { id, time, asking }, say);
  return {
    id,
    kind: "profile",
    state: { processing: "averaged", pressureZeroed: false, lagCorrected: false, direction: "unknown" },
    rows: levels.length,
    time,
    timeRole: "start",
    endTime: Number.NaN,
    elapsed: null,
    start: { latitude: report.latitude, longitude: report.longitude, satellites: null, quality: null },
    end: null,
    fixedDepth: null,
    instrument: { model: null, serialNumber: null, ratedPressure: null },
    notes: [
      ...(source.heading.length > 0 ? [`heading: ${source.heading.map(({ text }) => text).join(" ")}`] : []),
      `resolution: position ${resolution} degree, depth 1 m, temperature ${report.kind === "TESAC" ? "0.01 degree Celsius, salinity 0.01" : "0.1 degree Celsius"}`,
      ...report.notes,
    ],
    columns,
    texts: new Map(),
    lines: Uint32Array.from(levels, ({ line }) => line),
    source: { path, sha256 },
    evidence,
    pressureOffset: Number.NaN,
    segments: [],
    steps: [],
  };
}
