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
  /**
   * Casts of these files that are the same cast twice.
   */
  sameCasts?: SameCastTwice[];
  /**
   * What was noticed beside the files, as answers that settled nothing.
   */
  warnings?: SomethingFound[];
}
export interface LookedAtFile {
  path: string;
  format: string;
  sha256: string;
  /**
   * WHATWG label; null, as the three that follow, for a file that is not text.
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
  /**
   * Damage that did not stop the reading, and answers that were not needed.
   */
  findings?: SomethingFound[];
}
export interface LookedAtCast {
  id: string;
  kind: "profile" | "fixed-depth";
  state: State;
  /**
   * Only in casts of a product of this program: nothing is done to them again.
   */
  finished?: true;
  start: Time;
  end: Time;
  time: Time;
  timeRole: "start" | "bottom" | "end" | "unknown";
  latitude: Number;
  longitude: Number;
  endLatitude: Number;
  endLongitude: Number;
  /**
   * Nominal depth of a series in m, null for a profile.
   */
  fixedDepth: number | null;
  rows: number;
  columns: LookedAtColumn[];
}
/**
 * What had already been done to the data when it came.
 */
export interface State {
  processing: "raw" | "averaged" | "unknown";
  pressureZeroed: boolean;
  lagCorrected: boolean;
  direction: "both" | "down" | "up" | "up-reversed" | "unknown";
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
  /**
   * As it stands in the source; text where it is no number, as a time.
   */
  sourceFirst: number | string | null;
  /**
   * As it stands in the source; text where it is no number, as a time.
   */
  sourceLast: number | string | null;
  missing: number;
  /**
   * Why the column is taken for this quantity and unit.
   */
  evidence: Reason[];
}
export interface Reason {
  certainty: "stated" | "implied" | "assumed" | "answered" | "unknown";
  because: string;
  line: number | null;
}
export interface OpenQuestion {
  about: string;
  where: Place;
  /**
   * The question in words.
   */
  text: string;
  /**
   * Casts that wait for the answer.
   */
  casts: string[];
  candidates: string[];
  /**
   * The line to put under `answers:` in the sheet.
   */
  answerWith: string;
}
/**
 * Place in the file.
 */
export interface Place {
  file: string;
  line?: number;
}
export interface SomethingFound {
  /**
   * Stable; the message may be reworded.
   */
  code: string;
  message: string;
  where: PlaceOfAFinding;
  remedy: string | null;
}
export interface PlaceOfAFinding {
  file?: string;
  line?: number;
  column?: number;
  byte?: number;
  variable?: string;
  attribute?: string;
  dimension?: string;
  index?: number;
}
export interface SameCastTwice {
  /**
   * @minItems 2
   * @maxItems 2
   */
  casts: [CastOfAFile, CastOfAFile];
  how: "exact" | "near";
  /**
   * In words, as "the longitude has the other sign".
   */
  differences: string[];
}
export interface CastOfAFile {
  path: string;
  id: string;
}
