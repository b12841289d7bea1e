/** Types of schemas/judgement.schema.json. Made by tools/generate.ts; change the schema, not this file. */

/**
 * One line of judgements.jsonl: a flag that a person set on rows of a cast, or the undoing of an earlier line. Lines are only added; later ones go before earlier ones where they meet.
 */
export interface Judgement {
  /**
   * Version of the form of this line; always 1.
   */
  version: 1;
  /**
   * Name of this line, unique in the file.
   */
  id: string;
  /**
   * Who judged.
   */
  who: string;
  /**
   * When, in UTC, as 2026-01-31T12:00:00Z.
   */
  when: string;
  /**
   * Why.
   */
  why: string;
  /**
   * Id of the cast.
   */
  cast?: string;
  /**
   * SHA-256 of the source file that was judged: if the file changes, the judgement is not applied and that is told.
   */
  sha256?: string;
  /**
   * Name of the variable, as temperature, salinity or pressure. What is computed from it takes the flag over.
   */
  quantity?: string;
  /**
   * First and last line of the source file.
   *
   * @minItems 2
   * @maxItems 2
   */
  lines?: [number, number];
  /**
   * Least and greatest sea pressure, dbar, in place of lines.
   *
   * @minItems 2
   * @maxItems 2
   */
  pressure?: [number, number];
  /**
   * IODE primary flag: 1 good, 2 not evaluated, 3 questionable, 4 bad.
   */
  flag?: 1 | 2 | 3 | 4;
  /**
   * Id of the earlier line that holds no longer.
   */
  undo?: string;
}
