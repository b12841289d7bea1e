import { look, lookDocument, lookText } from "@wherry/survey";
import { Command } from "commander";
import type { Context } from "../command.ts";
import { Exit, exitOf, worst } from "../exit.ts";
import { addReadingOptions, type ReadingFlags, readingOptions } from "../reading-options.ts";

interface Options extends ReadingFlags {
  readonly explain?: boolean;
  readonly json?: boolean;
}

export function lookCommand({ terminal, signal, finish }: Context): Command {
  return addReadingOptions(new Command("look"))
    .summary("say what files hold as understood, with the evidence and the open questions")
    .description("Says what each file holds as understood, and what only you can answer. Writes nothing.")
    .argument("<path...>", "exports, netCDF files, or folders of them")
    .option("--explain", "show for every fact which line and words said so")
    .option("--json", "write one JSON document to standard output")
    .addHelpText("after", "\nExample:\n  $ wherry look --explain exports/2026-06-02.csv")
    .action(async (paths: string[], { explain = false, json = false, ...reading }: Options) => {
      const { files, skipped, problems, warnings, sameCasts } = await look(paths, {
        ...readingOptions(reading),
        signal,
        onProgress: terminal.progress,
      });
      terminal.endProgress();
      terminal.out(
        json
          ? `${JSON.stringify(lookDocument(files, sameCasts, warnings), null, 2)}\n`
          : lookText(files, { explain }, sameCasts),
      );
      for (const path of skipped) terminal.talk(`skipped ${path}\n`);
      [...warnings, ...problems].forEach(terminal.problem);
      finish(worst(problems.length > 0 ? exitOf(problems) : Exit.clean));
    });
}
