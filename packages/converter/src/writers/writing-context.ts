import type { SurveySheet } from "@wherry/contracts";
import type { Target } from "./target.ts";

/** What writers need beside the casts. */
export interface WritingContext {
  readonly sheet: SurveySheet;
  /** Moment of writing, ISO 8601 UTC; every date of writing comes from it. */
  readonly created: string;
  /** Program and version, for `history`. */
  readonly software: string;
  /** Name of the standard-name table, as `CF Standard Name Table v83`. */
  readonly standardNames: string;
  /** What the data set is meant for; the general target unless given. */
  readonly target?: Target;
}
