import { median, robustSd } from "./robust.ts";

/**
 * The stay of a series at its depth: from the first to the last row whose pressure fits what the record shows in
 * the first and the last quarter of the rows in water. The tide may move pressure between the two.
 *
 * @param s smoothed pressure, dbar
 * @source house
 */
export function findStay(
  s: Float64Array,
  wetFrom: number,
  wetTo: number,
  noise: number,
): { firstRow: number; lastRow: number; tolerance: number } {
  const rows = wetTo - wetFrom + 1;
  if (rows < 8) return { firstRow: wetFrom, lastRow: wetTo, tolerance: 0 };
  const quarter = Math.max(4, Math.floor(rows / 4));
  const early = s.subarray(wetFrom, wetFrom + quarter);
  const late = s.subarray(wetTo + 1 - quarter, wetTo + 1);
  const within = (part: Float64Array) => Math.max(0.1, 6 * noise, 4 * robustSd(part));
  const tolerance = Math.max(within(early), within(late));
  const [levelEarly, levelLate] = [median(early), median(late)];
  let firstRow = wetFrom;
  while (firstRow < wetTo && !(Math.abs(s[firstRow]! - levelEarly) <= tolerance)) firstRow++;
  let lastRow = wetTo;
  while (lastRow > firstRow && !(Math.abs(s[lastRow]! - levelLate) <= tolerance)) lastRow--;
  return { firstRow, lastRow, tolerance };
}
