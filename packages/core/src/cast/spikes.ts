import { caughtAny, countCaught } from "../quality/flags-of-test.ts";
import { judgedRuns, judgeRuns } from "../quality/judged-rows.ts";
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
  let travelled: Float64Array | null | undefined;
  for (const name of names) {
    const column = cast.columns.get(name);
    const heights = parameters.quantities[name];
    if (column === undefined || heights === undefined) continue;
    const limits = limitsFor(cast, column, heights, parameters);
    const inTime = name === "pressure" || cast.kind === "fixed-depth";
    if (!inTime && travelled === undefined) travelled = alongPressure(cast);
    const along = inTime ? alongTime(cast) : travelled;
    if (along == null) continue;
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

/**
 * 1 for rows whose pressure is a spike by the test already run; all 0 if it has not run. The array is shared by all
 * who ask for the same test result: copy it before changing it.
 */
export function pressureSpikes(cast: Cast): Uint8Array {
  const result = cast.columns.get("pressure")?.tests.get("spike_return");
  if (result === undefined) return new Uint8Array(cast.rows);
  let spikes = known.get(result);
  if (spikes === undefined) {
    spikes = spikesOf(result);
    known.set(result, spikes);
  }
  return spikes;
}

const known = new WeakMap<Uint8Array, Uint8Array>();

function spikesOf(result: Uint8Array): Uint8Array {
  const spikes = new Uint8Array(result.length);
  if (caughtAny(result))
    for (let k = 0; k < spikes.length; k++) spikes[k] = result[k] === 3 || result[k] === 4 ? 1 : 0;
  return spikes;
}

/** Time for pressure and for series; null where unknown. */
const alongTime = (cast: Cast): Float64Array | null => rowTimes(cast.elapsed)?.seconds ?? null;

/** Pressure with its spikes bridged; null where the cast has none. */
function alongPressure(cast: Cast): Float64Array | null {
  const times = rowTimes(cast.elapsed);
  const pressure = cast.columns.get("pressure")?.values;
  if (pressure === undefined) return null;
  const spikes = pressureSpikes(cast);
  if (times === null || !spikes.includes(1)) return pressure;
  const bridged = bridge(pressure, times.seconds, spikes);
  // a missing pressure stays missing: only spikes are bridged
  for (let k = 0; k < bridged.length; k++) if (Number.isNaN(pressure[k]!)) bridged[k] = Number.NaN;
  return bridged;
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
  const judged = new Float64Array(cast.rows);
  let count = 0;
  for (const { rows } of judgedRuns(cast.segments)) for (const k of rows) judged[count++] = values[k]!;
  return median(judged.subarray(0, count));
}
