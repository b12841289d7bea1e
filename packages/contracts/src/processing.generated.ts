/** Types of schemas/processing.schema.json. Made by tools/generate.ts; change the schema, not this file. */

export type Sha256 = string;
export type Count = number;

/**
 * What was done to every cast of a data set, with parameters and counts. Rows count from 0 in the cast's data rows, lines of the source from 1; pressures are in dbar; what is not known is null.
 */
export interface ProcessingDocument {
  /**
   * Version of the form of this document.
   */
  version: 1;
  /**
   * Program and version that did it.
   */
  software: string;
  /**
   * Moment in UTC that every date of writing was taken from.
   */
  created?: string;
  /**
   * Name of the copy of the survey sheet beside this document.
   */
  sheet?: string;
  /**
   * The processing settings as used, every parameter with its value.
   */
  recipe: {
    [k: string]: unknown;
  };
  casts: ProcessedCast[];
  /**
   * Casts that were not written because a question about them is open.
   */
  held: HeldCast[];
}
export interface ProcessedCast {
  id: string;
  /**
   * SHA-256 over the content of the cast: values, flags, times and positions.
   */
  fingerprint: string;
  source: SourceOfACast;
  /**
   * Subtracted from the source's pressure, dbar; null if not determined.
   */
  pressureOffset: number | null;
  segments: SegmentOfACast[];
  deepestRow: number | null;
  /**
   * dbar
   */
  maxPressure: number | null;
  steps: Step[];
  /**
   * Rows by IODE primary flag, for each variable by its name in the products.
   */
  flags: {
    [k: string]: FlagCounts;
  };
}
export interface SourceOfACast {
  path: string;
  sha256: Sha256;
  firstLine: number | null;
  lastLine: number | null;
}
export interface SegmentOfACast {
  kind: "air" | "soak" | "down" | "bottom" | "up" | "stay" | "other";
  firstRow: Count;
  lastRow: Count;
}
export interface Step {
  step: string;
  parameters: {
    [k: string]: string | number | boolean | null | (string | number)[];
  };
  counts: {
    [k: string]: number;
  };
}
export interface FlagCounts {
  "1": Count;
  "2": Count;
  "3": Count;
  "4": Count;
  "9": Count;
}
export interface HeldCast {
  id: string;
  /**
   * What the open questions are about.
   *
   * @minItems 1
   */
  questions: [string, ...string[]];
}
