import { openDataset, type Source } from "@wherry/netcdf";
import { type CheckContext, findingOf, judgeDataset } from "./check-dataset.ts";
import type { EditionChoice } from "./edition.ts";
import { type Counts, countLevels, type Finding, worstFirst } from "./finding.ts";
import type { RuleSet } from "./rule.ts";

/** The verdict on one file. */
export interface CheckedFile {
  readonly path: string;
  /** Kind of file: "netCDF classic", "CSV with metadata" …; null if it could not be read at all. */
  readonly format: string | null;
  /** Edition of CF that it was judged by; null where none applies. */
  readonly edition: string | null;
  /** Why that edition; null where none applies. */
  readonly editionChoice: EditionChoice | null;
  readonly ruleSets: readonly RuleSet[];
  /** Worst first. */
  readonly findings: readonly Finding[];
  readonly counts: Counts;
}

export interface FileContext extends CheckContext {
  /** Bytes of the metadata document that lies beside a CSV file; null or absent if there is none. */
  readonly metadata?: Uint8Array | null;
}

export const checkedFile = (
  path: string,
  format: string | null,
  findings: readonly Finding[],
  ruleSets: readonly RuleSet[] = [],
  editionChoice: EditionChoice | null = null,
): CheckedFile => ({
  path,
  format,
  edition: editionChoice?.edition ?? null,
  editionChoice,
  ruleSets,
  findings: worstFirst(findings),
  counts: countLevels(findings),
});

/**
 * Judges a file: netCDF of any kind.
 *
 * @param source  the file's bytes, or random access to them
 * @returns       the verdict; a file that cannot be read has `format` null and the reason as its only finding
 */
export async function checkFile(source: Uint8Array | Source, context: FileContext): Promise<CheckedFile> {
  const { path } = context;
  const opened = await openDataset(source);
  if (!opened.ok)
    return checkedFile(
      path,
      null,
      opened.problems.map((problem) => findingOf(problem, path)),
    );
  const { edition, ruleSets, findings } = await judgeDataset(opened.value, context);
  return checkedFile(path, formatOf(opened.value.kind), findings, ruleSets, edition);
}

const formatOf = (kind: string): string => (kind.startsWith("netCDF") ? kind : `netCDF ${kind}`);
