import { type Problem, parseNumber } from "@wherry/core";

/** Lines above the data of a WHP-Exchange CTD file. */
export interface WhpHeader {
  readonly identifier: string;
  readonly comments: readonly string[];
  /** Header names in capitals with their text. */
  readonly entries: ReadonlyMap<string, { readonly value: string; readonly line: number }>;
  /** Index of the line of parameter names. */
  readonly nameLine: number;
}

const MANDATORY = ["EXPOCODE", "STNNBR", "CASTNO", "DATE", "LATITUDE", "LONGITUDE"] as const;
const OPTIONAL = ["SECT_ID", "TIME", "DEPTH"] as const;

/**
 * Reads identifier, comments, the header count and the headers. A count that is one too small (it forgot its own
 * line) is repaired with a warning; any other contradiction is a problem.
 *
 * @source WHP-Exchange Format 1.2.1 (2024), Common Format Features and CTD Specific
 */
export function readHeader(
  lines: readonly string[],
  file: string,
  problems: Problem[],
  warnings: Problem[],
): WhpHeader | null {
  let at = 1;
  const comments: string[] = [];
  while (lines[at]?.startsWith("#")) comments.push(lines[at++]!.slice(1).trim());
  const count = /^\s*NUMBER_HEADERS\s*=\s*(\d+)\s*$/.exec(lines[at] ?? "");
  if (!count) {
    problems.push({
      code: "whp-exchange/number-headers",
      message: `line ${at + 1} should be NUMBER_HEADERS = n, it is "${(lines[at] ?? "").slice(0, 60)}"`,
      where: { file, line: at + 1 },
      remedy: "The count of header lines, itself included, comes first after the comments.",
    });
    return null;
  }
  const countLine = at + 1;
  const told = parseNumber(count[1]!);
  const entries = new Map<string, { value: string; line: number }>();
  at++;
  while (at < lines.length) {
    const entry = /^\s*([^=,]+?)\s*=\s*(.*?)\s*$/.exec(lines[at]!);
    if (!entry) break;
    const name = entry[1]!.toUpperCase();
    const where = { file, line: at + 1 };
    if (entries.has(name))
      problems.push({
        code: "whp-exchange/header-twice",
        message: `the header ${name} stands twice`,
        where,
        remedy: "Each header stands once.",
      });
    else entries.set(name, { value: entry[2]!, line: at + 1 });
    const known: readonly string[] = [...MANDATORY, ...OPTIONAL];
    if (!known.includes(name))
      warnings.push({
        code: "whp-exchange/free-header",
        message: `the header ${name} is not one that the format names; it is kept as a note`,
        where,
      });
    at++;
  }
  const found = entries.size + 1;
  if (told === found - 1)
    warnings.push({
      code: "whp-exchange/number-headers-short",
      message: `NUMBER_HEADERS is ${told}, but ${found} header lines stand here with its own: it does not count itself`,
      where: { file, line: countLine },
      remedy: `Write NUMBER_HEADERS = ${found}.`,
    });
  else if (told !== found)
    problems.push({
      code: "whp-exchange/number-headers",
      message: `NUMBER_HEADERS is ${told}, but ${found} header lines stand here with its own`,
      where: { file, line: countLine },
      remedy: `Write NUMBER_HEADERS = ${found}, or restore the missing lines.`,
    });
  for (const name of MANDATORY) {
    if (entries.get(name)?.value) continue;
    problems.push({
      code: "whp-exchange/header-missing",
      message: `the mandatory header ${name} is missing`,
      where: { file, line: countLine },
      remedy: `Add a line ${name} = … and count it in NUMBER_HEADERS.`,
    });
  }
  return { identifier: lines[0] ?? "", comments, entries, nameLine: at };
}

/** Epoch seconds UTC of DATE and TIME; NaN for a missing TIME (the hour is then not known). */
export function readWhpTime(
  header: WhpHeader,
  file: string,
  problems: Problem[],
  warnings: Problem[],
): number {
  const date = header.entries.get("DATE");
  const time = header.entries.get("TIME");
  if (!date) return NaN;
  const day = /^(\d{4})(\d\d)(\d\d)$/.exec(date.value);
  const [year = 0, month = 0, dayOfMonth = 0] = (day?.slice(1) ?? []).map(parseNumber);
  const midnight = Date.UTC(year, month - 1, dayOfMonth);
  if (!day || month < 1 || month > 12 || new Date(midnight).getUTCDate() !== dayOfMonth) {
    problems.push({
      code: "whp-exchange/date",
      message: `DATE is "${date.value}", which is no day of the calendar in the form YYYYMMDD`,
      where: { file, line: date.line },
      remedy: "Write the day as in 20230614.",
    });
    return NaN;
  }
  if (!time) {
    warnings.push({
      code: "whp-exchange/no-time",
      message: "TIME is absent: the hour of the cast is not known",
      where: { file, line: date.line },
    });
    return NaN;
  }
  const clock = /^(\d{2})(\d{2})$/.exec(time.value.padStart(4, "0"));
  const [hour = 99, minute = 99] = (clock?.slice(1) ?? []).map(parseNumber);
  if (!clock || hour > 23 || minute > 59) {
    problems.push({
      code: "whp-exchange/time",
      message: `TIME is "${time.value}", not a time of day in the form HHMM`,
      where: { file, line: time.line },
      remedy: "Write the time in UTC as in 0712.",
    });
    return NaN;
  }
  return midnight / 1000 + hour * 3600 + minute * 60;
}

/** A position header in signed decimal degrees. */
export function readDegrees(
  header: WhpHeader,
  name: "LATITUDE" | "LONGITUDE",
  file: string,
  problems: Problem[],
): number {
  const entry = header.entries.get(name);
  if (!entry) return NaN;
  const limit = name === "LATITUDE" ? 90 : 180;
  const degrees = /^[+]/.test(entry.value) ? NaN : parseNumber(entry.value);
  if (Math.abs(degrees) <= limit) return degrees;
  problems.push({
    code: "whp-exchange/position",
    message: `${name} is "${entry.value}", not signed decimal degrees between -${limit} and ${limit}`,
    where: { file, line: entry.line },
    remedy: "Write signed decimal degrees, as in -4.3101.",
  });
  return NaN;
}
