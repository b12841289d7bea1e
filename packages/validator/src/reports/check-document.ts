import type { CheckOutput, CheckedFile as FileEntry, ReportedFinding } from "@wherry/contracts";
import type { CheckedFile } from "../engine/check-file.ts";
import type { Finding } from "../engine/finding.ts";

/** The generated type of a field that may hold any JSON value is narrower than its schema. */
const anyValue = (value: unknown) => value as NonNullable<ReportedFinding["found"]>;

function entryOf(finding: Finding): ReportedFinding {
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

const fileOf = ({ path, format, edition, ruleSets, findings, counts }: CheckedFile): FileEntry => ({
  path,
  format,
  edition,
  ruleSets: [...ruleSets],
  findings: findings.map(entryOf),
  counts: { ...counts },
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
  files: files.map(fileOf),
  skipped: [...skipped],
});
