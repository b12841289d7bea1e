import type { ListedCast, SurveySheet } from "@wherry/contracts";
import { type Cast, fail, type Problem, type Result, succeed } from "@wherry/core";
import type { Answer, Question } from "@wherry/formats";
import { asId, type CompletedSheet, fileName } from "../sheet/cast-ids.ts";
import { agreedNames } from "../sheet/identity-conflicts.ts";
import { writeUtc } from "../understand/utc-text.ts";
import type { FieldLog, LogLine } from "./read-field-log.ts";

/** What a log tells of casts by their ids, as the lines of a sheet hold it. */
export type LoggedFacts = Pick<ListedCast, "station" | "sounding" | "wind" | "sea" | "observer" | "notes">;

export interface JoinedLog {
  readonly facts: ReadonlyMap<string, LoggedFacts>;
  readonly questions: readonly Question[];
  /** Casts without a line, lines without a cast, aborted casts, cells that are not understood. */
  readonly warnings: readonly Problem[];
  readonly answersUsed: readonly Answer[];
}

/** A log's time is that of the cast within this, s: a watch, and the minute that was written down. House value. */
const NEAR = 600;
/** Two lines, or two casts, of which one is nearer by less than this can't be told apart, s. */
const APART = 120;

/**
 * Finds the line of each cast: by its name where the log has it, else by its time. Times that a name joins must not
 * lie further apart than `NEAR`; what fits more than one way is asked (`logLine`), and a line joins one cast only.
 *
 * @param casts under the ids of the sheet
 * @returns     problems answers/… where an answer has the wrong form
 */
export function joinFieldLog(
  log: FieldLog,
  casts: readonly Cast[],
  sheet: Pick<SurveySheet, "people">,
): Result<JoinedLog> {
  const { inquiry, lines, path } = log;
  const joined = new Map<Cast, LogLine>();
  const taken = new Map<LogLine, Cast>();
  const warnings: Problem[] = [...log.findings];
  const rest: Cast[] = [];
  const join = (cast: Cast, line: LogLine) => {
    joined.set(cast, line);
    taken.set(line, cast);
  };
  const ask = (cast: Cast, text: string, candidates: readonly LogLine[]) => {
    const answer = inquiry.settle({
      topic: "logLine",
      cast: cast.id,
      holds: [cast.id],
      text,
      candidates: [...candidates.map(({ line }) => String(line)), "none"],
      read: (value) =>
        value === "none" ? value : (lines.find(({ line }) => String(line) === value) ?? null),
      form: "the number of a line of the field log, or none",
    });
    if (answer && answer.value !== "none") join(cast, answer.value);
  };
  for (const cast of casts) {
    const named = lines.filter(
      (line) => line.cast !== null && namesOf(cast).includes(line.cast.toLowerCase()),
    );
    const [only] = named;
    if (!only) rest.push(cast);
    else if (named.length > 1)
      ask(cast, `Which line of the field log is that of ${cast.id}? Several have its name.`, named);
    else if (distance(only, cast) > NEAR)
      ask(
        cast,
        `The field log has ${cast.id} at ${writeUtc(only.time)}, its file at ${writeUtc(cast.time)}. Is line ${only.line} that of this cast all the same? If not, correct the zone of one of them.`,
        [only],
      );
    else join(cast, only);
  }
  // a line that names another cast is that one's
  const open = lines.filter(
    (line) =>
      !taken.has(line) &&
      (line.cast === null || !casts.some((cast) => namesOf(cast).includes(line.cast!.toLowerCase()))),
  );
  for (const cast of rest) {
    const near = byDistance(open, (line) => distance(line, cast));
    const [best, second] = near;
    if (!best) continue;
    const rivals = byDistance(
      rest.filter((other) => other !== cast),
      (other) => distance(best.what, other),
    );
    const isClear = (other: { readonly apart: number } | undefined) =>
      other === undefined || other.apart - best.apart >= APART;
    if (isClear(second) && isClear(rivals[0])) join(cast, best.what);
    // a line that is clearly another cast's is not this one's
    else if (!rivals[0] || rivals[0].apart > best.apart - APART)
      ask(
        cast,
        `Which line of the field log is that of ${cast.id}, which began at ${writeUtc(cast.time)}? More than one fits.`,
        near.filter(({ apart }) => apart - best.apart < APART).map(({ what }) => what),
      );
  }
  for (const cast of casts)
    if (!joined.has(cast) && !inquiry.questions.some(({ casts: held }) => held.includes(cast.id)))
      warnings.push(
        noted("no-line", `${cast.id} (${cast.source.path}) has no line in the field log`, { file: path }),
      );
  for (const line of lines) {
    const cast = taken.get(line);
    const what = line.cast ?? line.station ?? "";
    const when = Number.isNaN(line.time) ? "" : ` at ${writeUtc(line.time)}`;
    const where = { file: path, line: line.line };
    if (cast && line.aborted)
      warnings.push(noted("aborted", `the field log says that ${cast.id} was aborted`, where));
    else if (!cast && line.aborted)
      warnings.push(noted("aborted", `an aborted cast without a file: ${what}${when}`, where));
    else if (!cast)
      warnings.push(noted("no-file", `no file is that of this line of the field log: ${what}${when}`, where));
  }
  const agreed = agreedNames(sheet);
  const facts = new Map<string, LoggedFacts>();
  const unnamed = new Set<string>();
  for (const [cast, line] of joined) {
    const mayName = line.observer !== null && agreed.has(line.observer.toLowerCase());
    if (line.observer !== null && !mayName) unnamed.add(cast.id);
    facts.set(cast.id, factsOf(line, mayName));
  }
  if (unnamed.size > 0)
    warnings.push({
      ...noted(
        "consent",
        `the observers of ${unnamed.size} casts are not named in the products: the sheet has no consent of theirs`,
        { file: path },
      ),
      remedy: "Name them under people: with consent: true if they agreed.",
    });
  const [first, ...others] = inquiry.problems(casts.map(({ id }) => id));
  if (first) return fail(first, ...others);
  return succeed({ facts, questions: inquiry.questions, warnings, answersUsed: inquiry.used });
}

