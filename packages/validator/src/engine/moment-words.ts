import { formatIsoTime } from "@wherry/core";

const DAY = 86_400;
const YEAR = 365.2425 * DAY;
/** Seconds from 1970 to where ISO 8601 has no years of six digits left, a little less. */
const REACH = 900_000 * YEAR;

/** A moment in a sentence; the year alone where a wrong unit put it beyond every calendar. */
export const momentInWords = (epochSeconds: number): string =>
  Math.abs(epochSeconds) < REACH
    ? formatIsoTime(epochSeconds)
    : `the year ${Math.round(1970 + epochSeconds / YEAR)}`;
