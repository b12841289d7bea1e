import type { Problem } from "@wherry/survey";

/** Exit status of the program; the worst of several wins. */
export const Exit = {
  clean: 0,
  findings: 1,
  usage: 2,
  unreadable: 3,
  fault: 4,
  interrupted: 130,
} as const;
export type ExitCode = (typeof Exit)[keyof typeof Exit];

export const worst = (...codes: readonly ExitCode[]): ExitCode => Math.max(...codes) as ExitCode;

/** What a person wrote of files, and what they wrote it into; all else is a file that can't be read or written. */
const USAGE = /^(?:sheet|answers|fieldlog|judgements|notes|input|result|rules|target|shoreline)\//;

/** Status for problems that stopped a command. */
export const exitOf = (problems: readonly Problem[]): ExitCode =>
  problems.every(({ code }) => USAGE.test(code)) ? Exit.usage : Exit.unreadable;
