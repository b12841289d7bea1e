import type { Place } from "@wherry/core";
import type { CsvTable } from "./csv-table.ts";
import { NEWEST } from "./edition.ts";
import type { Finding } from "./finding.ts";
import type { Report, RuleText } from "./rule.ts";
import { gather } from "./run-rules.ts";

/** A table and its metadata as text. */
export interface CsvExample {
  readonly csv: string;
  /** Null: no document beside the table. */
  readonly metadata: string | null;
  /** How the table is stored where it is not UTF-8. */
  readonly encoding?: "windows-1252";
}

/** One requirement on a CSV file with its metadata, with the examples that are its tests. */
export interface CsvRule<Key extends string = string> extends RuleText<Key> {
  readonly passing: readonly CsvExample[];
  readonly failing: readonly (CsvExample & { readonly where: Place; readonly message: Key })[];
  check(table: CsvTable, report: Report<Key>): void;
}

/** Keeps the message keys of a rule, its reports and its examples in agreement. */
export const defineCsvRule = <const Key extends string>(rule: CsvRule<Key>): CsvRule =>
  rule as unknown as CsvRule;

/** The W3C recommendation on the metadata of tables. */
export const csvwClause = (clause: string) => ({
  document: "Metadata Vocabulary for Tabular Data",
  edition: "17 December 2015",
  clause,
});

/** RFC 4180, common format for CSV files. */
export const rfc4180 = (clause: string) => ({ document: "RFC 4180", edition: "2005", clause });

export async function runCsvRules(rules: readonly CsvRule[], table: CsvTable): Promise<Finding[]> {
  const findings: Finding[] = [];
  for (const rule of rules)
    findings.push(...(await gather(rule, NEWEST, (report) => rule.check(table, report))));
  return findings;
}
