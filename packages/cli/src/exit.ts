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
