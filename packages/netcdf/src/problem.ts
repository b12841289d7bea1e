// The same shape as in @wherry/core: this package imports nothing of ours, and types are structural.

/** Where something is. Lines and columns count from 1, bytes and indices from 0. */
export interface Place {
  readonly file?: string;
  readonly line?: number;
  readonly column?: number;
  readonly byte?: number;
  readonly variable?: string;
  readonly attribute?: string;
  readonly dimension?: string;
  readonly index?: number;
}

/** Something that is wrong with a user's file, sheet or command. */
export interface Problem {
  /** "<area>/<what>", stable; the message may be reworded. */
  readonly code: string;
  readonly message: string;
  readonly where: Place;
  readonly remedy?: string;
}

export type Result<T> =
  | { readonly ok: true; readonly value: T; readonly warnings: readonly Problem[] }
  | { readonly ok: false; readonly problems: readonly [Problem, ...Problem[]] };

export const succeed = <T>(value: T, warnings: readonly Problem[] = []): Result<T> => ({
  ok: true,
  value,
  warnings,
});

export const fail = (...problems: [Problem, ...Problem[]]): Result<never> => ({ ok: false, problems });

/** The problems as a failure if there are any, else the value with its warnings. */
export function failOr<T>(
  problems: readonly Problem[],
  value: () => T,
  warnings: readonly Problem[] = [],
): Result<T> {
  const [first, ...others] = problems;
  return first ? { ok: false, problems: [first, ...others] } : succeed(value(), warnings);
}
