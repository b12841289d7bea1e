import type { Cast, Place, Problem } from "@wherry/core";

/** Something ambiguous that only a person can settle. It holds back the casts it concerns. */
export interface Question {
  /** "position", "timeZone", "timeRole", "conductivityKind", "hemisphere", "dateOrder", "verticalReference" … */
  readonly about: string;
  /** In words, for a person. */
  readonly text: string;
  readonly where: Place;
  /** Ids of the casts that wait for the answer. */
  readonly casts: readonly string[];
  /** Possible answers; empty if any value of the right form will do. */
  readonly candidates: readonly string[];
  /** The line to put under `answers:` in the sheet, as YAML flow text. */
  readonly answerWith: string;
}

/** An answer given on the command line, in the sheet's `answers:` list or in a notes file. */
export interface Answer {
  readonly about: string;
  /** "*" for all files, a file name, or "<file name>#<cast id>". */
  readonly where: string;
  readonly value: string | number | boolean;
  /** Who gives it, as `the notes coast.yaml`; the sheet if not told. */
  readonly from?: string;
  /** Words that stand in every file that it is for; all files if not given. */
  readonly filesWith?: string;
}

/** What one file holds, as understood. */
export interface UnderstoodFile {
  readonly path: string;
  /** "delimited text", "WHP-Exchange CTD" … */
  readonly format: string;
  readonly sha256: string;
  /** WHATWG label; null, as the three that follow, for a file that is not text. */
  readonly encoding: string | null;
  readonly lineEnding: "LF" | "CRLF" | "CR" | "mixed" | null;
  /** The character, "whitespace" or "fixed". */
  readonly delimiter: string | null;
  readonly decimal: "." | "," | null;
  readonly missingMarkers: readonly string[];
  readonly casts: readonly Cast[];
  readonly questions: readonly Question[];
  /** Damage that did not stop the reading: rows too short, cut in mid-line … */
  readonly findings: readonly Problem[];
  /** Answers that settled something in this file; none if not given. */
  readonly answersUsed?: readonly Answer[];
}
