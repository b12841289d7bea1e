import type { SurveySheet } from "@wherry/contracts";
import { parseIsoTime } from "@wherry/core";
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
  /** Whether the results of the single quality tests are written beside the rows. */
  readonly testFlags?: boolean;
}

/** The moment of writing, epoch seconds. */
export function madeAt({ created }: WritingContext): number {
  const read = parseIsoTime(created);
  return read.ok ? read.value.epochSeconds : Number.POSITIVE_INFINITY;
}
