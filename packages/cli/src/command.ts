import type { ExitCode } from "./exit.ts";
import type { Terminal } from "./terminal.ts";

/** What every command gets; commands give their exit status and never end the process. */
export interface Context {
  readonly terminal: Terminal;
  /** Epoch seconds of the start of the run. */
  readonly now: number;
  readonly version: string;
  /** Set when the person interrupts the run. */
  readonly signal: AbortSignal;
  readonly finish: (code: ExitCode) => void;
}
