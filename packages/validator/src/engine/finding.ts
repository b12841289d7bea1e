import type { Place } from "@wherry/core";

/** How much a finding weighs. A requirement is an error, a recommendation a warning, good practice advice. */
export type Level = "error" | "warning" | "advice";

/** `clause`: the source says it; `reading`: our interpretation of the source; `house`: our own. */
export type Basis = "clause" | "reading" | "house";

export interface Citation {
  readonly document: string;
  readonly edition: string;
  readonly clause: string;
}

/** What was found or expected, as plain data. */
export type Plain = string | number | boolean | null | readonly Plain[];

/** A requirement that is not met, with everything that a person needs to mend it. */
export interface Finding {
  readonly rule: string;
  readonly level: Level;
  readonly basis: Basis;
  /** Null for a fault of the file itself, which no document speaks of. */
  readonly citation: Citation | null;
  readonly where: Place;
  /** Key of the message in the rule. */
  readonly key: string;
  readonly message: string;
  readonly why: string;
  readonly found?: Plain;
  readonly expected?: Plain;
  readonly remedy: string;
  /** How often it stands in this variable. */
  readonly count: number;
  /** The first few indices, row-major, from 0; empty where the finding is not about single values. */
  readonly places: readonly number[];
}

export interface Counts {
  readonly error: number;
  readonly warning: number;
  readonly advice: number;
}

const WEIGHT: Readonly<Record<Level, number>> = { error: 0, warning: 1, advice: 2 };

export const isAtLeast = (level: Level, limit: Level): boolean => WEIGHT[level] <= WEIGHT[limit];

export function countLevels(findings: readonly Finding[]): Counts {
  const of = (level: Level) => findings.filter((finding) => finding.level === level).length;
  return { error: of("error"), warning: of("warning"), advice: of("advice") };
}

/** Worst first; within a level in the order in which they were found. */
export const worstFirst = (findings: readonly Finding[]): Finding[] =>
  [...findings].sort((a, b) => WEIGHT[a.level] - WEIGHT[b.level]);
