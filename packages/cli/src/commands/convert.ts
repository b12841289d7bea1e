import {
  convert,
  DEFAULT_PRODUCTS,
  FORMATS,
  type Format,
  PRODUCTS,
  type Product,
  TARGETS,
} from "@wherry/survey";
import { Command, InvalidArgumentError, Option } from "commander";
import type { Context } from "../command.ts";
import { Exit, exitOf, worst } from "../exit.ts";
import {
  addFieldLogOption,
  addReadingOptions,
  type ReadingFlags,
  readingOptions,
} from "../reading-options.ts";
import { convertText } from "./convert-text.ts";
import { wholeNumber } from "./whole-number.ts";

interface Options extends ReadingFlags {
  readonly sheet: string;
  readonly out: string;
  readonly products: readonly Product[];
  readonly perCast?: boolean;
  readonly target: string;
  readonly format: Format;
  readonly packed?: boolean;
  readonly judgements?: string;
  readonly created?: string;
  readonly vocabulary?: string;
  readonly shoreline?: string;
  readonly jobs: number;
  readonly force?: boolean;
  readonly json?: boolean;
}

function parseProducts(text: string): readonly Product[] {
  return text.split(",").map((word) => {
    const product = PRODUCTS.find((known) => known === word.trim());
    if (product === undefined) throw new InvalidArgumentError(`Choose from ${PRODUCTS.join(", ")}.`);
    return product;
  });
}

export function convertCommand({ terminal, version, signal, finish }: Context): Command {
  return addFieldLogOption(addReadingOptions(new Command("convert")))
    .summary("turn raw casts into archive products")
    .description(
      "Turns raw casts into CF NetCDF and documented CSV, with flags, records and the original files.",
    )
    .argument("<path...>", "exports or folders of them")
    .requiredOption("-s, --sheet <file>", "the survey sheet")
    .requiredOption("-o, --out <folder>", "folder to make for the result")
    .addOption(
      new Option("--products <list>", `which products, by commas, of ${PRODUCTS.join(", ")}`)
        .argParser(parseProducts)
        .default(DEFAULT_PRODUCTS, DEFAULT_PRODUCTS.join(",")),
    )
    .option("--per-cast", "one file per cast instead of one per survey")
    .option(
      "--target <name>",
      `what the data set is meant for: ${TARGETS.join(", ")}, or a document of rules`,
      "general",
    )
    .addOption(
      new Option("--format <kind>", "classic netCDF, or netCDF-4 packed with deflate")
        .choices(FORMATS)
        .default("classic"),
    )
    .option("--packed", "in netCDF two bytes a value where that loses nothing (scale_factor)")
    .option("--judgements <file>", "flags that persons set, instead of judgements.jsonl beside the sheet")
    .option("--created <time>", "date of writing, instead of the sheet's")
    .option("--vocabulary <file>", "a CF standard-name table in place of the shipped one")
    .option("--shoreline <file>", "GeoJSON with land or shore for the map of the report")
    .option("--jobs <number>", "casts worked on at the same time", wholeNumber, 1)
    .option("--force", "replace a finished result")
    .option("--json", "write one JSON document to standard output")
    .addHelpText(
      "after",
      `
Example:
  $ wherry convert exports/ --sheet survey.yaml --out result

Exit status: 0 all written; 1 written, with findings; 2 casts held back by open questions, or wrong usage;
3 a file that cannot be read or written.`,
    )
    .action(
      async (
        paths: string[],
        { json = false, perCast = false, force = false, answer, notes, fieldLog, ...options }: Options,
      ) => {
        const reading = readingOptions({ answer, notes, fieldLog });
        const run = {
          ...options,
          ...reading,
          perCast,
          force,
          version,
          signal,
          onProgress: terminal.progress,
        };
        const result = await convert(paths, run);
        terminal.endProgress();
        if (!result.ok) {
          result.problems.forEach(terminal.problem);
          if (signal.aborted) return finish(Exit.interrupted);
          return finish(exitOf(result.problems));
        }
        const { value, warnings } = result;
        warnings.forEach(terminal.problem);
        terminal.out(json ? `${JSON.stringify({ version: 1, ...value }, null, 2)}\n` : convertText(value));
        finish(
          worst(
            value.held.length > 0 ? Exit.usage : Exit.clean,
            value.findings.length > 0 ? Exit.findings : Exit.clean,
          ),
        );
      },
    );
}
