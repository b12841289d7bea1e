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
  const T: Standing = { values: temperature, within: resolution.temperature / 2 };
  const C: Standing = { values: conductivity, within: resolution.conductivity / 2 };
  const mark = (from: number, to: number, flag: number) => {
    for (let k = from; k < to; k++) if (flags[k] !== worst) flags[k] = flag;
  };
  runs(usable, T, C, fewestRows, (from, to) => {
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (let k = from; k < to; k++) {
      low = Math.min(low, pressure[k]!);
      high = Math.max(high, pressure[k]!);
    }
    mark(from, to, high - low > leastTravel ? worst : Flag.notEvaluated);
  });
  for (const alone of [T, C])
    runs(usable, alone, alone, fewestRows, (from, to) => mark(from, to, Flag.notEvaluated));
  return flags;
}

interface Standing {
  readonly values: Float64Array;
  /** How far from its first value a run may go. */
  readonly within: number;
}

const stands = ({ values, within }: Standing, start: number, k: number): boolean =>
  Math.abs(values[k]! - values[start]!) < within;

/** Calls `found` for each run of at least `fewest` usable rows in which both stand where they stood in its first row. */
function runs(
  usable: Uint8Array,
  one: Standing,
  other: Standing,
  fewest: number,
  found: (from: number, to: number) => void,
) {
  let start = 0;
  for (let k = 1; k <= usable.length; k++) {
    const goes = k < usable.length && usable[start] === 1 && usable[k] === 1;
    if (goes && stands(one, start, k) && stands(other, start, k)) continue;
    if (usable[start] === 1 && k - start >= fewest) found(start, k);
    start = k;
  }
}
