import { Flag } from "../quality/flag.ts";
import type { Cast, Segment } from "./cast.ts";
import { valuesOf, withColumns, withStep, withTest } from "./change.ts";
import { median } from "./robust.ts";

const step = "signs of the series";

export interface SeriesParameters {
  /** Out of water: conductivity below this part of its median during the stay. */
  readonly waterPart: number;
  /** Trend of pressure over the stay, tides averaged out, that is worth a warning, dbar per day. */
  readonly largestDrift: number;
}

export const seriesDefaults: SeriesParameters = { waterPart: 0.1, largestDrift: 0.01 };

/** Two M2 periods and a little: means over it hold next to no tide. */
const TIDES = 25 * 3600;
/** Fewest such means from which a trend is told. */
const FEWEST_MEANS = 4;

/**
 * Signs that a fixed-depth series tells of itself: rows out of water (3 on temperature, conductivity and salinity),
 * times that repeat or go back, and a pressure that drifts. Nothing is corrected: a sensor that drifts and a mooring
 * that sinks look alike.
 *
 * @source house
 */
export function seriesSigns(cast: Cast, { waterPart, largestDrift }: SeriesParameters): Cast {
  const stay = cast.segments.find(({ kind }) => kind === "stay");
  if (cast.kind !== "fixed-depth" || stay === undefined) return cast;
  const dry = rowsOutOfWater(cast, stay, waterPart);
  const { repeated, back } = timesOf(cast);
  const drift = pressureTrend(cast, stay);
  const columns = ["temperature", "conductivity", "salinity"].flatMap((name) => cast.columns.get(name) ?? []);
  const judged =
    dry === null ? cast : withColumns(cast, ...columns.map((c) => withTest(c, "out_of_water", dry)));
  const outOfWater =
    dry === null ? 0 : dry.reduce((count, flag) => count + (flag === Flag.questionable ? 1 : 0), 0);
  const told = [
    ...(outOfWater > 0 ? [`${outOfWater} rows out of water flagged`] : []),
    ...(repeated > 0 ? [`${repeated} times repeat`] : []),
    ...(back > 0 ? [`${back} times go back`] : []),
    ...(Math.abs(drift) > largestDrift
      ? [`pressure changes by ${drift.toFixed(3)} dbar a day, check it`]
      : []),
  ];
  return withStep(judged, {
    step,
    parameters: {
      waterPart,
      largestDrift,
      pressureTrend: Number.isNaN(drift) ? null : Math.round(drift * 1e5) / 1e5,
    },
    counts: { outOfWater, repeatedTimes: repeated, timesGoingBack: back },
    words:
      told.length === 0
        ? "series looked through, no signs found"
        : `series looked through: ${told.join(", ")}`,
  });
}

/** 3 for rows of the stay that conduct like air, 1 for its other rows, 2 elsewhere; null without conductivity. */
function rowsOutOfWater(cast: Cast, { firstRow, lastRow }: Segment, part: number): Uint8Array | null {
  const C = valuesOf(cast, "conductivity");
  if (C === null) return null;
  const usual = median(C.subarray(firstRow, lastRow + 1));
  if (!(usual > 0)) return null;
  const result = new Uint8Array(cast.rows).fill(Flag.notEvaluated);
  for (let k = firstRow; k <= lastRow; k++)
    if (!Number.isNaN(C[k]!)) result[k] = C[k]! < part * usual ? Flag.questionable : Flag.good;
  return result;
}

function timesOf({ elapsed }: Cast): { readonly repeated: number; readonly back: number } {
  let repeated = 0;
  let back = 0;
  let latest = Number.NEGATIVE_INFINITY;
  for (const time of elapsed ?? []) {
    if (Number.isNaN(time)) continue;
    if (time === latest) repeated++;
    else if (time < latest) back++;
    latest = Math.max(latest, time);
  }
  return { repeated, back };
}

/** Median slope between all pairs of means over two tides, dbar per day; NaN if the stay is too short. */
function pressureTrend(cast: Cast, { firstRow, lastRow }: Segment): number {
  const pressure = valuesOf(cast, "pressure");
  const { elapsed } = cast;
  if (pressure === null || elapsed === null) return Number.NaN;
  const sums = new Map<number, { sum: number; count: number }>();
  for (let k = firstRow; k <= lastRow; k++) {
    if (Number.isNaN(pressure[k]! + elapsed[k]!)) continue;
    const part = Math.floor((elapsed[k]! - elapsed[firstRow]!) / TIDES);
    const mean = sums.get(part) ?? { sum: 0, count: 0 };
    mean.sum += pressure[k]!;
    mean.count++;
    sums.set(part, mean);
  }
  const most = Math.max(0, ...[...sums.values()].map(({ count }) => count));
  // the last part may hold half a tide
  const means = [...sums].filter(([, { count }]) => count > 0.9 * most);
  if (means.length < FEWEST_MEANS) return Number.NaN;
  const slopes: number[] = [];
  for (const [i, [a, first]] of means.entries())
    for (const [b, second] of means.slice(i + 1, i + 200))
      slopes.push((second.sum / second.count - first.sum / first.count) / ((b - a) * (TIDES / 86400)));
  return median(Float64Array.from(slopes));
}
