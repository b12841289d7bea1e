import type { DataArray, NcType, Slab, Variable } from "./dataset.ts";
import { fail, type Result, succeed } from "./problem.ts";
import { newArray } from "./types.ts";

/** Number of values of a shape; 1 for a scalar. */
export const sizeOf = (shape: readonly number[]): number => shape.reduce((size, length) => size * length, 1);

/** The slab that covers a whole shape. */
export const wholeSlab = (shape: readonly number[]): Slab => ({ start: shape.map(() => 0), count: shape });

/**
 * A slab that lies inside the variable, or the problem with it. Without a slab it is the whole variable. A
 * count of 0 is allowed, also with a start just behind the end.
 */
export function checkSlab(variable: Variable, slab?: Slab): Result<Slab> {
  const { name, shape } = variable;
  if (slab === undefined) return succeed(wholeSlab(shape));
  const complain = (message: string, remedy: string): Result<never> =>
    fail({ code: "netcdf/slab", message, where: { variable: name }, remedy });
  const { start, count } = slab;
  if (start.length !== shape.length || count.length !== shape.length)
    return complain(
      `a slab of ${start.length} starts and ${count.length} counts was asked of ${name}, which has ${shape.length} dimensions`,
      "Give one start and one count for each dimension.",
    );
  for (const [axis, length] of shape.entries()) {
    const from = start[axis] ?? -1;
    const many = count[axis] ?? -1;
    if (!Number.isInteger(from) || !Number.isInteger(many) || from < 0 || many < 0 || from + many > length)
      return complain(
        `${many} values from ${from} were asked along ${variable.dimensions[axis]} of ${name}, which has ${length}`,
        `Ask for values inside 0 to ${length}.`,
      );
  }
  return succeed({ start: [...start], count: [...count] });
}

/** Length of the runs of values that lie together both in `shape` and in a slab of it. */
export function runLength(shape: readonly number[], slab: Slab): number {
  let length = 1;
  for (let axis = shape.length - 1; axis >= 0; axis--) {
    length *= slab.count[axis]!;
    if (slab.count[axis] !== shape[axis]) break;
  }
  return length;
}

/**
 * First value of each run of a slab, as an index into the row-major values of `shape`, in order. Every run has
 * `runLength(shape, slab)` values.
 */
export function* runStarts(shape: readonly number[], slab: Slab): Generator<number> {
  if (sizeOf(slab.count) === 0) return;
  let inner = shape.length;
  while (inner > 0 && slab.count[inner - 1] === shape[inner - 1]) inner--;
  const outer = Math.max(inner - 1, 0); // axes before this one are counted through, the rest lies together
  const strides = new Array<number>(shape.length).fill(1);
  for (let axis = shape.length - 2; axis >= 0; axis--) strides[axis] = strides[axis + 1]! * shape[axis + 1]!;
  let position = 0;
  for (let axis = 0; axis < shape.length; axis++) position += slab.start[axis]! * strides[axis]!;
  const done = new Array<number>(outer).fill(0);
  for (;;) {
    yield position;
    let axis = outer - 1;
    for (; axis >= 0; axis--) {
      done[axis]! += 1;
      position += strides[axis]!;
      if (done[axis]! < slab.count[axis]!) break;
      position -= strides[axis]! * slab.count[axis]!;
      done[axis] = 0;
    }
    if (axis < 0) return;
  }
}

/** Values of a slab, copied out of the row-major values of the whole variable. */
export function takeSlab(type: NcType, data: DataArray, shape: readonly number[], slab: Slab): DataArray {
  const length = runLength(shape, slab);
  const taken = newArray(type, sizeOf(slab.count));
  let at = 0;
  for (const from of runStarts(shape, slab)) {
    copyRun(data, from, length, taken, at);
    at += length;
  }
  return taken;
}

function copyRun(from: DataArray, start: number, length: number, out: DataArray, at: number): void {
  if (Array.isArray(from)) {
    for (let i = 0; i < length; i++) (out as string[])[at + i] = from[start + i]!;
  } else {
    // both are of the variable's own type
    (out as Float64Array).set((from as Float64Array).subarray(start, start + length), at);
  }
}

/**
 * Slabs that cover a shape in row-major order; each lies together, and all but a single innermost value have at
 * most `most` values.
 */
export function* contiguousSlabs(shape: readonly number[], most: number): Generator<Slab> {
  if (sizeOf(shape) === 0) return;
  let axis = shape.length - 1;
  let row = 1; // values of one step along the axis
  while (axis > 0 && row * shape[axis]! <= most) row *= shape[axis--]!;
  if (axis < 0) {
    yield { start: [], count: [] };
    return;
  }
  const steps = Math.max(1, Math.floor(most / row));
  const inner = shape.slice(axis + 1);
  const outer = shape.slice(0, axis);
  const at = outer.map(() => 0);
  for (;;) {
    for (let from = 0; from < shape[axis]!; from += steps)
      yield {
        start: [...at, from, ...inner.map(() => 0)],
        count: [...outer.map(() => 1), Math.min(steps, shape[axis]! - from), ...inner],
      };
    let turn = outer.length - 1;
    for (; turn >= 0; turn--) {
      at[turn]! += 1;
      if (at[turn]! < outer[turn]!) break;
      at[turn] = 0;
    }
    if (turn < 0) return;
  }
}
