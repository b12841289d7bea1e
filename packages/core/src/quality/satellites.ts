import { Flag } from "./flag.ts";

/**
 * Flag of a satellite fix by its number of satellites.
 *
 * @param count  satellites used; null if not told
 * @param fewest satellites that make a full fix
 * @returns 1; 3 for fewer; 2 if unknown
 * @source house
 */
export function satellites(count: number | null, fewest: number): Flag {
  if (count === null || Number.isNaN(count)) return Flag.notEvaluated;
  return count < fewest ? Flag.questionable : Flag.good;
}
