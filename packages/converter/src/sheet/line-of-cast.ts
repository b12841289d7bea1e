import type { ListedCast, SurveySheet } from "@wherry/contracts";

/** The line of a cast in a sheet; undefined if it has none. */
export function lineOfCast({ casts }: SurveySheet, id: string): ListedCast | undefined {
  if (casts === undefined) return undefined;
  let lines = known.get(casts);
  if (lines === undefined) {
    lines = new Map();
    for (const line of casts) if (!lines.has(line.id)) lines.set(line.id, line);
    known.set(casts, lines);
  }
  return lines.get(id);
}

/** Every product of every cast asks for lines of the same sheet. */
const known = new WeakMap<readonly ListedCast[], Map<string, ListedCast>>();
