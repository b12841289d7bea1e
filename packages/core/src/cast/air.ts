import { median, pressureNoise, quantile, robustSd } from "./robust.ts";
import type { RowTimes } from "./row-times.ts";

/** Parameters of the search for rows in air. All house values. */
export interface AirParameters {
  /** Seconds at either end of the record that are looked at first. */
  readonly lookSeconds: number;
  /** dbar below the reading at the end of the record from which rows count as water. */
  readonly waterBelow: number;
  /** Air conducts less than this part of the freshest water of the cast. */
  readonly largestRatio: number;
  /** Air conducts less than this, mS/cm. */
  readonly largestConductivity: number;
  /** Pressure at rest in air: robust standard deviation up to this, dbar, or three times the noise. */
  readonly restless: number;
  /** The run of air goes on up to this part of the way from air to the freshest water. */
  readonly edge: number;
  /** Seconds next to the water that do not count for the reading in air. */
  readonly guardSeconds: number;
}

export const airDefaults: AirParameters = {
  lookSeconds: 4,
  waterBelow: 0.5,
  largestRatio: 0.1,
  largestConductivity: 0.2,
  restless: 0.05,
  edge: 0.3,
  guardSeconds: 1,
};

/** A run of rows in air at one end of the record. */
export interface AirRun {
  readonly firstRow: number;
  readonly lastRow: number;
  /** Median pressure of the run without the second next to the water, dbar. */
  readonly pressure: number;
}

export interface Air {
  readonly start: AirRun | null;
  readonly end: AirRun | null;
}

/**
 * Rows in air at the start and the end of a record, found from the cast itself: conductivity far below that of
 * the freshest water of this cast while pressure is at rest.
 *
 * @param pressure     dbar, as read; missing is NaN
 * @param conductivity mS/cm; null where the cast has none: then nothing is known
 * @source house
 */
export function findAir(
  times: RowTimes,
  pressure: Float64Array,
  conductivity: Float64Array | null,
  parameters: AirParameters,
): Air {
  if (conductivity === null || pressure.length < 3) return { start: null, end: null };
  const noise = pressureNoise(pressure);
  const start = findRun(times, pressure, conductivity, noise, parameters, 1);
  if (start !== null && start.lastRow === pressure.length - 1) return { start, end: null };
  return { start, end: findRun(times, pressure, conductivity, noise, parameters, -1) };
}

/** The run that begins at the first row (direction 1) or ends at the last (direction -1). */
function findRun(
  { seconds }: RowTimes,
  pressure: Float64Array,
  conductivity: Float64Array,
  noise: number,
  parameters: AirParameters,
  direction: 1 | -1,
): AirRun | null {
  const rows = pressure.length;
  const edgeRow = direction === 1 ? 0 : rows - 1;
  const away = (k: number) => Math.abs(seconds[k]! - seconds[edgeRow]!);
  let looked = 0;
  while (looked < rows && away(edgeRow + direction * looked) < parameters.lookSeconds) looked++;
  const part = (values: Float64Array) =>
    direction === 1 ? values.subarray(0, looked) : values.subarray(rows - looked);
  const level = median(part(conductivity));
  const reading = median(part(pressure));
  const atRest = robustSd(part(pressure)) <= Math.max(3 * noise, parameters.restless);
  // asked first: the freshest water costs a selection among all rows
  if (!(level < parameters.largestConductivity && atRest)) return null;
  const wet = new Float64Array(rows);
  let inWater = 0;
  for (let k = 0; k < rows; k++)
    if (pressure[k]! > reading + parameters.waterBelow) wet[inWater++] = conductivity[k]!;
  const freshest = quantile(wet.subarray(0, inWater), 0.05);
  if (!(level < parameters.largestRatio * freshest)) return null;

  const limit = level + parameters.edge * (freshest - level);
  let last = -1;
  for (let n = 0; n < rows; n++) {
    const C = conductivity[edgeRow + direction * n]!;
    if (C < limit) last = n;
    else if (!Number.isNaN(C)) break;
  }
  if (last < 0) return null;
  const edge = edgeRow + direction * last;
  let kept = last + 1;
  while (
    kept > 0 &&
    Math.abs(seconds[edge]! - seconds[edgeRow + direction * (kept - 1)]!) < parameters.guardSeconds
  )
    kept--;
  if (kept < 3) kept = last + 1;
  const settled = direction === 1 ? pressure.subarray(0, kept) : pressure.subarray(rows - kept);
  const reached = median(settled);
  if (Number.isNaN(reached)) return null;
  return direction === 1
    ? { firstRow: 0, lastRow: edge, pressure: reached }
    : { firstRow: edge, lastRow: rows - 1, pressure: reached };
}
