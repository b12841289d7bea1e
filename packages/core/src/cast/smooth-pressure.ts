import { bridge } from "./bridge.ts";
import type { RowTimes } from "./row-times.ts";

/** Pressure made smooth for finding the parts of a cast, and its rate of change. One value per row. */
export interface SmoothPressure {
  /** dbar: three-point median, then running mean over one second (at least three rows). */
  readonly s: Float64Array;
  /** ds/dt, dbar per second, positive going down. */
  readonly w: Float64Array;
  /** Three-point median of the pressure, dbar. */
  readonly middle: Float64Array;
  /** Pressure with spikes and missing rows bridged, dbar. */
  readonly bridged: Float64Array;
  /** Rows in one second, at least three. */
  readonly rowsPerSecond: number;
}

/**
 * @param leaveOut 1 for rows with a pressure spike: they are bridged
 * @returns shared by all who ask with the same three: not to be changed
 * @source house
 */
export function smoothPressure(
  pressure: Float64Array,
  times: RowTimes,
  leaveOut: Uint8Array,
): SmoothPressure {
  if (last?.pressure !== pressure || last.times !== times || last.leaveOut !== leaveOut)
    last = { pressure, times, leaveOut, smooth: smoothed(pressure, times, leaveOut) };
  return last.smooth;
}

/** Segmentation and the rule on reversals ask for the same, one after the other; no more than one cast is kept. */
let last: {
  readonly pressure: Float64Array;
  readonly times: RowTimes;
  readonly leaveOut: Uint8Array;
  readonly smooth: SmoothPressure;
} | null = null;

function smoothed(pressure: Float64Array, times: RowTimes, leaveOut: Uint8Array): SmoothPressure {
  const rows = pressure.length;
  const bridged = bridge(pressure, times.seconds, leaveOut);
  const middle = bridged.slice();
  for (let k = 1; k + 1 < rows; k++) {
    const a = bridged[k - 1]!;
    const b = bridged[k]!;
    const c = bridged[k + 1]!;
    middle[k] = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  }
  const rowsPerSecond = Math.max(3, Math.round(1 / times.interval));
  const half = Math.max(1, Math.round(0.5 / times.interval));
  const sums = new Float64Array(rows + 1);
  for (let k = 0; k < rows; k++) sums[k + 1] = sums[k]! + middle[k]!;
  const s = new Float64Array(rows);
  for (let k = 0; k < rows; k++) {
    const reach = Math.min(half, k, rows - 1 - k);
    s[k] = (sums[k + reach + 1]! - sums[k - reach]!) / (2 * reach + 1);
  }
  const w = new Float64Array(rows);
  for (let k = 0; k < rows; k++) {
    const from = Math.max(0, k - 1);
    const to = Math.min(rows - 1, k + 1);
    w[k] = to > from ? (s[to]! - s[from]!) / (times.seconds[to]! - times.seconds[from]!) : 0;
  }
  return { s, w, middle, bridged, rowsPerSecond };
}
