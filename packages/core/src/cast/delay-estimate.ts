import { bridge } from "./bridge.ts";
import type { Cast } from "./cast.ts";
import { median } from "./robust.ts";
import type { RowTimes } from "./row-times.ts";
import { rowsApart } from "./wet-runs.ts";

/** The delay of temperature behind conductivity that a downcast shows. */
export interface DelayEstimate {
  /** s; positive where temperature comes late. */
  readonly delay: number;
  /** Correlation of the changes of both at that delay, 0 to 1. */
  readonly correlation: number;
  /** Median distance of the estimates of quarters of the downcast from the whole, s; NaN if no quarter has one. */
  readonly spread: number;
}

/**
 * Looks for the delay at which the changes of temperature fit those of conductivity best. Conductivity follows
 * temperature by far more than salinity in most water, or both change together in a halocline; either way their
 * changes belong to the same water and should come at the same time.
 *
 * @param largest longest delay looked for, s
 * @returns null where the downcast is too short or nothing changes in it
 * @source cross-correlation of first differences, the peak by a parabola: common practice
 */
export function estimateDelay(cast: Cast, times: RowTimes, largest: number): DelayEstimate | null {
  const down = cast.segments.find(({ kind }) => kind === "down");
  const [T, C] = [cast.columns.get("temperature")?.values, cast.columns.get("conductivity")?.values];
  const reach = Math.ceil(largest / times.interval);
  if (down === undefined || T === undefined || C === undefined) return null;
  const rows = down.lastRow - down.firstRow + 1;
  if (rows < 4 * reach || rows < 30) return null;
  const changes = (name: string, values: Float64Array) => {
    const t = times.seconds.subarray(down.firstRow, down.lastRow + 1);
    const x = bridge(
      values.subarray(down.firstRow, down.lastRow + 1),
      t,
      rowsApart(cast, name).subarray(down.firstRow, down.lastRow + 1),
    );
    for (let k = 0; k + 1 < rows; k++) x[k] = x[k + 1]! - x[k]!;
    return x.subarray(0, rows - 1);
  };
  const dT = changes("temperature", T);
  const dC = changes("conductivity", C);
  const whole = best(dT, dC, 0, rows - 1, reach);
  if (whole === null) return null;
  const off: number[] = [];
  for (let part = 0; part < 4; part++) {
    const from = Math.floor((part * (rows - 1)) / 4);
    const to = Math.floor(((part + 1) * (rows - 1)) / 4);
    const own = best(dT, dC, from, to, reach);
    // a quarter of mixed water tells nothing
    if (own !== null && own.correlation >= whole.correlation / 2) off.push(Math.abs(own.rows - whole.rows));
  }
  return {
    delay: whole.rows * times.interval,
    correlation: whole.correlation,
    spread: off.length < 2 ? Number.NaN : median(Float64Array.from(off)) * times.interval,
  };
}

/** Shift in rows, with a fraction, at which the changes from row `from` to before row `to` are most alike. */
function best(
  dT: Float64Array,
  dC: Float64Array,
  from: number,
  to: number,
  reach: number,
): { readonly rows: number; readonly correlation: number } | null {
  const at = (shift: number): number => {
    let xy = 0;
    let xx = 0;
    let yy = 0;
    const last = Math.min(to, to - shift);
    for (let k = Math.max(from, from - shift); k < last; k++) {
      const c = dC[k]!;
      const t = dT[k + shift]!;
      xy += c * t;
      xx += c * c;
      yy += t * t;
    }
    return xx > 0 && yy > 0 ? Math.abs(xy) / Math.sqrt(xx * yy) : Number.NaN;
  };
  let top = Number.NaN;
  let peak = 0;
  for (let shift = -reach; shift <= reach; shift++) {
    const r = at(shift);
    if (Number.isNaN(r)) return null;
    if (!(r <= top)) {
      top = r;
      peak = shift;
    }
  }
  if (Math.abs(peak) === reach) return { rows: peak, correlation: 0 };
  const [before, after] = [at(peak - 1), at(peak + 1)];
  const bend = before - 2 * top + after;
  return { rows: peak + (bend === 0 ? 0 : (before - after) / (2 * bend)), correlation: top };
}
