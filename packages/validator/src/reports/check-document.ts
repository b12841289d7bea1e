import type { CheckOutput, CheckedFile as FileEntry, ReportedFinding } from "@wherry/contracts";
import type { CheckedFile } from "../engine/check-file.ts";
import { type Finding, isAtLeast, type Level } from "../engine/finding.ts";

/** The generated type of a field that may hold any JSON value is narrower than its schema. */
const anyValue = (value: unknown) => value as NonNullable<ReportedFinding["found"]>;

export function findingEntry(finding: Finding): ReportedFinding {
  const { rule, level, citation, where, message, found, expected, remedy } = finding;
  return {
    rule,
    level,
    citation,
    where: { ...where },
    message,
    ...(found === undefined ? {} : { found: anyValue(found) }),
    ...(expected === undefined ? {} : { expected: anyValue(expected) }),
    remedy,
  };
}

/** The entry of one file. */
export const fileEntry = ({
  path,
  format,
  edition,
  ruleSets,
  findings,
  counts,
  waived = [],
}: CheckedFile): FileEntry => ({
  path,
  format,
  edition,
  ruleSets: [...ruleSets],
  findings: findings.map(findingEntry),
  counts: { ...counts },
  ...(waived.length === 0
    ? {}
    : {
        waived: waived.map(({ finding, waiver: { reason, by, until } }) => ({
          finding: findingEntry(finding),
          reason,
          by,
          ...(until === undefined ? {} : { until }),
        })),
      }),
});

/**
 * The verdict on several files as the document that `wherry check --json` prints.
 *
 * @param skipped  paths of files that are of no kind that can be checked
 */
export const checkDocument = (
  files: readonly CheckedFile[],
  skipped: readonly string[] = [],
): CheckOutput => ({
  version: 1,
  files: files.map(fileEntry),
  skipped: [...skipped],
});

/** Lines of a JSON text but the first, moved to the right. */
const moved = (text: string, by: number): string => text.replaceAll("\n", `\n${" ".repeat(by)}`);

/** The text of the same document in pieces, for as many files as there are: none is kept. */
export interface DocumentPieces {
  file(checked: CheckedFile): string;
  end(skipped: readonly string[]): string;
}

/** @param level  findings of less weight are counted only */
export function documentPieces(level: Level = "advice"): DocumentPieces {
  let before = '{\n  "version": 1,\n  "files": [\n    ';
  let after = '{\n  "version": 1,\n  "files": []';
  return {
    file(checked) {
      const findings = checked.findings.filter((finding) => isAtLeast(finding.level, level));
      const text = before + moved(JSON.stringify(fileEntry({ ...checked, findings }), null, 2), 4);
      before = ",\n    ";
      after = "\n  ]";
      return text;
    },
    end: (skipped) => `${after},\n  "skipped": ${moved(JSON.stringify(skipped, null, 2), 2)}\n}\n`,
  };
}
