/** Types of schemas/waivers.schema.json. Made by tools/generate.ts; change the schema, not this file. */

/**
 * Findings that a person has looked at and accepts, each with a reason and a name.
 */
export interface Waivers {
  /**
   * Version of the form of this document.
   */
  version: 1;
  /**
   * The waivers; the first that fits a finding counts.
   */
  waivers: Waiver[];
}
export interface Waiver {
  /**
   * Id of the rule.
   */
  rule: string;
  /**
   * Name of the file without folders; all files without it.
   */
  file?: string;
  /**
   * The variable; all places without it.
   */
  variable?: string;
  /**
   * The attribute; all without it.
   */
  attribute?: string;
  /**
   * Why the finding is accepted.
   */
  reason: string;
  /**
   * Who accepts it.
   */
  by: string;
  /**
   * Last day on which it counts (UTC); without end if it is not there.
   */
  until?: string;
}
