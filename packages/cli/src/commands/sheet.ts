import { checkSheet, makeSheet, TARGETS } from "@wherry/survey";
import { Command } from "commander";
import type { Context } from "../command.ts";
import { Exit, type ExitCode, exitOf } from "../exit.ts";
import {
  addFieldLogOption,
  addReadingOptions,
  type ReadingFlags,
  readingOptions,
} from "../reading-options.ts";
import type { Terminal } from "../terminal.ts";

interface Options extends ReadingFlags {
  readonly out?: string;
  readonly check?: string;
  readonly target: string;
  readonly id?: string;
  readonly force?: boolean;
}

export function sheetCommand({ terminal, now, signal, finish }: Context): Command {
  return addFieldLogOption(addReadingOptions(new Command("sheet")))
    .summary("write a survey sheet from what the files tell, or say what a sheet still lacks")
    .description(
      "Writes a survey sheet filled with what the files tell, or says what a sheet still lacks for an archive.",
    )
    .argument("[path...]", "exports or folders of them")
    .option("-o, --out <file>", "the sheet to write")
    .option("--id <id>", "id of the survey, which begins the names of its products")
    .option("--check <sheet>", "a sheet to look through instead of writing one")
    .option(
      "--target <name>",
      `what the data set is meant for: ${TARGETS.join(", ")}, or a document of rules`,
      "general",
    )
    .option("--force", "replace a sheet that exists")
    .addHelpText(
      "after",
      "\nExamples:\n  $ wherry sheet exports/ --out survey.yaml\n  $ wherry sheet --check survey.yaml --target general",
    )
    .action(async (paths: string[], options: Options, command: Command) => {
      if (options.check !== undefined)
        return finish(await lookThrough(options.check, options.target, terminal));
      if (paths.length === 0)
        command.error("error: name the exports that the sheet is for, or --check a sheet");
      if (options.out === undefined) command.error("error: say with --out where the sheet goes");
      const { out, force = false, id } = options;
      const result = await makeSheet(paths, {
        ...readingOptions(options),
        out,
        force,
        now,
        signal,
        ...(id === undefined ? {} : { id }),
      });
      if (!result.ok) {
        result.problems.forEach(terminal.problem);
        return finish(exitOf(result.problems));
      }
      const { casts, questions, problems, warnings } = result.value;
      [...warnings, ...problems].forEach(terminal.problem);
      terminal.out(`wrote ${out}: ${casts} casts, ${questions} open questions\n`);
      terminal.out(`next: fill in what is marked there, then wherry sheet --check ${out}\n`);
      finish(problems.length > 0 ? Exit.unreadable : questions > 0 ? Exit.usage : Exit.clean);
    });
}

/** Says what a sheet still lacks. Only what the target insists on gives exit status 1. */
async function lookThrough(path: string, target: string, terminal: Terminal): Promise<ExitCode> {
  const result = await checkSheet(path, target);
  if (!result.ok) {
    result.problems.forEach(terminal.problem);
    return result.problems.some(({ code }) => code.startsWith("io/")) ? Exit.unreadable : Exit.usage;
  }
  result.warnings.forEach(terminal.problem);
  for (const { level, remedy } of result.value) terminal.out(`${level.padEnd(8)} ${remedy}\n`);
  const count = result.value.length;
  terminal.out(
    count === 0
      ? `${path}: nothing is missing for the target ${target}\n`
      : `${path}: ${count} ${count === 1 ? "fact is" : "facts are"} still missing for the target ${target}\n`,
  );
  return result.value.some(({ level }) => level === "error") ? Exit.findings : Exit.clean;
}
