/** Types of schemas/mend.schema.json. Made by tools/generate.ts; change the schema, not this file. */

/**
 * What `wherry mend --json` prints.
 */
export interface MendOutput {
  version: 1;
  /**
   * Path of the file that was given.
   */
  file: string;
  /**
   * Path of the file that was written.
   */
  out: string;
  /**
   * Attributes that were changed, in the order in which it was done.
   */
  changes: ChangedAttribute[];
  /**
   * Findings on the file as written, which a person must decide; as check prints them.
   */
  left: ReportedFinding[];
  counts: LevelCounts;
}
export interface ChangedAttribute {
  /**
   * Rule whose finding was mended.
   */
  rule: string;
  /**
   * Null for an attribute of the file.
   */
  variable: string | null;
  attribute: string;
  /**
   * What stood there: text, number or list; null for nothing.
   */
  from: {
    [k: string]: unknown;
  };
  /**
   * What stands there now; null where it was taken away.
   */
  to: {
    [k: string]: unknown;
  };
  /**
   * What was found.
   */
  because: string;
  /**
   * Type of what stood there, as netCDF names it.
   */
  fromType: string | null;
  /**
   * Type of what stands there now.
   */
  toType: string | null;
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
