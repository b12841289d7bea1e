import {
  type CheckEnd,
  type CheckedFile,
  type CheckOptions,
  checkEach,
  documentPieces,
  fileText,
  type Level,
  newTally,
  type Result,
  reportForms,
  writeReport,
} from "@wherry/survey";
import { Command, Option } from "commander";
import type { Context } from "../command.ts";
import { Exit, worst } from "../exit.ts";
import type { Terminal } from "../terminal.ts";
import { LEVELS } from "./levels.ts";
import { wholeNumber } from "./whole-number.ts";

interface Options {
  readonly rules?: string[];
  readonly only?: string[];
  readonly edition?: string;
  readonly vocabulary?: string;
  readonly waivers?: string;
  readonly report?: readonly string[];
  readonly level: Level;
  readonly max?: number;
  readonly failOn: Level;
  readonly jobs: number;
  readonly json?: boolean;
}

export function checkCommand({ terminal, now, version, signal, finish }: Context): Command {
  return new Command("check")
    .summary("check files against CF, ACDD and archive rules")
    .description(
      "Checks netCDF files, CSV with its metadata and deposit packages against CF, ACDD, archive rules and physics.",
    )
    .argument("<path...>", "files or folders of them")
    .option("--rules <set...>", "rule sets or files of rules to use instead of the usual ones")
    .option("--only <rule...>", "tell findings of these rules alone, by their ids")
    .option("--edition <edition>", "CF edition to judge by, instead of the one that the file claims")
    .addOption(
      new Option("--level <level>", "lowest level that is written out; all are counted")
        .choices(LEVELS)
        .default("advice"),
    )
    .option("--max <number>", "kinds of findings written out for a file", wholeNumber)
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
    .option("--jobs <number>", "files checked at the same time", wholeNumber, 1)
    .option("--json", "write one JSON document to standard output")
    .addHelpText("after", "\nExample:\n  $ wherry check result/ --fail-on warning")
    .action(async (paths: string[], options: Options) => {
      const { report = [], failOn, level, max, json = false, ...choice } = options;
      const forms = reportForms(report);
      if (!forms.ok) {
        forms.problems.forEach(terminal.problem);
        return finish(Exit.usage);
      }
      const kept: CheckedFile[] = [];
      const levels = LEVELS.slice(0, LEVELS.indexOf(failOn) + 1);
      let [failed, unread] = [false, false];
      const take = (file: CheckedFile) => {
        failed ||= levels.some((each) => file.counts[each] > 0);
        unread ||= file.format === null;
        // a report needs all verdicts, the answer here does not
        if (report.length > 0) kept.push(file);
      };
      const answer = json
        ? inJson(terminal, level)
        : inText(terminal, { level, ...(max === undefined ? {} : { max }) });
      const end = await answer(paths, { ...choice, now, signal, onProgress: terminal.progress }, take);
      if (!end.ok) {
        end.problems.forEach(terminal.problem);
        return finish(
          end.problems.some(({ code }) => code.startsWith("check/")) ? Exit.usage : Exit.unreadable,
        );
      }
      const { skipped, problems, warnings } = end.value;
      [...problems, ...warnings].forEach(terminal.problem);
      for (const path of report) {
        const written = await writeReport(path, { ...end.value, files: kept }, version);
        if (written.ok) terminal.talk(`written: ${path}\n`);
        else {
          written.problems.forEach(terminal.problem);
          unread = true;
        }
      }
      if (skipped.length > 0) terminal.talk(skippedText(skipped));
      unread ||= problems.length > 0;
      finish(worst(unread ? Exit.unreadable : Exit.clean, failed ? Exit.findings : Exit.clean));
    });
}

/** Checks, and answers file by file as the verdicts come. */
type Answer = (
  paths: readonly string[],
  options: CheckOptions,
  take: (file: CheckedFile) => void,
) => Promise<Result<CheckEnd>>;

const inText =
  (terminal: Terminal, shown: { level: Level; max?: number }): Answer =>
  async (paths, options, take) => {
    const tally = newTally();
    const end = await checkEach(paths, options, (file) => {
      take(file);
      tally.add(file);
      terminal.endProgress();
      terminal.out(`${fileText(file, shown)}\n`);
    });
    terminal.endProgress();
    if (end.ok) terminal.out(tally.text());
    return end;
  };

const inJson =
  (terminal: Terminal, level: Level): Answer =>
  async (paths, options, take) => {
    const pieces = documentPieces(level);
    const end = await checkEach(paths, options, (file) => {
      take(file);
      terminal.out(pieces.file(file));
    });
    terminal.endProgress();
    if (end.ok) terminal.out(pieces.end(end.value.skipped));
    return end;
  };

const SHOWN = 3;

/** Folders hold much that is not checked; the whole list stands in the JSON. */
function skippedText(paths: readonly string[]): string {
  const more = paths.length > SHOWN ? ` and ${paths.length - SHOWN} more` : "";
  return `skipped, of no kind that is checked: ${paths.slice(0, SHOWN).join(", ")}${more}\n`;
}
