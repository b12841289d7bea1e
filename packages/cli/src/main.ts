import process from "node:process";
import { CommanderError } from "commander";
import { Exit, type ExitCode } from "./exit.ts";
import { makeProgram } from "./program.ts";
import { makeTerminal } from "./terminal.ts";

declare const WHERRY_VERSION: string;

const debug = process.argv.includes("--debug");
const interruption = new AbortController();
process.once("SIGINT", () => interruption.abort());
process.once("SIGTERM", () => interruption.abort());
// A reader that has seen enough (`wherry look … | head`) is no error.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

const terminal = makeTerminal({
  stdout: process.stdout,
  stderr: process.stderr,
  env: process.env,
  noColor: process.argv.includes("--no-color"),
  clock: () => Number(process.hrtime.bigint() / 1_000_000n),
});

let code: ExitCode = Exit.clean;
try {
  const program = await makeProgram(process.argv.slice(2), {
    terminal,
    now: Math.floor(Date.now() / 1000),
    version: WHERRY_VERSION,
    signal: interruption.signal,
    finish: (to) => {
      code = to;
    },
  });
  await program.parseAsync(process.argv);
} catch (error) {
  terminal.endProgress();
  if (interruption.signal.aborted) code = Exit.interrupted;
  else if (error instanceof CommanderError) code = error.exitCode === 0 ? Exit.clean : Exit.usage;
  else {
    code = Exit.fault;
    terminal.talk(
      "wherry: a fault of the program, not of your files. Nothing was written under a final name.\n" +
        "Please report it with the command you gave; --debug shows where it happened.\n",
    );
    if (debug) terminal.talk(`${error instanceof Error ? error.stack : String(error)}\n`);
  }
}
if (interruption.signal.aborted) code = Exit.interrupted;
process.exitCode = code;
