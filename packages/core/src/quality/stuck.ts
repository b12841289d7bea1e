import { Flag } from "./flag.ts";
import type { Worst } from "./flags-of-test.ts";

export interface StuckLimits {
  /** Smallest step of the printed temperatures (deg C) and conductivities (mS/cm). */
  readonly resolution: { readonly temperature: number; readonly conductivity: number };
  readonly fewestRows: number;
  /** dbar that pressure must cover while the values stand still. */
  readonly leastTravel: number;
  readonly worst?: Worst;
}

/**
 * Temperature and conductivity both standing still while pressure moves. One of them alone is not evidence:
 * homogeneous water looks like that.
 *
 * @param temperature deg C; conductivity mS/cm; pressure dbar; one per row of a segment
 * @returns one flag for both quantities: 1; 4 (or `worst`) stuck; 2 where nothing can be said
 * @source house
 */
export function stuck(
  temperature: Float64Array,
  conductivity: Float64Array,
  pressure: Float64Array,
  { resolution, fewestRows, leastTravel, worst = 4 }: StuckLimits,
): Uint8Array {
  const rows = pressure.length;
  const flags = new Uint8Array(rows).fill(Flag.good);
  const usable = new Uint8Array(rows);
  for (let k = 0; k < rows; k++) {
    const complete = !Number.isNaN(temperature[k]! + conductivity[k]! + pressure[k]!);
    usable[k] = complete ? 1 : 0;
    if (!complete) flags[k] = Flag.notEvaluated;
  }
  const stands = (values: Float64Array, start: number, k: number, step: number) =>
    Math.abs(values[k]! - values[start]!) < step / 2;
  const ofT = (start: number, k: number) => stands(temperature, start, k, resolution.temperature);
  const ofC = (start: number, k: number) => stands(conductivity, start, k, resolution.conductivity);
  const mark = (from: number, to: number, flag: number) => {
    for (let k = from; k < to; k++) if (flags[k] !== worst) flags[k] = flag;
  };
  runs(
    usable,
    (start, k) => ofT(start, k) && ofC(start, k),
    fewestRows,
    (from, to) => {
      let low = Number.POSITIVE_INFINITY;
      let high = Number.NEGATIVE_INFINITY;
      for (let k = from; k < to; k++) {
        low = Math.min(low, pressure[k]!);
        high = Math.max(high, pressure[k]!);
      }
      mark(from, to, high - low > leastTravel ? worst : Flag.notEvaluated);
    },
  );
  for (const standing of [ofT, ofC])
    runs(usable, standing, fewestRows, (from, to) => mark(from, to, Flag.notEvaluated));
  return flags;
}

/** Calls `found` for each run of at least `fewest` usable rows that stand where its first row stood. */
function runs(
  usable: Uint8Array,
  standing: (start: number, k: number) => boolean,
  fewest: number,
  found: (from: number, to: number) => void,
) {
  let start = 0;
  for (let k = 1; k <= usable.length; k++) {
    if (k < usable.length && usable[start] === 1 && usable[k] === 1 && standing(start, k)) continue;
    if (usable[start] === 1 && k - start >= fewest) found(start, k);
    start = k;
  }
}
