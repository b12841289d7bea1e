/** Types of schemas/check.schema.json. Made by tools/generate.ts; change the schema, not this file. */

/**
 * What `wherry check --json` prints: findings per file.
 */
export interface CheckOutput {
  /**
   * Version of the form of this document.
   */
  version: 1;
  files: CheckedFile[];
  /**
   * Files met in a folder that are of no kind that can be checked.
   */
  skipped: string[];
}
export interface CheckedFile {
  path: string;
  /**
   * Kind of file; null if it could not be read at all.
   */
  format: string | null;
  /**
   * Edition of CF it was judged by.
   */
  edition: string | null;
  ruleSets: string[];
  findings: ReportedFinding[];
  counts: LevelCounts;
  /**
   * Findings that a person accepts; they are not among the findings and not counted.
   */
  waived?: WaivedFinding[];
}
export interface ReportedFinding {
  rule: string;
  level: "error" | "warning" | "advice";
  /**
   * Where the requirement stands; null for a fault of the file itself.
   */
  citation: {
    document: string;
    edition: string;
    clause: string;
  } | null;
  where: PlaceOfAFinding;
  message: string;
  /**
   * What stands there; any JSON value.
   */
  found?: {
    [k: string]: unknown;
  };
  /**
   * What should stand there; any JSON value.
   */
  expected?: {
    [k: string]: unknown;
  };
  remedy?: string;
}
/**
 * Lines and columns count from 1, bytes and indices from 0.
 */
export interface PlaceOfAFinding {
  file?: string;
  variable?: string;
  attribute?: string;
  dimension?: string;
  index?: number;
  line?: number;
  column?: number;
  byte?: number;
}
export interface LevelCounts {
  error: number;
  warning: number;
  advice: number;
}
export interface WaivedFinding {
  finding: ReportedFinding;
  reason: string;
  /**
   * Who accepts it.
   */
  by: string;
  /**
   * Last day on which it is accepted.
   */
  until?: string;
}
