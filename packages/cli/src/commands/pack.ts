import { pack, verifyPackage } from "@wherry/survey";
import { Command, Option } from "commander";
import type { Context } from "../command.ts";
import { Exit, type ExitCode, exitOf } from "../exit.ts";
import { harmless, type Terminal } from "../terminal.ts";

interface Options {
  readonly out?: string;
  readonly verify?: string;
  readonly zip?: boolean;
  readonly tar?: boolean;
  readonly sha512?: boolean;
  readonly force?: boolean;
  readonly json?: boolean;
}

export function packCommand({ terminal, signal, finish }: Context): Command {
  return new Command("pack")
    .summary("make the deposit package of a result, or verify one")
    .description(
      "Makes the deposit package (BagIt, RFC 8493) of a result: products, source files, records for archives, check\nreport and read-me, with checksums; or verifies that a package is whole.",
    )
    .argument("[result]", "folder that convert wrote")
    .option("-o, --out <package>", "folder or archive to make")
    .option("--verify <package>", "a package, folder or archive, to compare with its checksums")
    .addOption(new Option("--zip", "as a zip archive").conflicts("tar"))
    .addOption(new Option("--tar", "as a tar archive, for large surveys").conflicts("zip"))
    .option("--sha512", "SHA-512 checksums beside SHA-256")
    .option("--force", "replace an earlier package")
    .option("--json", "write one JSON document to standard output")
    .addHelpText(
      "after",
      `
Examples:
  $ wherry pack result --out estuary-2026.zip --zip
  $ wherry pack --verify estuary-2026.zip

Exit status: 0 packed, or whole; 1 packed although the check found errors, or not whole; 2 wrong usage; 3 a file that
cannot be read or written.`,
    )
    .action(async (folder: string | undefined, options: Options, command: Command) => {
      if (options.verify !== undefined) return finish(await verify(options.verify, options, terminal));
      if (folder === undefined) command.error("error: name the folder of a result, or --verify a package");
      if (options.out === undefined) command.error("error: say with --out where the package goes");
      const { out, zip = false, tar = false, sha512 = false, force = false } = options;
      const form = zip ? "zip" : tar ? "tar" : undefined;
      const result = await pack(folder, { out, sha512, force, signal, ...(form ? { archive: form } : {}) });
      if (!result.ok) {
        result.problems.forEach(terminal.problem);
        return finish(exitOf(result.problems));
      }
      const { value, warnings } = result;
      warnings.forEach(terminal.problem);
      if (options.json) terminal.out(`${JSON.stringify({ version: 1, ...value }, null, 2)}\n`);
      else {
        const { counts, skipped } = value;
        terminal.out(
          `wrote ${harmless(value.out)}: ${value.files} files, ${value.bytes} bytes, read again and whole\n`,
        );
        if (skipped.length > 0)
          terminal.out(`not taken, for they are hidden: ${skipped.map(harmless).join(", ")}\n`);
        terminal.out(
          `the check of the products found ${counts.error} errors, ${counts.warning} warnings; its report is in the package\n`,
        );
        terminal.out(`next: wherry check ${harmless(value.out)}\n`);
      }
      finish(value.counts.error > 0 ? Exit.findings : Exit.clean);
    });
}

async function verify(path: string, { json = false }: Options, terminal: Terminal): Promise<ExitCode> {
  const result = await verifyPackage(path);
  if (!result.ok) {
    result.problems.forEach(terminal.problem);
    return Exit.unreadable;
  }
  const { problems } = result.value;
  if (json)
    terminal.out(
      `${JSON.stringify({ version: 1, path, whole: problems.length === 0, problems, warnings: result.warnings }, null, 2)}\n`,
    );
  else {
    [...problems, ...result.warnings].forEach(terminal.problem);
    terminal.out(
      problems.length === 0
        ? `${harmless(path)}: whole, every file is as its checksum says\n`
        : `${harmless(path)}: not whole\n`,
    );
  }
  return problems.length === 0 ? Exit.clean : Exit.findings;
}
