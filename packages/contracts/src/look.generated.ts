/** Types of schemas/look.schema.json. Made by tools/generate.ts; change the schema, not this file. */

/**
 * ISO 8601, UTC.
 */
export type Time = string | null;
export type Number = number | null;

/**
 * What `wherry look --json` prints: what each file holds as understood. Times are ISO 8601 UTC; what is not known is null, never invented.
 */
export interface LookOutput {
  /**
   * Version of the form of this document.
   */
  version: 1;
  files: LookedAtFile[];
}
export interface LookedAtFile {
  path: string;
  format: string;
  sha256: string;
  /**
   * WHATWG label.
   */
  encoding: string | null;
  lineEnding: "LF" | "CRLF" | "CR" | "mixed" | null;
  /**
   * The character, `whitespace` or `fixed`.
   */
  delimiter: string | null;
  decimal: "." | "," | null;
  missingMarkers: string[];
  casts: LookedAtCast[];
  questions: OpenQuestion[];
}
export interface LookedAtCast {
  id: string;
  kind: "profile" | "fixed-depth";
  /**
   * What had already been done to the data when it came.
   */
  state: {
    [k: string]: unknown;
  };
  start: Time;
  end: Time;
  time: Time;
  timeRole: "start" | "bottom" | "end" | "unknown";
  latitude: Number;
  longitude: Number;
  endLatitude: Number;
  endLongitude: Number;
  /**
   * Nominal depth of a series, null for a profile.
   */
  fixedDepth: {
    [k: string]: unknown;
  };
  rows: number;
  columns: LookedAtColumn[];
}
export interface LookedAtColumn {
  header: string;
  standardName: string | null;
  /**
   * Unit in which the product stores it.
   */
  units: string | null;
  sourceUnits: string | null;
  first: Number;
  last: Number;
  sourceFirst: Number;
  sourceLast: Number;
  missing: number;
  /**
   * Why the column is taken for this quantity and unit.
   */
  evidence: {
    [k: string]: unknown;
  };
}
export interface OpenQuestion {
  about: string;
  /**
   * Place in the file.
   */
  where: {
    [k: string]: unknown;
  };
  /**
   * The question in words.
   */
  text?: string;
  /**
   * Casts that wait for the answer.
   */
  casts?: string[];
  candidates: string[];
  /**
   * The line to put under `answers:` in the sheet.
   */
  answerWith: string;
}
