import type { Segment, SegmentKind } from "../cast/cast.ts";
import { Flag } from "./flag.ts";
import { flagsFor } from "./flags-of-test.ts";

/** Rows of one direction in the order in which they are judged: from the surface downwards, or along time. */
export interface JudgedRun {
  readonly kind: SegmentKind;
  readonly rows: Int32Array;
}

/** The judged directions of a cast: down as recorded, up from the surface downwards, a stay along time. */
export function judgedRuns(segments: readonly Segment[]): readonly JudgedRun[] {
  let runs = known.get(segments);
  if (runs === undefined) {
    runs = listRuns(segments);
    known.set(segments, runs);
  }
  return runs;
}

/** Every step after segmentation asks for the runs of the same segments, which nobody changes. */
const known = new WeakMap<readonly Segment[], readonly JudgedRun[]>();

function listRuns(segments: readonly Segment[]): readonly JudgedRun[] {
  const runs: JudgedRun[] = [];
  for (const kind of ["down", "up", "stay"] as const) {
    const own = segments.filter((segment) => segment.kind === kind);
    const rows = new Int32Array(own.reduce((sum, each) => sum + each.lastRow - each.firstRow + 1, 0));
    let at = 0;
    for (const { firstRow, lastRow } of own) for (let k = firstRow; k <= lastRow; k++) rows[at++] = k;
    if (kind === "up") rows.reverse();
    if (rows.length > 0) runs.push({ kind, rows });
  }
  return runs;
}

/** 1 for rows of a judged direction, else 0. */
export function judgedMask(rows: number, runs: readonly JudgedRun[]): Uint8Array {
  const mask = new Uint8Array(rows);
  for (const { rows: judged } of runs) for (let r = 0; r < judged.length; r++) mask[judged[r]!] = 1;
  return mask;
}

/** Values of the rows of a run, in its order: a view where the rows stand one after the other. Not to be changed. */
export function pick(values: Float64Array, run: JudgedRun): Float64Array {
  const { rows } = run;
  const first = rows[0]!;
  if (rows.at(-1)! - first === rows.length - 1) return values.subarray(first, first + rows.length);
  const picked = new Float64Array(rows.length);
  for (let k = 0; k < picked.length; k++) picked[k] = values[rows[k]!]!;
  return picked;
}

/**
 * Runs a test in each direction by itself, as if no other rows existed.
 *
 * @param own     the judged quantity; rows outside the runs are 9 where it is missing, else 2. Null for tests of
 *                several variables: 2 throughout.
 * @param inputs  columns given to the test, restricted to the run
 */
export function judgeRuns(
  rows: number,
  runs: readonly JudgedRun[],
  own: Float64Array | null,
  inputs: readonly Float64Array[],
  test: (...columns: Float64Array[]) => Uint8Array,
): Uint8Array {
  const flags =
    own === null ? new Uint8Array(rows).fill(Flag.notEvaluated) : flagsFor(own, Flag.notEvaluated);
  for (const run of runs) {
    const result = test(...inputs.map((values) => pick(values, run)));
    for (let k = 0; k < result.length; k++) flags[run.rows[k]!] = result[k]!;
  }
  return flags;
}
