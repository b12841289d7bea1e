import { median } from "@wherry/core";
import { extentOf } from "./number-column.ts";

/** How the rows of one table are casts. */
export interface Parting {
  /** First row of each cast; [0] is one cast. */
  readonly firstRows: readonly number[];
  readonly because: string;
  /** Whether a person has to say. */
  readonly open: boolean;
}

/**
 * Whether rows that only blank lines, remarks or repeated heads part are one cast or several: pressure or depth
 * begins again at the surface where a new cast does, and goes on where the same one does.
 *
 * @param gaps     rows that stand behind such a line
 * @param vertical pressure or depth of the rows, NaN where missing
 * @param answer   what a person said, null if nothing
 * @returns        null where the rows go on at every gap
 */
export function partingAt(
  gaps: readonly number[],
  vertical: Float64Array,
  answer: "one" | "each" | null,
): Parting | null {
  const ends = [...gaps, vertical.length];
  const whole = extentOf(vertical);
  const parts = [0, ...gaps].map((from, i) => vertical.subarray(from, ends[i]));
  const rowStep = median(vertical.slice(1).map((value, row) => Math.abs(value - vertical[row]!)));
  const near = Math.max(0.25 * (whole.max - whole.min), 3 * rowStep);
  const steps = gaps.map((_, i) => stepBetween(parts[i]!, parts[i + 1]!, whole.max - whole.min, near));
  const again = gaps.filter((_, i) => steps[i] !== "on");
  if (again.length === 0) return null;
  const clear = steps.every((step) => step === "again");
  if (answer === "one" || (answer === null && !clear))
    return { firstRows: [0], because: "", open: answer === null };
  return {
    firstRows: [0, ...again],
    because: `pressure or depth begins again at the surface behind ${again.length === 1 ? "a line" : `${again.length} lines`} without numbers`,
    open: false,
  };
}

type Step = "again" | "on" | "doubtful";

/** A profile begins in the shallow quarter of itself and of the one before it, and both are of like depth. */
function stepBetween(before: Float64Array, after: Float64Array, whole: number, near: number): Step {
  const [first, last] = [after.find(known), before.findLast(known)];
  if (first === undefined || last === undefined) return "doubtful";
  const [a, b] = [extentOf(before), extentOf(after)];
  const [deep, deepNext] = [a.max - a.min, b.max - b.min];
  const atTop = first <= a.min + 0.25 * deep && first <= b.min + 0.25 * deepNext && deepNext > 0;
  if (atTop && deep > 0.2 * whole)
    return Math.min(deep, deepNext) > 0.2 * Math.max(deep, deepNext) ? "again" : "doubtful";
  return Math.abs(first - last) <= near ? "on" : "doubtful";
}

const known = (value: number) => !Number.isNaN(value);
