import type { Column } from "../cast/cast.ts";
import { Flag } from "./flag.ts";

/**
 * Which tests decided the flag of a row: those that gave a 3 or 4 its number. A missing value is decided by itself,
 * as "missing"; a value that passed, or that was not judged enough, by no test.
 *
 * @param row from 0
 * @throws RangeError for a row that the column does not have
 */
export function decidedBy({ values, flags, tests }: Column, row: number): readonly string[] {
  if (!(Number.isInteger(row) && row >= 0 && row < values.length))
    throw new RangeError(`row ${row} is none of 0 to ${values.length - 1}`);
  const flag = flags[row]!;
  if (flag === Flag.missing) return ["missing"];
  if (flag !== Flag.questionable && flag !== Flag.bad) return [];
  return [...tests].flatMap(([test, result]) => (result[row] === flag ? [test] : []));
}
