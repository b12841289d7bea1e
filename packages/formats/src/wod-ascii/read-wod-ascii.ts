import { fail, type Place, type Problem, type Result, succeed } from "@wherry/core";
import type { ReadContext, Recognition } from "../asking.ts";
import { settleTimeRoles } from "../settle-cast.ts";
import type { UnderstoodFile } from "../understood.ts";
import { releaseOf } from "./codes.ts";
import { readProfile, type WodFault, type WodProfile } from "./profile.ts";
import { LINE, WodText } from "./stream.ts";
import { castOf } from "./wod-cast.ts";

const FORMAT = "World Ocean Database native ASCII";

/**
 * Whether a file begins like a profile of the format: version, size, cast number, country, date, position. A damaged
 * first profile is known by the look of its line all the same, so that the damage is told and not read as a table.
 */
export function recogniseWodAscii(bytes: Uint8Array): Recognition | null {
  const head = decode(bytes.subarray(0, 1000));
  if (head.length < LINE) return null;
  const says = (words: string) => ({
    format: FORMAT,
    because: `it begins with "${head.slice(0, 12)}": version ${head[0]}, ${releaseOf(head[0]!)}, and ${words}`,
  });
  if (/^[A-CQ\d][1-9]\d/.test(head)) {
    const read = readProfile(new WodText(head, ""), 0);
    const fault = "fault" in read ? read.fault : null;
    if (!fault || (fault.offset >= PRIMARY && !Number.isNaN(fault.size)))
      return says("a header of the format");
  }
  const [line = ""] = head.split(/\r?\n/, 1);
  const digits = line.replace(/\D/g, "").length;
  return /^[A-CQ][\dA-Za-z .-]{79}$/.test(line) && digits >= 50
    ? says("a line of 80 characters, mostly digits")
    : null;
}

/** Characters in which version, size, cast, country, cruise, date and position stand at the least. */
const PRIMARY = 40;

/**
 * Casts of a World Ocean Database file in its native ASCII form, several in one file.
 *
 * Strict: every notation, section and size must agree, depths increase, and the rest of a profile's last line is blank;
 * a profile that breaks this is refused as a whole and told, and reading goes on with the next. Lenient as the format
 * allows: CRLF line ends, blanks lost at the end of lines; of a profile that the file's end cuts off, whole levels stay.
 *
 * @source NODC Internal Report 14 (World Ocean Database 1998), table 12, and its reprint for 2001
 */
export function readWodAscii(bytes: Uint8Array, path: string, context: ReadContext): Result<UnderstoodFile> {
  const raw = decode(bytes);
  const text = new WodText(raw, path);
  const findings: Problem[] = [];
  const profiles: WodProfile[] = [];
  let line = 0;
  while (line < text.lines) {
    const read = readEither(text, line * LINE);
    if ("fault" in read) {
      findings.push(refused(text, line, read.fault));
      line = nextStart(text, line + 1);
      continue;
    }
    const { profile } = read;
    const end = profile.cut ? text.length : profile.offset + profile.size;
    const long = text.longLine(profile.offset, end);
    if (long)
      findings.push(
        problem(
          "line-length",
          `the line has more than ${LINE} characters; its profile is not taken`,
          long,
          "Get the file again.",
        ),
      );
    else profiles.push(profile);
    const short = text.shortLines(profile.offset, end);
    if (short.length > 0 && !long)
      findings.push(
        problem(
          "short-line",
          `${short.length === 1 ? "a line of" : `${short.length} lines of`} cast ${profile.cast} ended before character ${LINE} and ${short.length === 1 ? "was" : "were"} filled with blanks: ${short.slice(0, 8).join(", ")}`,
          { file: path, line: short[0]! },
          "Nothing needs to be done if a program had stripped blanks from line ends.",
        ),
      );
    if (profile.cut)
      findings.push(
        problem(
          "cut",
          `the file ends inside cast ${profile.cast}: ${profile.levels.length} of ${profile.levelCount} levels are whole and kept`,
          text.place(text.length),
          "Get the file again.",
        ),
      );
    line = Math.ceil(end / LINE);
  }
  const ids = idsOf(profiles);
  const casts = profiles.map((profile, i) => castOf(profile, ids[i]!, text, path, context));
  if (casts.length === 0) {
    const [first, ...others] = findings;
    return fail(
      first ??
        problem(
          "no-profile",
          "the file holds no profile",
          { file: path, line: 1 },
          "Is this the right file?",
        ),
      ...others,
    );
  }
  const answered = settleTimeRoles(casts, context.asking, {
    text: "Is the time of the casts their start, their bottom or their end? The format does not say.",
  });
  return succeed(
    {
      path,
      format: FORMAT,
      sha256: context.sha256,
      encoding: /[\x80-\xff]/.test(raw) ? "windows-1252" : "utf-8",
      lineEnding: lineEndOf(raw),
      delimiter: "fixed",
      decimal: null,
      missingMarkers: ["-"],
      casts: answered,
      questions: [],
      findings,
    },
    findings,
  );
}

/** One character for each byte, so that places in the text are places in the file. */
const decode = (bytes: Uint8Array): string => new TextDecoder("windows-1252").decode(bytes);

function lineEndOf(text: string): UnderstoodFile["lineEnding"] {
  const crlf = text.includes("\r\n");
  const lf = /(?<!\r)\n/.test(text);
  return crlf && lf ? "mixed" : crlf ? "CRLF" : "LF";
}

/** The oldest release begins with a digit, which may be the version alone or begin the size: the size decides. */
function readEither(text: WodText, offset: number): ReturnType<typeof readProfile> {
  const read = readProfile(text, offset);
  if (!("fault" in read) || !/^\d$/.test(text.slice(offset, offset + 1))) return read;
  const other = readProfile(text, offset, false);
  return "fault" in other || other.profile.cut ? read : other;
}

/** The next line that begins a profile, after one that was refused; damage is not taken for a beginning. */
function nextStart(text: WodText, from: number): number {
  for (let line = from; line < text.lines; line++) {
    const offset = line * LINE;
    if (!/^[A-CQ][1-9]\d/.test(text.slice(offset, offset + 3))) continue;
    const read = readProfile(text, offset);
    if (!("fault" in read) || read.fault.offset > offset + PRIMARY) return line;
  }
  return text.lines;
}

const problem = (code: string, message: string, where: Place, remedy: string): Problem => ({
  code: `wod-ascii/${code}`,
  message,
  where,
  remedy,
});

const refused = (text: WodText, line: number, { message, offset, size }: WodFault): Problem =>
  problem(
    "profile",
    `the profile that begins in line ${line + 1} is not taken: ${message}`,
    text.place(Math.min(offset, Math.max(text.length - 1, 0))),
    Number.isNaN(size)
      ? "Is this a World Ocean Database file in its native form? Get it again."
      : "The file is damaged here, or characters were lost or added. Get it again.",
  );

/** The unique cast numbers; numbered where a file holds one number twice. */
function idsOf(profiles: readonly WodProfile[]): readonly string[] {
  const seen = new Map<number, number>();
  return profiles.map(({ cast }) => {
    const times = (seen.get(cast) ?? 0) + 1;
    seen.set(cast, times);
    return times === 1 ? String(cast) : `${cast}-${times}`;
  });
}