const noted = (what: string, message: string, where: Problem["where"]): Problem => ({
  code: `fieldlog/${what}`,
  message,
  where,
});

/** Names by which a log may call a cast: its id, and its file. */
const namesOf = ({ id, source }: Cast): string[] => {
  const file = fileName(source.path);
  return [id, asId(id), file, file.replace(/\.[^.]*$/, "")].map((name) => name.toLowerCase());
};

/** Seconds between a line and the record of a cast; 0 within it, NaN where one has no time. */
function distance(line: LogLine, cast: Cast): number {
  const end = Number.isNaN(cast.endTime) ? cast.time : Math.max(cast.time, cast.endTime);
  return Math.max(cast.time - line.time, line.time - end, 0);
}

/** What is near, the nearest first. */
const byDistance = <T>(
  all: readonly T[],
  apart: (what: T) => number,
): { readonly what: T; readonly apart: number }[] =>
  all
    .map((what) => ({ what, apart: apart(what) }))
    .filter((each) => each.apart <= NEAR)
    .sort((a, b) => a.apart - b.apart);

function factsOf(
  { station, sounding, wind, sea, observer, notes, aborted }: LogLine,
  mayName: boolean,
): LoggedFacts {
  const remarks = [aborted ? "aborted" : null, notes].filter((part) => part !== null).join("; ");
  return {
    ...(station === null ? {} : { station }),
    ...(Number.isNaN(sounding) ? {} : { sounding }),
    ...(wind === null ? {} : { wind }),
    ...(sea === null ? {} : { sea }),
    ...(mayName && observer !== null ? { observer } : {}),
    ...(remarks === "" ? {} : { notes: remarks }),
  };
}

/** A sheet's casts with what the log tells of each; what the sheet says already goes before it. */
export function withLog(completed: CompletedSheet, facts: JoinedLog["facts"]): CompletedSheet {
  const filled = (casts: readonly ListedCast[]) => casts.map((cast) => ({ ...facts.get(cast.id), ...cast }));
  const sheet = { ...completed.sheet, casts: filled(completed.sheet.casts ?? []) };
  return { ...completed, sheet, added: filled(completed.added) };
}
