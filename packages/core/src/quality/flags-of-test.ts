import { Flag } from "./flag.ts";

/** Worst flag that a test may give: 3 turns its "bad" into "questionable". */
export type Worst = 3 | 4;

/** New flags: 9 where the value is missing, else `otherwise`. */
export function flagsFor(values: Float64Array, otherwise: Flag): Uint8Array {
  const flags = new Uint8Array(values.length).fill(otherwise);
  for (let k = 0; k < values.length; k++) if (Number.isNaN(values[k]!)) flags[k] = Flag.missing;
  return flags;
}

/** Whether a test called any row questionable or bad; far quicker than to look at each row. */
export const caughtAny = (result: Uint8Array): boolean =>
  result.includes(Flag.questionable) || result.includes(Flag.bad);

/** Number of rows that a test called questionable or bad. */
export function countCaught(result: Uint8Array): number {
  if (!caughtAny(result)) return 0;
  let count = 0;
  for (let k = 0; k < result.length; k++)
    if (result[k] === Flag.questionable || result[k] === Flag.bad) count++;
  return count;
}
