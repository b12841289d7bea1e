import type { Cast } from "./cast.ts";
import { skipped, withColumns, withStep } from "./change.ts";
import { keepReceived } from "./received.ts";
import { rowTimes } from "./row-times.ts";
import { rowsApart, wetRuns } from "./wet-runs.ts";

const step = "smoothing";

export interface SmoothingParameters {
  /** Length of the running mean, s; null for none. */
  readonly window: number | null;
}

/**
 * Smooths temperature and conductivity by the same symmetric window: one alone would make the mismatch that response
 * matching removes. Spikes and missing rows are left out of their neighbours' means and keep their own values. The
 * columns as read are kept under `<name>_received`.
 */
export function smoothColumns(cast: Cast, { window }: SmoothingParameters): Cast {
  if (window === null) return cast;
  const times = rowTimes(cast.elapsed);
  if (times === null || cast.state.processing === "averaged")
    return withStep(cast, skipped(step, "levels already averaged, or rows without times"));
  if (cast.steps.some((each) => each.step === step && each.parameters.skipped !== true))
    return withStep(cast, skipped(step, "it has been done before"));
  const half = Math.round(window / times.interval / 2);
  if (half === 0) return withStep(cast, skipped(step, "the window is shorter than two rows"));
  let result = cast;
  for (const name of ["temperature", "conductivity"]) {
    if (!cast.columns.has(name)) continue;
    result = keepReceived(result, name);
    const column = result.columns.get(name)!;
    result = withColumns(result, { ...column, values: means(cast, name, column.values, half) });
  }
  return withStep(result, {
    step,
    parameters: { window, rows: 2 * half + 1 },
    counts: {},
    words: `temperature and conductivity smoothed by a running mean of ${2 * half + 1} rows`,
  });
}

function means(cast: Cast, name: string, values: Float64Array, half: number): Float64Array {
  const apart = rowsApart(cast, name);
  const out = values.slice();
  for (const [first, last] of wetRuns(cast)) {
    // about a value of the run, sums keep their digits
    let centre = 0;
    for (let k = first; k <= last; k++)
      if (apart[k] === 0) {
        centre = values[k]!;
        break;
      }
    const sums = new Float64Array(last - first + 2);
    const known = new Int32Array(last - first + 2);
    for (let k = first; k <= last; k++) {
      const kept = apart[k] === 0;
      sums[k - first + 1] = sums[k - first]! + (kept ? values[k]! - centre : 0);
      known[k - first + 1] = known[k - first]! + (kept ? 1 : 0);
    }
    for (let k = first; k <= last; k++) {
      if (apart[k] === 1) continue;
      const reach = Math.min(half, k - first, last - k);
      const [from, to] = [k - first - reach, k - first + reach + 1];
      out[k] = centre + (sums[to]! - sums[from]!) / (known[to]! - known[from]!);
    }
  }
  return out;
}
