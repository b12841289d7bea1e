import { type Judging, judge } from "@wherry/survey";
import { Command, InvalidArgumentError, Option } from "commander";
import type { Context } from "../command.ts";
import { Exit, exitOf } from "../exit.ts";
import { harmless } from "../terminal.ts";

type Range = readonly [from: number, to: number];

interface Options {
  readonly cast?: string;
  readonly quantity?: string;
  readonly lines?: Range;
  readonly pressure?: Range;
  readonly flag?: string;
  readonly undo?: string;
  readonly why: string;
  readonly who: string;
  readonly judgements?: string;
}

const rangeParser =
  (number: string, words: string) =>
  (text: string): Range => {
    const found = new RegExp(`^(${number})(?:-(${number}))?$`).exec(text.replaceAll(" ", ""));
    if (!found) throw new InvalidArgumentError(words);
    const from = Number(found[1]);
    return [from, found[2] === undefined ? from : Number(found[2])];
  };

const parseLines = rangeParser("[1-9]\\d*", "Give lines of the source file, as 120-133.");
const parsePressures = rangeParser("-?\\d+(?:\\.\\d+)?", "Give sea pressures in dbar, as 4.5-6.");

export function judgeCommand({ terminal, now, finish }: Context): Command {
  return new Command("judge")
    .summary("set a person's flag on rows of a cast, or undo one")
    .description(
      "Adds a person's flag to judgements.jsonl beside the sheet; convert sets it after the automatic tests, and it wins\nover them. Nothing is deleted: a judgement is undone by a later one.",
    )
    .argument("<sheet>", "the survey sheet, which lists the cast with its sha256")
    .option("--cast <id>", "id of the cast")
    .option("--quantity <name>", "name of the variable, as temperature or pressure")
    .addOption(
      new Option("--lines <from-to>", "lines of the source file").argParser(parseLines).conflicts("pressure"),
    )
    .addOption(new Option("--pressure <from-to>", "sea pressures, dbar").argParser(parsePressures))
    .addOption(
      new Option("--flag <number>", "1 good, 2 not evaluated, 3 questionable, 4 bad").choices([
        "1",
        "2",
        "3",
        "4",
      ]),
    )
    .option("--undo <id>", "id of the judgement that holds no longer, instead of the five above")
    .requiredOption("--why <text>", "the reason")
    .requiredOption("--who <name>", "who judges")
    .option("--judgements <file>", "another file to add to")
    .addHelpText(
      "after",
      `
Examples:
  $ wherry judge survey.yaml --cast E24-03 --quantity conductivity --lines 120-133 --flag 4 --why "weed in the cell" --who "A. Invented"
  $ wherry judge survey.yaml --undo j1 --why "it was a sharp layer" --who "A. Invented"`,
    )
    .action(async (sheet: string, options: Options, command: Command) => {
      const { cast, quantity, flag, undo, lines, pressure, why, who, judgements } = options;
      const range = lines ?? pressure;
      let judged: Judging["judged"];
      if (undo !== undefined) {
        if ([cast, quantity, flag, range].some((option) => option !== undefined))
          command.error("error: --undo takes no cast, quantity, lines, pressure or flag");
        judged = { undo };
      } else {
        if (cast === undefined || quantity === undefined || flag === undefined || range === undefined)
          return command.error(
            "error: say --cast, --quantity, --flag and --lines or --pressure, or --undo a judgement",
          );
        judged = {
          cast,
          quantity,
          flag: Number(flag) as 1 | 2 | 3 | 4,
          range: { of: lines === undefined ? "pressure" : "lines", from: range[0], to: range[1] },
        };
      }
      const result = await judge(sheet, { judged, why, who, now, ...(judgements ? { judgements } : {}) });
      if (!result.ok) {
        result.problems.forEach(terminal.problem);
        return finish(exitOf(result.problems));
      }
      const { path, judgement } = result.value;
      terminal.out(`wrote judgement ${judgement.id} to ${harmless(path)}; wherry convert applies it\n`);
      finish(Exit.clean);
    });
}
