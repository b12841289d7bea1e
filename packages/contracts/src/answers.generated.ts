/** Types of schemas/answers.schema.json. Made by tools/generate.ts; change the schema, not this file. */

/**
 * A notes file: answers that hold for all exports of one kind, kept apart from any survey. The survey sheet's own answers go before these.
 */
export interface Answers {
  /**
   * Place of this schema, for editors that complete and check.
   */
  $schema?: string;
  /**
   * Version of the form of this file; always 1.
   */
  version: 1;
  /**
   * What these answers are for.
   */
  comment?: string;
  /**
   * Answers, one per question.
   */
  answers: NotedAnswer[];
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
