/** Types of schemas/answers.schema.json. Made by tools/generate.ts; change the schema, not this file. */

/**
 * A notes file: what a person says once of all exports of one kind, kept apart from any survey. Answers on the command line and those of the survey sheet go before these.
 */
export interface ReadingNotes {
  /**
   * Place of this schema, for editors that complete and check.
   */
  $schema?: string;
  /**
   * Version of the form of this file; always 1.
   */
  version: 1;
  /**
   * What these notes are for.
   */
  comment?: string;
  /**
   * Words that stand near the top of every file of this kind; the notes are passed over in other text files. Without it they hold for all files.
   */
  files_with?: string;
  /**
   * Answers, one per question. What a file states itself is not asked and so not overruled.
   */
  answers?: NotedAnswer[];
  /**
   * Names of quantities in the heads of columns, beside those that the program knows.
   *
   * @minItems 1
   */
  names?: [NotedName, ...NotedName[]];
}
export interface NotedAnswer {
  /**
   * What the question is about, as timeZone.
   */
  about: string;
  /**
   * "*" for all files, the name of a file, or "<file name>#<cast id>".
   */
  where: string;
  /**
   * The answer.
   */
  value: string | number | boolean;
}
export interface NotedName {
  /**
   * The quantity by its name in this program, as temperature; the error message for an unknown one lists them.
   */
  quantity: string;
  /**
   * Language of the names, as de.
   */
  language: string;
  /**
   * Heads of columns without their unit. Case, accents and signs do not matter.
   *
   * @minItems 1
   */
  names: [string, ...string[]];
  /**
   * Unit of the numbers where the file gives none.
   */
  unit?: string;
  /**
   * How it is known: a manual, a label, a colleague.
   */
  evidence: string;
}
