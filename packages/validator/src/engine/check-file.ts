import { openDataset, type Source } from "@wherry/netcdf";
import { csvRules } from "../rules/csv/index.ts";
import { type CheckContext, findingOf, judgeDataset } from "./check-dataset.ts";
import { runCsvRules } from "./csv-rule.ts";
import { readCsvTable } from "./csv-table.ts";
import type { EditionChoice } from "./edition.ts";
import { type Counts, countLevels, type Finding, worstFirst } from "./finding.ts";
import type { RuleSet } from "./rule.ts";
import type { WaivedFinding } from "./waivers.ts";

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
  /** Findings that a person accepts; they are not among `findings` and not counted. */
  readonly waived?: readonly WaivedFinding[];
}

export interface FileContext extends Omit<CheckContext, "full"> {
  /** Bytes of the metadata document that lies beside a CSV file; null or absent if there is none. */
  readonly metadata?: Uint8Array | null;
  /** The full data beside a file of layer means, to be compared with it; not used if it cannot be read. */
  readonly full?: { readonly path: string; readonly source: Uint8Array | Source };
}

/** The verdict with the findings of some rules alone, and the faults of the file itself. */
export function onlyRules(checked: CheckedFile, ids: ReadonlySet<string>): CheckedFile {
  const findings = checked.findings.filter(({ rule, citation }) => citation === null || ids.has(rule));
  return { ...checked, findings, counts: countLevels(findings) };
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
 * Judges a file: netCDF of any kind, or (by its name) CSV with the metadata document handed in.
 *
 * @param source  the file's bytes, or random access to them
 * @returns       the verdict; a file that cannot be read has `format` null and the reason as its only finding
 */
export async function checkFile(source: Uint8Array | Source, context: FileContext): Promise<CheckedFile> {
  const { path, full, ...others } = context;
  if (/\.csv$/i.test(path)) return checkCsv(source, context);
  const opened = await openDataset(source);
  if (!opened.ok)
    return checkedFile(
      path,
      null,
      opened.problems.map((problem) => findingOf(problem, path)),
    );
  const dataset = opened.value;
  // what is wrong with the other file is told where that one is checked
  const other = full === undefined ? null : await openDataset(full.source);
  const beside = full !== undefined && other?.ok ? { full: { path: full.path, dataset: other.value } } : {};
  try {
    const { edition, ruleSets, findings } = await judgeDataset(dataset, { ...others, ...beside, path });
    return checkedFile(path, formatOf(dataset.kind), findings, ruleSets, edition);
  } finally {
    dataset.close?.();
    if (other?.ok) other.value.close?.();
  }
}

/** Name of the full data that belongs to a file of layer means: "a_full.nc" for "a_binned.nc"; null for any other. */
export const fullNameOf = (path: string): string | null =>
  /_binned\.nc4?$/i.test(path) ? path.replace(/_binned(\.nc4?)$/i, "_full$1") : null;

const formatOf = (kind: string): string => (kind.startsWith("netCDF") ? kind : `netCDF ${kind}`);

async function checkCsv(source: Uint8Array | Source, context: FileContext): Promise<CheckedFile> {
  const { path, metadata = null, ruleSets } = context;
  const bytes = source instanceof Uint8Array ? source : await source.read(0, source.size);
  if (bytes.length === 0 || bytes.includes(0)) {
    const message = bytes.length === 0 ? "the file is empty" : "the file holds bytes that are no text";
    const problem = { code: "csv/no-text", message, where: {}, remedy: "Check that this is the right file." };
    return checkedFile(path, null, [findingOf(problem, path)]);
  }
  if (ruleSets?.includes("csv") === false) return checkedFile(path, "CSV", [], []);
  const findings = await runCsvRules(csvRules, readCsvTable(bytes, metadata, path));
  const placed = findings.map((finding) => ({ ...finding, where: { file: path, ...finding.where } }));
  return checkedFile(path, "CSV", placed, ["csv"]);
}
