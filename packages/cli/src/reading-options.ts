import type { Command } from "commander";

/** Options on how exports are read, for every command that reads them. */
export interface ReadingFlags {
  readonly answer?: readonly string[] | undefined;
  readonly notes?: readonly string[] | undefined;
  readonly fieldLog?: string | undefined;
}

const gather = (text: string, before: readonly string[] = []): readonly string[] => [...before, text];

/** For the commands that gather casts into a survey. */
export const addFieldLogOption = (command: Command): Command =>
  command.option("--field-log <file>", "what was written down of each cast, as CSV");

export const addReadingOptions = (command: Command): Command =>
  command
    .option(
      "--answer <about=value>",
      "an answer for all files, before those of sheet and notes (repeatable)",
      gather,
    )
    .option("--notes <file>", "notes on how exports of one kind are read (repeatable)", gather);

export const readingOptions = ({ answer = [], notes = [], fieldLog }: ReadingFlags) => ({
  answers: answer,
  notes,
  ...(fieldLog === undefined ? {} : { fieldLog }),
});
