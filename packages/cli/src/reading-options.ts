import type { Command } from "commander";

/** Options on how exports are read, for every command that reads them. */
export interface ReadingFlags {
  readonly answer?: readonly string[] | undefined;
  readonly notes?: readonly string[] | undefined;
}

const gather = (text: string, before: readonly string[] = []): readonly string[] => [...before, text];

export const addReadingOptions = (command: Command): Command =>
  command
    .option(
      "--answer <about=value>",
      "an answer for all files, before those of sheet and notes (repeatable)",
      gather,
    )
    .option("--notes <file>", "notes on how exports of one kind are read (repeatable)", gather);

export const readingOptions = ({ answer = [], notes = [] }: ReadingFlags) => ({ answers: answer, notes });
