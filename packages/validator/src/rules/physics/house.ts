import type { Citation } from "../../engine/finding.ts";
import type { RuleText } from "../../engine/rule.ts";

/** Rules of our own about the sea itself; the equations are cited by their publications. */
export const houseClause = (clause: string): Citation => ({
  document: "Wherry physics rules",
  edition: "1",
  clause,
});

export const PHYSICS = {
  status: "stable",
  since: "0.1.0",
  basis: "house",
  covers: [],
} as const satisfies Partial<RuleText>;

/** A number in a sentence: as many digits as tell it apart, no more. */
export const rounded = (value: number): number => Number.parseFloat(value.toPrecision(6));
