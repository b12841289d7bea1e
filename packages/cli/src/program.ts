import { Command } from "commander";
import type { Context } from "./command.ts";
import { checkCommand } from "./commands/check.ts";
import { convertCommand } from "./commands/convert.ts";
import { explainCommand } from "./commands/explain.ts";
import { lookCommand } from "./commands/look.ts";
import { sheetCommand } from "./commands/sheet.ts";
import { vocabularyCommand } from "./commands/vocabulary.ts";

const EXIT_STATUS = `
Exit status: 0 nothing at or above the level asked for; 1 findings; 2 wrong usage or unanswered questions;
3 a file that cannot be read or written; 4 a fault of the program; 130 interrupted. The worst of several wins.

Results, sound speed and depth above all, are not for navigation or diving decisions: the hydrographic
authority and licensed practice decide.`;

/** The program and its commands; commander's own errors are thrown, not printed and exited on. */
export function makeProgram(context: Context): Command {
  const program = new Command("wherry")
    .description("Turns raw CTD casts into archive-ready data, and checks files before they are deposited.")
    .version(context.version)
    .option("--no-color", "no bold type in messages")
    .option("--debug", "show where in the program a fault happened")
    .addHelpText("after", "\nExample:\n  $ wherry look exports/2026-06-02.csv")
    .addHelpText("after", EXIT_STATUS);
  const commands = [
    lookCommand,
    sheetCommand,
    convertCommand,
    checkCommand,
    explainCommand,
    vocabularyCommand,
  ];
  for (const make of commands) program.addCommand(make(context));
  for (const command of [program, ...program.commands]) {
    command
      .exitOverride()
      .showSuggestionAfterError(true)
      .configureOutput({ writeErr: context.terminal.talk });
  }
  return program;
}
