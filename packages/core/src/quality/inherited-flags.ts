import type { Column } from "../cast/cast.ts";
import { Flag } from "./flag.ts";

/**
 * Tests that judge the data without condemning a row: a 3 from them keeps no row out of a layer mean. Rated
 * pressure is not passed on to computed quantities; an inversion between layers is set on each of them as a test
 * of its own and makes the layer questionable.
 */
export const layerTests: readonly string[] = ["rated_pressure", "density_inversion_layers"];

/**
 * What a computed column takes over from its inputs: the worst of 4, 3, 2, 1; 9 where it is itself missing, and 3
 * where it is not although an input is (depth interpolated in time).
 *
 * @param inputs flags of the inputs, without the layer tests
 */
export function inheritedFlags(values: Float64Array, inputs: readonly Uint8Array[]): Uint8Array {
  const rows = values.length;
  const flags = new Uint8Array(rows).fill(inputs.length === 0 ? Flag.notEvaluated : Flag.good);
  for (const input of inputs)
    for (let k = 0; k < rows; k++) {
      const flag = input[k] === Flag.missing ? Flag.questionable : input[k]!;
      if (flag > flags[k]!) flags[k] = flag;
    }
  for (let k = 0; k < rows; k++) if (Number.isNaN(values[k]!)) flags[k] = Flag.missing;
  return flags;
}

/**
 * 1 for rows of a column that must not go into a layer mean: flag 3, 4 or 9, but for a 3 from layer tests only. The
 * array is shared by all who ask for the same column: copy it before changing it.
 */
export function keptOut(column: Column): Uint8Array {
  let out = known.get(column);
  if (out === undefined) {
    out = rowsKeptOut(column);
    known.set(column, out);
  }
  return out;
}

/** Both ways of a cast, and layers of each width, ask for the rows of the same column. */
const known = new WeakMap<Column, Uint8Array>();

function rowsKeptOut(column: Column): Uint8Array {
  const { flags } = column;
  const out = new Uint8Array(flags.length);
  for (let k = 0; k < out.length; k++) if (flags[k]! >= Flag.questionable) out[k] = 1;
  const layer = layerTests.flatMap((name) => column.tests.get(name) ?? []);
  if (layer.length === 0) return out;
  const others = [...column.tests].flatMap(([name, result]) => (layerTests.includes(name) ? [] : [result]));
  for (let k = 0; k < out.length; k++) {
    if (flags[k] !== Flag.questionable) continue;
    if (!layer.some((result) => result[k] === Flag.questionable)) continue;
    if (!others.some((result) => result[k] === Flag.questionable || result[k] === Flag.bad)) out[k] = 0;
  }
  return out;
}
