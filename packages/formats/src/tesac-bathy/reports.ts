/** A group of signs between blanks, and where it stands. */
export interface Group {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

/** The groups of one report, from the word that begins it, and what stood before it. */
export interface Report {
  readonly kind: "TESAC" | "BATHY";
  readonly groups: readonly Group[];
  /** Headings of the bulletin before the report. */
  readonly heading: readonly Group[];
  /** Whether "=" ends it. */
  readonly ended: boolean;
}

const STARTS: Readonly<Record<string, Report["kind"]>> = {
  KKYY: "TESAC",
  KKXX: "TESAC",
  JJVV: "BATHY",
  JJYY: "BATHY",
  JJXX: "BATHY",
};

export const kindOf = (word: string): Report["kind"] | null => STARTS[word] ?? null;

/**
 * Splits a bulletin into its reports: "=" ends one, a word such as KKYY begins one.
 *
 * @returns the reports, and pieces that hold groups and begin no report
 */
export function splitReports(text: string): {
  readonly reports: readonly Report[];
  readonly strays: readonly (readonly Group[])[];
} {
  const reports: Report[] = [];
  const strays: (readonly Group[])[] = [];
  let heading: Group[] = [];
  let groups: Group[] | null = null;
  let kind: Report["kind"] = "TESAC";
  const close = (ended: boolean) => {
    if (groups) reports.push({ kind, groups, heading, ended });
    else if (heading.length > 0) strays.push(heading);
    groups = null;
    heading = [];
  };
  for (const [index, line] of text.split(/\r\n|\n|\r/).entries()) {
    for (const match of line.matchAll(/=|[^\s=]+/g)) {
      const group = { text: match[0], line: index + 1, column: match.index + 1 };
      const begins = kindOf(group.text);
      if (group.text === "=") close(true);
      else if (begins) {
        // a report that "=" does not end runs to the next one
        if (groups) close(false);
        kind = begins;
        groups = [group];
      } else if (groups) (groups as Group[]).push(group);
      else heading.push(group);
    }
  }
  close(false);
  return { reports, strays };
}
