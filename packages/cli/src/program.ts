import { Command } from "commander";
import type { Context } from "./command.ts";

const EXIT_STATUS = `
Exit status: 0 nothing at or above the level asked for; 1 findings; 2 wrong usage or unanswered questions;
3 a file that cannot be read or written; 4 a fault of the program; 130 interrupted. The worst of several wins.

Results, sound speed and depth above all, are not for navigation or diving decisions: the hydrographic
authority and licensed practice decide.`;

type Make = (context: Context) => Command;

const making = () => import("./commands/making.ts");
const judging = () => import("./commands/judging.ts");

/** The commands in the order of the work. Each is loaded when it is called, for most of a short run is loading. */
const COMMANDS: ReadonlyMap<string, () => Promise<Make>> = new Map([
  ["look", async () => (await making()).lookCommand],
  ["sheet", async () => (await making()).sheetCommand],
  ["convert", async () => (await making()).convertCommand],
  ["judge", async () => (await making()).judgeCommand],
  ["check", async () => (await judging()).checkCommand],
  ["pack", async () => (await making()).packCommand],
  ["mend", async () => (await judging()).mendCommand],
  ["explain", async () => (await judging()).explainCommand],
  ["vocabulary", async () => (await judging()).vocabularyCommand],
]);

/**
 * The program with the commands that its arguments name, or with all of them if they name none. Commander's own
 * errors are thrown, not printed and exited on.
 */
export async function makeProgram(args: readonly string[], context: Context): Promise<Command> {
  const program = new Command("wherry")
    .description("Turns raw CTD casts into archive-ready data, and checks files before they are deposited.")
    .version(context.version)
    .option("--no-color", "no bold type in messages")
    .option("--debug", "show where in the program a fault happened")
    .addHelpText("after", "\nExample:\n  $ wherry look exports/2026-06-02.csv")
    .addHelpText("after", EXIT_STATUS);
  const [first] = args.filter((arg) => !arg.startsWith("-"));
  const called = COMMANDS.get(first ?? "");
  const loaders = called === undefined ? [...COMMANDS.values()] : [called];
  for (const make of await Promise.all(loaders.map((load) => load()))) program.addCommand(make(context));
  for (const command of [program, ...program.commands]) {
    command
      .exitOverride()
      .showSuggestionAfterError(true)
      .configureOutput({ writeErr: context.terminal.talk });
  }
  return program;
}
