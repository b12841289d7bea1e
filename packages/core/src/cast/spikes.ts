import { countCaught } from "../quality/flags-of-test.ts";
import { judgedMask, judgedRuns, judgeRuns } from "../quality/judged-rows.ts";
import { type SpikeReturnLimits, spikeReturn } from "../quality/spike-return.ts";
import { bridge } from "./bridge.ts";
import type { Cast, Column, StepRecord } from "./cast.ts";
import { skipped, withColumns, withStep, withTest } from "./change.ts";
import { median, pressureNoise } from "./robust.ts";
import { rowTimes } from "./row-times.ts";

/** Parameters of the rule spike_return for a cast; null floors switch it off for a quantity. */
export interface DespikeParameters {
  readonly gradientFactor: number;
  readonly windowRows: number;
  readonly longest: number;
  /** Smallest spacing of rows along pressure, dbar; the noise of the pressure times `noiseFactor` if larger. */
  readonly spacingFloor: number;
  readonly noiseFactor: number;
  /** By column name. `floor` in the unit of the column; `floorPart` of the column's median if larger. */
  readonly quantities: Readonly<Record<string, SpikeHeights>>;
}

export interface SpikeHeights {
  readonly floor: number;
  readonly floorPart: number;
  /** Height above which a spike is bad; null for never. */
  readonly badAbove: number | null;
}

const step = "despiking";

/**
 * Flags spikes by the rule spike_return: pressure along time over the whole record, the other quantities along
 * pressure inside each direction (along time in a fixed-depth series). Nothing is deleted or changed; the results
 * are kept as test "spike_return" of each column, and count as the quality test of that name.
 *
 * @param names columns to judge; those that the cast or the parameters lack are left out
 */
export function flagSpikes(cast: Cast, names: readonly string[], parameters: DespikeParameters): Cast {
  const judged: Column[] = [];
  const counts: Record<string, number> = {};
  const floors: Record<string, number> = {};
  for (const name of names) {
    const column = cast.columns.get(name);
    const heights = parameters.quantities[name];
    if (column === undefined || heights === undefined) continue;
    const limits = limitsFor(cast, column, heights, parameters);
    const along = coordinateFor(cast, name);
    if (along === null) continue;
    const result =
      name === "pressure"
        ? spikeReturn(column.values, along, limits)
        : judgeRuns(cast.rows, judgedRuns(cast.segments), column.values, [column.values, along], (x, q) =>
            spikeReturn(x!, q!, limits),
          );
    judged.push(withTest(column, "spike_return", result));
    counts[name] = countCaught(result);
    floors[`${name}.floor`] = limits.floor;
    floors[`${name}.spacingFloor`] = limits.spacingFloor;
    if (limits.badAbove !== null) floors[`${name}.badAbove`] = limits.badAbove;
  }
  if (judged.length === 0) return withStep(cast, skipped(step, "no quantity that the rule could judge"));
  const { gradientFactor, windowRows, longest } = parameters;
  const found = Object.entries(counts).map(([name, count]) => `${count} in ${name}`);
  const record: StepRecord = {
    step,
    parameters: { rule: "spike_return", gradientFactor, windowRows, longest, ...floors },
    counts,
    words: `spikes flagged: ${found.join(", ")}`,
  };
  return withStep(withColumns(cast, ...judged), record);
}

/** 1 for rows whose pressure is a spike by the test already run; all 0 if it has not run. */
export function pressureSpikes(cast: Cast): Uint8Array {
  const result = cast.columns.get("pressure")?.tests.get("spike_return");
  const spikes = new Uint8Array(cast.rows);
  if (result !== undefined)
    for (let k = 0; k < spikes.length; k++) spikes[k] = result[k] === 3 || result[k] === 4 ? 1 : 0;
  return spikes;
}

/** Time for pressure and for series; pressure with its spikes bridged for the rest. Null where unknown. */
function coordinateFor(cast: Cast, name: string): Float64Array | null {
  const times = rowTimes(cast.elapsed);
  if (name === "pressure" || cast.kind === "fixed-depth") return times?.seconds ?? null;
  const pressure = cast.columns.get("pressure")?.values;
  if (pressure === undefined) return null;
  const spikes = pressureSpikes(cast);
  if (times === null || !spikes.includes(1)) return pressure;
  const bridged = bridge(pressure, times.seconds, spikes);
  // a missing pressure stays missing: only spikes are bridged
  return bridged.map((p, k) => (Number.isNaN(pressure[k]!) ? Number.NaN : p));
}

function limitsFor(
  cast: Cast,
  column: Column,
  { floor, floorPart, badAbove }: SpikeHeights,
  parameters: DespikeParameters,
): SpikeReturnLimits {
  const { gradientFactor, windowRows, longest } = parameters;
  const times = rowTimes(cast.elapsed);
  const pressure = cast.columns.get("pressure")?.values;
  const spacingFloor =
    column.name === "pressure" || cast.kind === "fixed-depth"
      ? (times?.interval ?? 1)
      : Math.max(
          parameters.spacingFloor,
          pressure === undefined ? 0 : parameters.noiseFactor * pressureNoise(pressure),
        );
  const level = floorPart === 0 ? 0 : floorPart * Math.abs(medianOfRuns(cast, column.values));
  return {
    floor: Number.isFinite(level) ? Math.max(floor, level) : floor,
    gradientFactor,
    spacingFloor,
    windowRows,
    longest,
    badAbove,
  };
}

function medianOfRuns(cast: Cast, values: Float64Array): number {
  const judged = values.slice();
  const mask = judgedMask(cast.rows, judgedRuns(cast.segments));
  for (let k = 0; k < judged.length; k++) if (mask[k] === 0) judged[k] = Number.NaN;
  return median(judged);
}
