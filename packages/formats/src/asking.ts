/** What open formats leave to be settled by a person. */
export type AskedTopic =
  | "decade"
  | "position"
  | "pressureKind"
  | "salinityScale"
  | "temperatureScale"
  | "time"
  | "timeRole"
  | "units";

/** A fact to settle: how to ask for it, and how a valid answer is read. */
export interface AskedMatter<T> {
  readonly topic: AskedTopic;
  /** Head of the column it is about. */
  readonly column?: string;
  /** Cast it is about; without one it is about the whole file. */
  readonly cast?: string;
  /** Casts that wait for it. */
  readonly holds: readonly string[];
  readonly text: string;
  readonly line?: number;
  readonly candidates: readonly string[];
  /** A value of the right form, for the line to copy; the first candidate if not given. */
  readonly example?: string;
  /** The answer's value, or null if it has the wrong form. */
  read(value: string): T | null;
  /** How a valid answer looks, in words. */
  readonly form: string;
}

export interface Answered<T> {
  readonly value: T;
  /** In words for evidence, quoting the answer. */
  readonly because: string;
}

/** The person's answers, as readers see them. Who makes it keeps the questions that stay open. */
export interface Asking {
  /** The answer to a matter; null if it stays a question. */
  settle<T>(matter: AskedMatter<T>): Answered<T> | null;
  /** An answer that a person gave although nothing has to be asked. */
  given<T>(matter: Pick<AskedMatter<T>, "topic" | "column" | "cast" | "read">): Answered<T> | null;
}

/** What a reader of an open format is told beside the bytes. */
export interface ReadContext {
  /** SHA-256 of the bytes, 64 hexadecimal digits. */
  readonly sha256: string;
  readonly asking: Asking;
}

/** That a file is of a format, and what in it says so. */
export interface Recognition {
  readonly format: string;
  readonly because: string;
}

/** Reads an answer that is one of some words. */
export const oneOfWords =
  <T extends string>(...words: readonly T[]) =>
  (text: string): T | null =>
    words.find((word) => word.toLowerCase() === text.trim().toLowerCase()) ?? null;
