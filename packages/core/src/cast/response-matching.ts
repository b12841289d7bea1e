import { bridge } from "./bridge.ts";
import type { Cast } from "./cast.ts";
import { skipped, withColumns, withStep } from "./change.ts";
import { type DelayEstimate, estimateDelay } from "./delay-estimate.ts";
import { keepReceived } from "./received.ts";
import { type RowTimes, rowTimes } from "./row-times.ts";
import { rowsApart, wetRuns } from "./wet-runs.ts";

const step = "response matching";

export interface SensorResponse {
  /** First-order response time, s; null if not known. */
  readonly time: number | null;
  /** Time by which the reading comes late beside that, s; null if not known. */
  readonly delay: number | null;
}

export interface ResponseParameters {
  readonly temperature: SensorResponse;
  readonly conductivity: SensorResponse;
  /** Shift temperature by the delay that the cast itself shows, where the estimate is sure. */
  readonly delayFromData: boolean;
  /** Longest delay looked for, s. */
  readonly largestDelay: number;
  /** Correlation from which an estimate is sure, and spread of its parts up to which it is, s. */
  readonly fewestCorrelated: number;
  readonly largestSpread: number;
}

export const responseDefaults: ResponseParameters = {
  temperature: { time: null, delay: null },
  conductivity: { time: null, delay: null },
  delayFromData: false,
  largestDelay: 2,
  fewestCorrelated: 0.7,
  largestSpread: 0.15,
};

/**
 * Brings temperature and conductivity to the same response: shifts a column by its delay, then adds its response time
 * times its rate of change, on the column smoothed by (1/4, 1/2, 1/4). Spikes and missing rows are bridged for their
 * neighbours and keep their own values. The columns as read are kept under `<name>_received`.
 *
 * Without numbers nothing is sharpened; the step then says so, and what delay the cast itself shows.
 *
 * @source first-order sensors; the discrete form is common practice
 */
export function matchResponse(cast: Cast, parameters: ResponseParameters): Cast {
  const times = rowTimes(cast.elapsed);
  const skip = (reason: string) => withStep(cast, skipped(step, reason));
  if (cast.state.processing === "averaged" || times === null)
    return skip("levels already averaged, or rows without times");
  if (cast.kind === "fixed-depth") return skip("the cast stays at one depth");
  if (cast.state.lagCorrected) return skip("the source says that it has been done");
  if (cast.steps.some((each) => each.step === step && each.parameters.skipped !== true))
    return skip("it has been done before");
  if (!cast.columns.has("temperature") || !cast.columns.has("conductivity"))
    return skip("the cast lacks temperature or conductivity");

  const estimate = estimateDelay(cast, times, parameters.largestDelay);
  const sure =
    estimate !== null &&
    estimate.correlation >= parameters.fewestCorrelated &&
    estimate.spread <= parameters.largestSpread;
  const { temperature, conductivity } = parameters;
  const given = [temperature, conductivity].some(({ time, delay }) => time !== null || delay !== null);
  const shown = estimateRecord(estimate, sure);
  if (!given && !(parameters.delayFromData && sure)) {
    const reason = parameters.delayFromData
      ? "the cast itself does not show the delay surely"
      : "no response times given";
    return withStep(cast, {
      step,
      parameters: { skipped: true, reason, ...shown },
      counts: {},
      words: `${step} skipped: ${reason}; salinity in sharp layers carries the mismatch of the sensors`,
    });
  }
  const own = { temperature, conductivity };
  if (!given && estimate !== null) own.temperature = { time: null, delay: estimate.delay };
  let result = cast;
  const used: Record<string, number> = {};
  const told: string[] = [];
  for (const name of ["temperature", "conductivity"] as const) {
    const { time, delay } = own[name];
    if ((time ?? 0) === 0 && (delay ?? 0) === 0) continue;
    result = keepReceived(result, name);
    const column = result.columns.get(name)!;
    result = withColumns(result, { ...column, values: matched(result, name, times, time ?? 0, delay ?? 0) });
    if (time !== null) used[`${name}.time`] = time;
    if (delay !== null) used[`${name}.delay`] = delay;
    told.push(
      `${name} ${[time === null ? [] : [`by a response time of ${time} s`], delay === null ? [] : [`shifted by ${Math.round(delay * 1000) / 1000} s`]].flat().join(", ")}`,
    );
  }
  if (told.length === 0) return skip("response times and delays are zero");
  return withStep(result, {
    step,
    parameters: { ...used, delayFromData: !given, ...shown },
    counts: {},
    words: `sensor response matched: ${told.join("; ")}`,
  });
}

function estimateRecord(estimate: DelayEstimate | null, sure: boolean) {
  if (estimate === null) return { estimatedDelay: null };
  const rounded = (x: number) => Math.round(x * 1000) / 1000;
  return {
    estimatedDelay: rounded(estimate.delay),
    estimateCorrelation: rounded(estimate.correlation),
    estimateSpread: Number.isFinite(estimate.spread) ? rounded(estimate.spread) : null,
    estimateSure: sure,
  };
}

/** The column shifted and sharpened inside each run of rows in water. */
function matched(cast: Cast, name: string, times: RowTimes, tau: number, delay: number): Float64Array {
  const values = cast.columns.get(name)!.values;
  const apart = rowsApart(cast, name);
  const out = values.slice();
  for (const [first, last] of wetRuns(cast)) {
    if (last - first < 2) continue;
    const t = times.seconds.subarray(first, last + 1);
    const bridged = bridge(values.subarray(first, last + 1), t, apart.subarray(first, last + 1));
    const x = delay === 0 ? bridged : shifted(bridged, t, delay);
    const sharp = tau === 0 ? x : sharpened(x, t, tau);
    for (let k = 0; k < sharp.length; k++)
      if (apart[first + k] === 0 && Number.isFinite(sharp[k]!)) out[first + k] = sharp[k]!;
  }
  return out;
}

/** Values at a later time, linear between rows, the last one beyond the end. */
function shifted(x: Float64Array, t: Float64Array, delay: number): Float64Array {
  const out = new Float64Array(x.length);
  let after = 0;
  for (let k = 0; k < x.length; k++) {
    const wanted = t[k]! + delay;
    if (k === 0 || wanted < t[after - 1]!) after = 0;
    while (after < x.length && t[after]! < wanted) after++;
    if (after === 0) out[k] = x[0]!;
    else if (after === x.length) out[k] = x[x.length - 1]!;
    else {
      const part = (wanted - t[after - 1]!) / (t[after]! - t[after - 1]!);
      out[k] = x[after - 1]! + part * (x[after]! - x[after - 1]!);
    }
  }
  return out;
}

function sharpened(x: Float64Array, t: Float64Array, tau: number): Float64Array {
  const last = x.length - 1;
  const smooth = x.slice();
  for (let k = 1; k < last; k++) smooth[k] = (x[k - 1]! + 2 * x[k]! + x[k + 1]!) / 4;
  const out = new Float64Array(x.length);
  for (let k = 0; k <= last; k++) {
    const from = Math.max(0, k - 1);
    const to = Math.min(last, k + 1);
    out[k] = smooth[k]! + (tau * (smooth[to]! - smooth[from]!)) / (t[to]! - t[from]!);
  }
  return out;
}
