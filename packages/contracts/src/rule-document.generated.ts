/** Types of schemas/rule-document.schema.json. Made by tools/generate.ts; change the schema, not this file. */

/**
 * What an archive asks of a netCDF file, as rules that need no code. Each rule holds a JSON Schema against a description of the file's header.
 */
export interface RuleDocument {
  /**
   * Version of the form of this document.
   */
  version: 1;
  /**
   * Name of the set, by which it is chosen; ids of rules begin with it.
   */
  id: string;
  /**
   * What the set is, in one line.
   */
  title: string;
  /**
   * The source of the rules.
   */
  document: {
    /**
     * Name of the source as it is cited.
     */
    name: string;
    /**
     * Edition or date of the source.
     */
    edition: string;
    /**
     * Where the source can be read.
     */
    address?: string;
  };
  /**
   * What a reader should know, such as what was not verified.
   */
  note?: string;
  /**
   * JSON Schema on the description of the file: the rules are held against files that fit it. All files without it.
   */
  when?: {
    [k: string]: unknown;
  };
  /**
   * The rules.
   *
   * @minItems 1
   */
  rules: [DocumentRule, ...DocumentRule[]];
  products?: ProductsForAnArchive;
}
export interface DocumentRule {
  /**
   * Name of the rule within the set, never used again for something else.
   */
  id: string;
  /**
   * What a file that misses it gets.
   */
  level: "error" | "warning" | "advice";
  /**
   * The source says it; it is a reading of the source; it is the author's own.
   */
  basis: "clause" | "reading" | "house";
  /**
   * Section of the source.
   */
  clause: string;
  /**
   * The requirement in one line.
   */
  title: string;
  /**
   * What it is good for.
   */
  why: string;
  /**
   * What to do; {variable} is filled in.
   */
  remedy: string;
  /**
   * What is said of a file that misses it; {variable} is filled in.
   */
  message: string;
  /**
   * Whether the schemas are held against the file once, or against each of its variables.
   */
  each: "file" | "variable";
  /**
   * Attribute to point at.
   */
  attribute?: string;
  /**
   * JSON Schema: only what fits it is judged. All without it.
   */
  when?: {
    [k: string]: unknown;
  };
  /**
   * JSON Schema that must hold.
   */
  must: {
    [k: string]: unknown;
  };
  /**
   * CDL texts, whole or in fragments, that give nothing.
   */
  passing?: string[];
  /**
   * CDL texts, whole or in fragments, that give exactly one finding; with the name of the variable for rules on each variable.
   */
  failing?: (
    | string
    | {
        /**
         * The CDL text.
         */
        cdl: string;
        /**
         * The variable at which the finding stands.
         */
        variable: string;
      }
  )[];
}
/**
 * How data sets meant for this archive are written, and what a survey sheet has to tell for it.
 */
export interface ProductsForAnArchive {
  /**
   * Name by which the archive is chosen with --target.
   */
  target: string;
  /**
   * Arrangements of discrete sampling geometries (CF 9.3) that the archive takes.
   */
  layouts: {
    /**
     * Several casts in one file: one after the other in a contiguous ragged array; or each in a row of an array, orthogonal where all casts have the same levels, else incomplete (padded).
     */
    profiles: "ragged" | "multidimensional";
    /**
     * One cast in a file: like several casts; or without a dimension for casts.
     */
    profile: "ragged" | "multidimensional" | "single";
    /**
     * A series at a fixed depth: without a dimension for series; or with one of length 1.
     */
    series: "single" | "multidimensional";
  };
  /**
   * Attributes with a fixed text that this archive asks for beside those of CF and ACDD.
   */
  attributes?: ProductAttribute[];
  /**
   * What the survey sheet has to tell for this archive beside what CF and ACDD ask for.
   */
  sheet?: SheetFact[];
}
export interface ProductAttribute {
  /**
   * Whether it stands in the file once or on the variable of each instrument or platform.
   */
  on: "file" | "instruments" | "platforms";
  /**
   * Name of the attribute.
   */
  name: string;
  /**
   * Its text.
   */
  value: string;
  /**
   * Only in files of this kind; in all without it.
   */
  featureType?: "profile" | "timeSeries";
  /**
   * Only in files of this arrangement; in all without it.
   */
  layout?: "ragged" | "orthogonal" | "incomplete" | "single";
}
export interface SheetFact {
  /**
   * Place in the sheet, as survey.sea_name; instruments[].serial_number is asked of every instrument.
   */
  key: string;
  /**
   * How much it is missed.
   */
  level: "error" | "warning" | "advice";
  /**
   * Attribute that stays empty without it.
   */
  attribute?: string;
}
