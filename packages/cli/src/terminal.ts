import type { Problem } from "@wherry/survey";

/** Everything a command may say. Results go to standard output, all else to standard error. */
export interface Terminal {
  out(text: string): void;
  talk(text: string): void;
  problem(problem: Problem): void;
  /** Shown only on a terminal, and only once a run has taken a second. */
  progress(done: number, total: number, what: string): void;
  endProgress(): void;
}

interface Stream {
  readonly isTTY?: boolean;
  readonly columns?: number;
  write(text: string): unknown;
}

export interface TerminalSetting {
  readonly stdout: Stream;
  readonly stderr: Stream;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly noColor: boolean;
  /** Milliseconds, for progress. */
  readonly clock: () => number;
}

const PROGRESS_AFTER = 1000;
const PROGRESS_EVERY = 100;

export function makeTerminal({ stdout, stderr, env, noColor, clock }: TerminalSetting): Terminal {
  const plain = noColor || (env.NO_COLOR ?? "") !== "" || env.TERM === "dumb";
  const bold = (text: string) => (plain || stderr.isTTY !== true ? text : `\u001b[1m${text}\u001b[22m`);
  const begun = clock();
  let shown = 0;
  const endProgress = () => {
    if (shown > 0) stderr.write("\r\u001b[K");
    shown = 0;
  };
  return {
    out: (text) => stdout.write(text),
    talk(text) {
      endProgress();
      stderr.write(text);
    },
    problem(problem) {
      endProgress();
      const { place, message, remedy } = sentence(problem);
      const told = place !== "" && !message.startsWith(place);
      stderr.write(`${told ? `${bold(place)}: ` : ""}${message}${remedy ? `\n    ${remedy}` : ""}\n`);
    },
    progress(done, total, what) {
      const now = clock();
      if (stderr.isTTY !== true || now - begun < PROGRESS_AFTER || now - shown < PROGRESS_EVERY) return;
      shown = now;
      stderr.write(`\r\u001b[K${`${done} of ${total}  ${what}`.slice(0, (stderr.columns ?? 80) - 1)}`);
    },
    endProgress,
  };
}

/** The parts of a problem as a person reads them. Control characters of a hostile file name do nothing here. */
function sentence({ where, message, remedy }: Problem): { place: string; message: string; remedy: string } {
  const { file, line, column, byte, variable, attribute } = where;
  const inFile = [file, line, column].filter((part) => part !== undefined).join(":");
  const object =
    variable === undefined ? attribute : attribute === undefined ? variable : `${variable}:${attribute}`;
  const place = [inFile, byte === undefined ? "" : `byte ${byte}`, object ?? ""].filter(Boolean).join(", ");
  return { place: harmless(place), message: harmless(message), remedy: harmless(remedy ?? "") };
}

/** Text without characters that could steer a terminal; line breaks and tabs become blanks. */
export const harmless = (text: string): string =>
  text.replace(/[\n\r\t]+/g, " ").replace(/[\p{Cc}\p{Bidi_Control}]/gu, "\ufffd");
