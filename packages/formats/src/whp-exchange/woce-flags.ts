import { Flag } from "@wherry/core";

/** Name of the flag scheme of CTD data in WHP-Exchange files. */
export const WOCE_CTD = "WOCE CTD";

/**
 * Quality codes of CTD data, their meanings, and the IODE primary flag each becomes.
 *
 * The codes are those of the format; the mapping is a decision of this project: an interpolated value is not a
 * measurement and never becomes good, a despiked one stays good, "not reported" and "not sampled" are missing.
 *
 * @source WHP-Exchange Format 1.2.1 (2024), Quality Codes, CTD data
 */
export const WOCE_CTD_FLAGS: ReadonlyMap<number, { readonly meaning: string; readonly iode: Flag }> = new Map(
  [
    [1, { meaning: "not calibrated", iode: Flag.notEvaluated }],
    [2, { meaning: "acceptable", iode: Flag.good }],
    [3, { meaning: "questionable", iode: Flag.questionable }],
    [4, { meaning: "bad", iode: Flag.bad }],
    [5, { meaning: "not reported", iode: Flag.missing }],
    [6, { meaning: "interpolated over more than 2 dbar", iode: Flag.questionable }],
    [7, { meaning: "despiked", iode: Flag.good }],
    [8, { meaning: "not used for CTD data", iode: Flag.notEvaluated }],
    [9, { meaning: "not sampled", iode: Flag.missing }],
  ],
);

/**
 * IODE primary flag of a value with a WOCE CTD code.
 *
 * @param code digit 1 to 9; 0 and anything else count as not evaluated
 * @param value the value itself: a missing one is 9 whatever its code, and one that is there is never 9 but 2
 */
export function iodeFromWoceCtd(code: number, value: number): Flag {
  if (Number.isNaN(value)) return Flag.missing;
  const flag = WOCE_CTD_FLAGS.get(code)?.iode ?? Flag.notEvaluated;
  return flag === Flag.missing ? Flag.notEvaluated : flag;
}
