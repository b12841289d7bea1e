import { check, checkDocument, checkText, type Level } from "@wherry/survey";
import { Command, Option } from "commander";
import type { Context } from "../command.ts";
import { Exit, worst } from "../exit.ts";

interface Options {
  readonly rules?: readonly string[];
  readonly edition?: string;
  readonly vocabulary?: string;
  readonly failOn: Level;
  readonly json?: boolean;
}

/** Levels from the worst on. */
const LEVELS: readonly Level[] = ["error", "warning", "advice"];

export function checkCommand({ terminal, now, signal, finish }: Context): Command {
  return new Command("check")
    .summary("check files against CF, ACDD and archive rules")
    .description("Checks netCDF files and CSV with its metadata against CF, ACDD and archive rules.")
    .argument("<path...>", "files or folders of them")
    .option("--rules <set...>", "rule sets or files of rules to use instead of the usual ones")
    .option("--edition <edition>", "CF edition to judge by, instead of the one that the file claims")
    .addOption(
      new Option("--fail-on <level>", "lowest level that gives exit status 1")
        .choices(LEVELS)
        .default("error"),
    )
    .option("--vocabulary <file>", "a CF standard-name table in place of the shipped one")
    .option("--json", "write one JSON document to standard output")
    .addHelpText("after", "\nExample:\n  $ wherry check result/ --fail-on warning")
    .action(async (paths: string[], { rules, edition, vocabulary, failOn, json = false }: Options) => {
      const outcome = await check(paths, {
        now,
        signal,
        onProgress: terminal.progress,
        ...(rules === undefined ? {} : { rules }),
        ...(edition === undefined ? {} : { edition }),
        ...(vocabulary === undefined ? {} : { vocabulary }),
      });
      terminal.endProgress();
      if (!outcome.ok) {
        outcome.problems.forEach(terminal.problem);
        return finish(
          outcome.problems.some(({ code }) => code.startsWith("check/")) ? Exit.usage : Exit.unreadable,
        );
      }
      const { files, skipped, problems } = outcome.value;
      terminal.out(json ? `${JSON.stringify(checkDocument(files, skipped), null, 2)}\n` : checkText(files));
      problems.forEach(terminal.problem);
      if (skipped.length > 0) terminal.talk(`skipped, of no kind that is checked: ${skipped.join(", ")}\n`);
      const levels = LEVELS.slice(0, LEVELS.indexOf(failOn) + 1);
      const failed = files.some(({ findings }) => findings.some(({ level }) => levels.includes(level)));
      const unread = problems.length > 0 || files.some(({ format }) => format === null);
      finish(worst(unread ? Exit.unreadable : Exit.clean, failed ? Exit.findings : Exit.clean));
    });
}
