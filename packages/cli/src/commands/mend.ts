import { type Level, mendDocument, mendFile, mendText } from "@wherry/survey";
import { Command, Option } from "commander";
import type { Context } from "../command.ts";
import { Exit } from "../exit.ts";
import { LEVELS } from "./levels.ts";

interface Options {
  readonly out: string;
  readonly failOn: Level;
  readonly force?: boolean;
  readonly json?: boolean;
}

export function mendCommand({ terminal, now, version, finish }: Context): Command {
  return new Command("mend")
    .summary("repair what needs no judgement, and list what a person must decide")
    .description(
      "Writes a mended copy of a netCDF file: spellings, types and attributes that can only be meant in one way. All else stays as it is, the values above all; history tells what was changed.",
    )
    .argument("<file>", "the file; it is not changed")
    .requiredOption("-o, --out <file>", "the mended file")
    .option("--force", "replace the mended file if it is there")
    .addOption(
      new Option("--fail-on <level>", "lowest level of what is left that gives exit status 1")
        .choices(LEVELS)
        .default("error"),
    )
    .option("--json", "write one JSON document to standard output")
    .addHelpText("after", "\nExample:\n  $ wherry mend from-a-colleague.nc --out mended.nc")
    .action(async (file: string, { out, failOn, force = false, json = false }: Options) => {
      const result = await mendFile(file, { out, force, now, program: `wherry ${version}` });
      if (!result.ok) {
        result.problems.forEach(terminal.problem);
        const usage = result.problems.some(({ code }) =>
          ["mend/same-file", "mend/exists", "mend/kind"].includes(code),
        );
        return finish(usage ? Exit.usage : Exit.unreadable);
      }
      const report = result.value;
      terminal.out(json ? `${JSON.stringify(mendDocument(report), null, 2)}\n` : mendText(report));
      const levels = LEVELS.slice(0, LEVELS.indexOf(failOn) + 1);
      finish(report.left.some(({ level }) => levels.includes(level)) ? Exit.findings : Exit.clean);
    });
}
