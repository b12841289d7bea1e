import { check, checkDocument, checkText, type Level, reportForms, writeReport } from "@wherry/survey";
import { Command, Option } from "commander";
import type { Context } from "../command.ts";
import { Exit, worst } from "../exit.ts";
import { LEVELS } from "./levels.ts";

interface Options {
  readonly rules?: readonly string[];
  readonly edition?: string;
  readonly vocabulary?: string;
  readonly waivers?: string;
  readonly report?: readonly string[];
  readonly failOn: Level;
  readonly json?: boolean;
}

export function checkCommand({ terminal, now, version, signal, finish }: Context): Command {
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
    .option("--waivers <file>", "findings that a person accepts, in a JSON file")
    .option(
      "--report <file...>",
      "write a report too; the ending .html, .md, .sarif, .xml or .json is its form",
    )
    .option("--json", "write one JSON document to standard output")
    .addHelpText("after", "\nExample:\n  $ wherry check result/ --fail-on warning")
    .action(async (paths: string[], options: Options) => {
      const { rules, edition, vocabulary, waivers, report = [], failOn, json = false } = options;
      const forms = reportForms(report);
      if (!forms.ok) {
        forms.problems.forEach(terminal.problem);
        return finish(Exit.usage);
      }
      const outcome = await check(paths, {
        now,
        signal,
        onProgress: terminal.progress,
        ...(rules === undefined ? {} : { rules }),
        ...(edition === undefined ? {} : { edition }),
        ...(vocabulary === undefined ? {} : { vocabulary }),
        ...(waivers === undefined ? {} : { waivers }),
      });
      terminal.endProgress();
      if (!outcome.ok) {
        outcome.problems.forEach(terminal.problem);
        return finish(
          outcome.problems.some(({ code }) => code.startsWith("check/")) ? Exit.usage : Exit.unreadable,
        );
      }
      const { files, skipped, problems, warnings } = outcome.value;
      terminal.out(json ? `${JSON.stringify(checkDocument(files, skipped), null, 2)}\n` : checkText(files));
      [...problems, ...warnings].forEach(terminal.problem);
      let unwritten = false;
      for (const path of report) {
        const written = await writeReport(path, outcome.value, version);
        if (written.ok) terminal.talk(`written: ${path}\n`);
        else {
          written.problems.forEach(terminal.problem);
          unwritten = true;
        }
      }
      if (skipped.length > 0) terminal.talk(skippedText(skipped));
      const levels = LEVELS.slice(0, LEVELS.indexOf(failOn) + 1);
      const failed = files.some(({ findings }) => findings.some(({ level }) => levels.includes(level)));
      const unread = unwritten || problems.length > 0 || files.some(({ format }) => format === null);
      finish(worst(unread ? Exit.unreadable : Exit.clean, failed ? Exit.findings : Exit.clean));
    });
}

const SHOWN = 3;

/** Folders hold much that is not checked; the whole list stands in the JSON. */
function skippedText(paths: readonly string[]): string {
  const more = paths.length > SHOWN ? ` and ${paths.length - SHOWN} more` : "";
  return `skipped, of no kind that is checked: ${paths.slice(0, SHOWN).join(", ")}${more}\n`;
}
