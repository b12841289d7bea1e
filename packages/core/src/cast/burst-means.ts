import { Flag } from "../quality/flag.ts";
import { rowTimeFlags } from "../quality/row-time-flags.ts";
import type { Cast, StepRecord } from "./cast.ts";
import { skipped } from "./change.ts";
import { averaged, type MeanColumn } from "./mean-column.ts";
import { median } from "./robust.ts";

const step = "burst means";

export interface BurstParameters {
  /** Whether bursts of a fixed-depth series are averaged at all. */
  readonly mean: boolean;
  /** Time without rows that parts two bursts, s; null: found from the series. */
  readonly pause: number | null;
  /** A pause found from the series is longer than this many median intervals between rows. */
  readonly pauseIntervals: number;
}

export const burstDefaults: BurstParameters = { mean: false, pause: null, pauseIntervals: 5 };

/** Bursts of a series in the order of the record. Arrays have one element per burst; none if none were found. */
export interface BurstMeans {
  /** Mean time of the rows, s since the first row of the cast. */
  readonly times: Float64Array;
  /** Earliest and latest time of each burst, one pair after the other, s since the first row of the cast. */
  readonly bounds: Float64Array;
  /** 3 if at least half of the rows have a questionable time, 1 if at least half have a good one, else 2. */
  readonly timeFlags: Uint8Array;
  readonly columns: ReadonlyMap<string, MeanColumn>;
  readonly step: StepRecord;
}

/**
 * Means of the bursts of a fixed-depth series: runs of rows at the fixed depth that a pause parts. Each quantity
 * averages the rows whose own flag is 1 or 2; computed quantities are means of the row values. Rows without a time
 * belong to no burst.
 *
 * @returns no bursts where the rows follow each other without a pause, or where the clock is coarser than the rows
 *          and no pause is given; the step says so
 * @throws RangeError for a cast that is no series, or a pause that is not positive
 * @source house
 */
export function burstMeans(cast: Cast, { pause, pauseIntervals }: BurstParameters): BurstMeans {
  if (cast.kind !== "fixed-depth") throw new RangeError(`cast ${cast.id} is no series at a fixed depth`);
  if (pause !== null && !(pause > 0)) throw new RangeError(`a pause must be positive, got ${pause}`);
  const { elapsed } = cast;
  if (elapsed === null) return none("rows have no times");
  const rows = timedRows(cast, elapsed);
  if (rows.length < 2) return none("fewer than two rows at the fixed depth have a time");
  const steps = new Float64Array(rows.length - 1);
  for (let r = 0; r < steps.length; r++) steps[r] = Math.abs(elapsed[rows[r + 1]!]! - elapsed[rows[r]!]!);
  const interval = median(steps);
  const longest = pause ?? pauseIntervals * interval;
  if (!(longest > 0))
    return none("the clock is coarser than the rows, and no pause was given that parts bursts");
  const burstOf = new Int32Array(rows.length);
  for (let r = 1; r < rows.length; r++) burstOf[r] = burstOf[r - 1]! + (steps[r - 1]! > longest ? 1 : 0);
  const bursts = burstOf.at(-1)! + 1;
  if (bursts < 2) return none("rows follow each other without a pause");

  const columns = new Map<string, MeanColumn>();
  for (const [name, column] of cast.columns) columns.set(name, averaged(column, rows, burstOf, bursts));
  const { times, bounds, timeFlags, fewest, most } = timesOf(cast, elapsed, rows, burstOf, bursts);
  return {
    times,
    bounds,
    timeFlags,
    columns,
    step: {
      step,
      parameters: { pause: longest, found: pause === null, pauseIntervals, medianInterval: interval },
      counts: { bursts, rows: rows.length, fewestRows: fewest, mostRows: most },
      words: `means of ${bursts} bursts made from ${rows.length} rows at the fixed depth, parted by more than ${longest} s without rows`,
    },
  };
}

const none = (reason: string): BurstMeans => ({
  times: new Float64Array(),
  bounds: new Float64Array(),
  timeFlags: new Uint8Array(),
  columns: new Map(),
  step: skipped(step, reason),
});

/** Rows of the stay that have a time. */
function timedRows({ segments }: Cast, elapsed: Float64Array): Int32Array {
  const rows = new Int32Array(elapsed.length);
  let count = 0;
  for (const { kind, firstRow, lastRow } of segments)
    if (kind === "stay")
      for (let k = firstRow; k <= lastRow; k++) if (!Number.isNaN(elapsed[k]!)) rows[count++] = k;
  return rows.subarray(0, count);
}

function timesOf(cast: Cast, elapsed: Float64Array, rows: Int32Array, burstOf: Int32Array, bursts: number) {
  const { flags } = rowTimeFlags(cast);
  const times = new Float64Array(bursts);
  const bounds = new Float64Array(2 * bursts);
  const timeFlags = new Uint8Array(bursts);
  let fewest = rows.length;
  let most = 0;
  for (let from = 0; from < rows.length; ) {
    const burst = burstOf[from]!;
    let [low, high, sum, good, doubted] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, 0, 0];
    let to = from;
    for (; to < rows.length && burstOf[to] === burst; to++) {
      const time = elapsed[rows[to]!]!;
      low = Math.min(low, time);
      high = Math.max(high, time);
      sum += time;
      if (flags[rows[to]!] === Flag.good) good++;
      if (flags[rows[to]!] === Flag.questionable) doubted++;
    }
    const count = to - from;
    times[burst] = sum / count;
    bounds[2 * burst] = low;
    bounds[2 * burst + 1] = high;
    timeFlags[burst] =
      2 * doubted >= count ? Flag.questionable : 2 * good >= count ? Flag.good : Flag.notEvaluated;
    fewest = Math.min(fewest, count);
    most = Math.max(most, count);
    from = to;
  }
  return { times, bounds, timeFlags, fewest, most };
}
