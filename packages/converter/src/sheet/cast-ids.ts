import type { ListedCast, SurveySheet } from "@wherry/contracts";
import type { Cast, Problem } from "@wherry/core";
import { lineOfCast } from "./line-of-cast.ts";

/** Name of a file without folders. */
export const fileName = (path: string): string => path.split(/[/\\]/).at(-1) || path;

/** A text as an id: other characters become hyphens. Empty if nothing is left. */
export const asId = (text: string): string =>
  text
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .replaceAll(/[^A-Za-z0-9._-]+/g, "-")
    .replaceAll(/^[-.]+|[-.]+$/g, "")
    .slice(0, 80);

const stemOf = (path: string): string => asId(fileName(path).replace(/\.[^.]*$/, "")) || "cast";

/** A cast with its place in its file, where the file holds several. */
export interface PlacedCast {
  readonly cast: Cast;
  /** From 1; null if it is the only one of its file. */
  readonly number: number | null;
}

/** Casts in an order that does not depend on the order of files on the command line. */
export function placed(casts: readonly Cast[]): PlacedCast[] {
  const files = new Map<string, Cast[]>();
  for (const cast of casts) {
    const key = JSON.stringify([cast.source.path, cast.source.sha256]);
    const own = files.get(key);
    if (own) own.push(cast);
    else files.set(key, [cast]);
  }
  return [...files]
    .sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
    .flatMap(([, own]) => own.map((cast, index) => ({ cast, number: own.length > 1 ? index + 1 : null })));
}

/**
 * Ids for casts that have none in the sheet: the name that the source states if no other cast of the survey has
 * it, else the stem of the file's name, with -1, -2 … for several casts of one file. What is still taken gets
 * the next free number.
 *
 * @param taken ids that are in use, which stay as they are
 */
export function mintIds(casts: readonly PlacedCast[], taken: readonly string[]): Map<Cast, string> {
  const inUse = new Set(taken.map((id) => id.toLowerCase()));
  const stated = casts.map(({ cast }) => asId(cast.id));
  const count = new Map<string, number>();
  for (const id of stated) count.set(id.toLowerCase(), (count.get(id.toLowerCase()) ?? 0) + 1);
  const ids = new Map<Cast, string>();
  const take = (cast: Cast, id: string) => {
    ids.set(cast, id);
    inUse.add(id.toLowerCase());
  };
  for (const [index, { cast }] of casts.entries()) {
    const id = stated[index]!;
    if (id !== "" && count.get(id.toLowerCase()) === 1 && !inUse.has(id.toLowerCase())) take(cast, id);
  }
  for (const { cast, number } of casts) {
    if (ids.has(cast)) continue;
    const stem = stemOf(cast.source.path) + (number === null ? "" : `-${number}`);
    let id = stem;
    for (let n = 2; inUse.has(id.toLowerCase()); n++) id = `${stem}-${n}`;
    take(cast, id);
  }
  return ids;
}

/** Casts with the ids and the facts of their lines in the sheet. */
export interface CompletedSheet {
  /** The sheet with a line for every cast. */
  readonly sheet: SurveySheet;
  /** The casts under their ids, with what the sheet says of them put in. In the order given. */
  readonly casts: readonly Cast[];
  /** Lines that the sheet lacked. */
  readonly added: readonly ListedCast[];
  /** Lines of the sheet for which there is no cast. */
  readonly unused: readonly ListedCast[];
  readonly warnings: readonly Problem[];
}

/**
 * Finds each cast's line in the sheet, by the source's SHA-256 or else by the name of its file, and adds lines
 * for those that have none. The person's own lines are not changed.
 *
 * @param file name by which warnings call the sheet
 */
