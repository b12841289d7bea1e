import { Flag } from "../quality/flag.ts";
import { flagsFor } from "../quality/flags-of-test.ts";
import { judgedRuns } from "../quality/judged-rows.ts";
import type { Cast, StepRecord } from "./cast.ts";
import { skipped, withColumns, withStep, withTest } from "./change.ts";
import { median, pressureNoise } from "./robust.ts";
import { rowTimes } from "./row-times.ts";
import { smoothPressure } from "./smooth-pressure.ts";
import { pressureSpikes } from "./spikes.ts";

const step = "pressure reversals";

export interface ReversalParameters {
  /** Multiple of the pressure noise by which a row may lie above the deepest row so far. */
  readonly noiseFactor: number;
  /** Part of the median lowering speed below which the wake may be sampled. */
  readonly slowPart: number;
  /** Multiple of the noise of the speed below which nothing can be said. */
  readonly speedNoiseFactor: number;
}

export const reversalDefaults: ReversalParameters = { noiseFactor: 2, slowPart: 0.2, speedNoiseFactor: 3 };

/**
 * Flags rows of the downcast that a hand or a wave lifted (passed already) or held (too slow): the package then
 * samples its own wake. They get 3 in test "pressure_increasing" of pressure, stay out of the layers and stay in
 * the data.
 *
 * @source house, both rules from the cast's own numbers
 */
export function flagReversals(cast: Cast, parameters: ReversalParameters): Cast {
  const column = cast.columns.get("pressure");
  const times = rowTimes(cast.elapsed);
  const down = judgedRuns(cast.segments).find(({ kind }) => kind === "down")?.rows;
  if (column === undefined) return withStep(cast, skipped(step, "the cast has no pressure"));
  if (times === null || cast.state.processing === "averaged")
    return withStep(cast, skipped(step, "levels already averaged, or rows without times"));
  if (down === undefined) return withStep(cast, skipped(step, "the cast has no downcast"));

  const pressure = column.values;
  const noise = pressureNoise(pressure);
  const { middle, w, rowsPerSecond: n } = smoothPressure(pressure, times, pressureSpikes(cast));
  const result = flagsFor(pressure, Flag.notEvaluated);
  const tolerance = parameters.noiseFactor * noise;

  const going = new Float64Array(down.length);
  for (let r = 0; r < going.length; r++) going[r] = w[down[r]!]! > 0 ? w[down[r]!]! : Number.NaN;
  const usual = median(going);
  // noise of a slope through the n rows of one second, 1 / interval rows a second
  const speedNoise = (noise / times.interval) * Math.sqrt(12 / (n * (n * n - 1)));
  const limit = Math.max(parameters.slowPart * usual, parameters.speedNoiseFactor * speedNoise);
  const speedTells = limit <= usual / 2;

  let largest = Number.NEGATIVE_INFINITY;
  let passed = 0;
  let slow = 0;
  for (const k of down) {
    if (Number.isNaN(pressure[k]!)) continue;
    const again = middle[k]! < largest - tolerance;
    const tooSlow = speedTells && w[k]! < limit;
    if (again) passed++;
    else if (tooSlow) slow++;
    result[k] = again || tooSlow ? Flag.questionable : Flag.good;
    largest = Math.max(largest, middle[k]!);
  }
  const record: StepRecord = {
    step,
    parameters: {
      ...parameters,
      tolerance,
      medianSpeed: Number.isNaN(usual) ? null : usual,
      slowestSpeed: speedTells ? limit : null,
    },
    counts: { passedAlready: passed, tooSlow: slow },
    words: speedTells
      ? `pressure reversals flagged: ${passed} rows passed already, ${slow} too slow`
      : `pressure reversals flagged: ${passed} rows passed already; speed not judged, the record is too noisy for it`,
  };
  return withStep(withColumns(cast, withTest(column, "pressure_increasing", result)), record);
}
