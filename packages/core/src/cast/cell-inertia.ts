import { conductivityFromSalinity } from "../seawater/conductivity-from-salinity.ts";
import { practicalSalinity } from "../seawater/practical-salinity.ts";
import type { Cast } from "./cast.ts";
import { skipped, valuesOf, withColumns, withStep } from "./change.ts";
import { keepReceived } from "./received.ts";
import { rowTimes } from "./row-times.ts";
import { rowsApart, wetRuns } from "./wet-runs.ts";

const step = "cell thermal inertia";

export interface CellParameters {
  /** Initial size of the error as a part of the change of temperature; null if not known. */
  readonly size: number | null;
  /** Time in which it decays, s; null if not known. */
  readonly relaxationTime: number | null;
}

export const cellDefaults: CellParameters = { size: null, relaxationTime: null };

/**
 * Rate of change of conductivity with temperature at constant Practical Salinity and pressure, mS cm-1 per deg C.
 *
 * @source PSS-78, difference over 0.01 deg C
 */
export function conductivityPerDegree(C: number, t: number, p: number): number {
  const SP = practicalSalinity(C, t, p);
  return (conductivityFromSalinity(SP, t + 0.005, p) - conductivityFromSalinity(SP, t - 0.005, p)) / 0.01;
}

/**
 * What the wall of the cell still keeps of former temperatures, deg C: exact for temperatures that are linear between
 * rows, hence good for uneven times.
 *
 * @param t       deg C; missing rows let the memory decay
 * @param seconds increasing
 * @source first-order memory after Lueck (1990); the discrete form is ours
 */
export function cellMemory(t: Float64Array, seconds: Float64Array, size: number, tau: number): Float64Array {
  const memory = new Float64Array(t.length);
  let E = 0;
  let last = -1;
  for (let k = 0; k < t.length; k++) {
    if (k > 0) {
      const dt = seconds[k]! - seconds[k - 1]!;
      E *= Math.exp(-dt / tau);
    }
    if (!Number.isNaN(t[k]!)) {
      if (last >= 0) {
        const dt = seconds[k]! - seconds[last]!;
        E += size * (tau / dt) * (1 - Math.exp(-dt / tau)) * (t[k]! - t[last]!);
      }
      last = k;
    }
    memory[k] = E;
  }
  return memory;
}

/**
 * Adds to conductivity what the heat kept by the wall of the cell takes from it. Off unless both numbers of the cell
 * are given. The column as read is kept under `conductivity_received`.
 */
export function correctCellInertia(cast: Cast, { size, relaxationTime: tau }: CellParameters): Cast {
  if (size === null || tau === null) return cast;
  const skip = (reason: string) => withStep(cast, skipped(step, reason));
  const times = rowTimes(cast.elapsed);
  const [C, t, p] = ["conductivity", "temperature", "pressure"].map((name) => valuesOf(cast, name));
  if (C == null || t == null || p == null)
    return skip("the cast lacks conductivity, temperature or pressure");
  if (cast.state.processing === "averaged" || times === null)
    return skip("levels already averaged, or rows without times");
  if (cast.kind === "fixed-depth") return skip("the cast stays at one depth");
  if (cast.steps.some((each) => each.step === step && each.parameters.skipped !== true))
    return skip("it has been done before");
  const result = keepReceived(cast, "conductivity");
  const column = result.columns.get("conductivity")!;
  const values = column.values.slice();
  const apart = rowsApart(cast, "temperature");
  const water = t.map((value, k) => (apart[k] === 1 ? Number.NaN : value));
  let largest = 0;
  for (const [first, last] of wetRuns(cast)) {
    const memory = cellMemory(
      water.subarray(first, last + 1),
      times.seconds.subarray(first, last + 1),
      size,
      tau,
    );
    for (let k = first; k <= last; k++) {
      const change = conductivityPerDegree(C[k]!, t[k]!, p[k]!) * memory[k - first]!;
      if (!Number.isFinite(change)) continue;
      values[k] = C[k]! + change;
      largest = Math.max(largest, Math.abs(change));
    }
  }
  return withStep(withColumns(result, { ...column, values }), {
    step,
    parameters: { size, relaxationTime: tau, largestChange: Math.round(largest * 1e5) / 1e5 },
    counts: {},
    words: `heat kept by the wall of the conductivity cell corrected (size ${size}, relaxation time ${tau} s)`,
  });
}