export function completeSheet(
  sheet: SurveySheet,
  casts: readonly Cast[],
  file = "the sheet",
): CompletedSheet {
  const lines = sheet.casts ?? [];
  const order = placed(casts);
  const used = new Set<ListedCast>();
  const found = new Map<Cast, ListedCast>();
  const warnings: Problem[] = [...sameContent(order)];
  /** Finds lines by what they and the casts have in common. */
  const look = (common: (file: string | undefined, sha256: string | undefined) => string | undefined) => {
    const byKey = new Map<string, ListedCast[]>();
    for (const line of lines) {
      const key = common(line.file, line.sha256);
      if (key === undefined || used.has(line)) continue;
      const same = byKey.get(key);
      if (same) same.push(line);
      else byKey.set(key, [line]);
    }
    for (const { cast, number } of order) {
      if (found.has(cast)) continue;
      const key = common(fileName(cast.source.path), cast.source.sha256);
      const line = byKey
        .get(key ?? "")
        ?.find((candidate) => !used.has(candidate) && (candidate.number ?? null) === number);
      if (!line) continue;
      found.set(cast, line);
      used.add(line);
    }
  };
  // a product tells the ids that its casts have for good
  for (const { cast } of order) {
    const line = cast.finished ? lineOfCast(sheet, cast.id) : undefined;
    if (!line || used.has(line)) continue;
    found.set(cast, line);
    used.add(line);
  }
  look((name, sha256) => (sha256 === undefined ? undefined : `${sha256} ${name}`));
  look((_, sha256) => sha256);
  look((name) => name);
  for (const [cast, line] of found)
    if (!cast.finished && line.sha256 !== undefined && line.sha256 !== cast.source.sha256)
      warnings.push({
        code: "sheet/source-changed",
        message: `${line.file} is not the file that cast ${line.id} was listed from: its SHA-256 differs`,
        where: { file },
        remedy: "If the file was corrected, put its new sha256 into the line; the id stays.",
      });
  const rest = order.filter(({ cast }) => !found.has(cast));
  const minted = mintIds(
    rest,
    lines.map(({ id }) => id),
  );
  const added = rest.map(
    ({ cast, number }): ListedCast => ({
      id: minted.get(cast)!,
      file: fileName(cast.source.path),
      ...(number === null ? {} : { number }),
      sha256: cast.source.sha256,
      ...cast.finished?.listed,
    }),
  );
  return {
    sheet: { ...sheet, casts: [...withTold(lines, found), ...added] },
    casts: casts.map((cast) => {
      const line = found.get(cast);
      return line ? withLine(cast, line, file) : { ...cast, id: minted.get(cast)! };
    }),
    added,
    unused: lines.filter((line) => !used.has(line)),
    warnings,
  };
}

/** Lines with what products tell of their casts beside them. */
function withTold(lines: readonly ListedCast[], found: ReadonlyMap<Cast, ListedCast>): ListedCast[] {
  const told = new Map([...found].map(([{ finished }, line]) => [line, finished?.listed]));
  return lines.map((line) => ({ ...told.get(line), ...line }));
}

/** The cast with what its line in the sheet says. */
function withLine(cast: Cast, line: ListedCast, file: string): Cast {
  const named = { ...cast, id: line.id };
  if (line.latitude === undefined || line.longitude === undefined) return named;
  const said = (fact: "latitude" | "longitude", value: number) => ({
    fact,
    certainty: "answered" as const,
    because: `the line of ${line.id} in the sheet says ${value}`,
    where: { file },
  });
  return {
    ...named,
    start: { latitude: line.latitude, longitude: line.longitude, satellites: null, quality: null },
    evidence: [...cast.evidence, said("latitude", line.latitude), said("longitude", line.longitude)],
  };
}

/** The same bytes under several names are most likely one cast copied. */
function sameContent(order: readonly PlacedCast[]): Problem[] {
  const paths = new Map<string, Set<string>>();
  for (const { cast } of order) {
    const known = paths.get(cast.source.sha256) ?? new Set();
    paths.set(cast.source.sha256, known.add(cast.source.path));
  }
  return [...paths.values()]
    .filter((own) => own.size > 1)
    .map((own) => ({
      code: "sheet/same-content",
      message: `${[...own].join(" and ")} hold the same bytes`,
      where: { file: [...own][0]! },
      remedy: "Give each cast once.",
    }));
}
