import type { Cast, StepRecord } from "./cast.ts";
import { skipped, withStep } from "./change.ts";

const step = "clock correction";

/** A reading of the instrument's clock and the true time at that moment, epoch seconds. */
export interface ClockPair {
  readonly instrument: number;
  readonly true: number;
}

export interface ClockParameters {
  readonly pairs: readonly ClockPair[];
  /** Drift that is worth a warning, seconds a day. */
  readonly largestDrift: number;
}

/**
 * Makes the times of a cast true: one pair is an offset, between two and more the correction is linear in time,
 * outside them constant. Positions and rows keep their places.
 *
 * @source linear adjustment of recorded times: archived mooring documentation
 */
export function correctClock(cast: Cast, { pairs, largestDrift }: ClockParameters): Cast {
  if (pairs.length === 0) return cast;
  if (Number.isNaN(cast.time)) return withStep(cast, skipped(step, "the time of the cast is not known"));
  if (cast.steps.some((each) => each.step === step))
    return withStep(cast, skipped(step, "the clock has been corrected before"));
  const ordered = [...pairs].sort((a, b) => a.instrument - b.instrument);
  const correction = (time: number) => correctionAt(ordered, time);
  const first = correction(cast.time);
  const [from, to] = [ordered[0]!, ordered.at(-1)!];
  const days = (to.instrument - from.instrument) / 86400;
  const drift = days > 0 ? (offsetOf(to) - offsetOf(from)) / days : Number.NaN;
  const residual = largestResidual(ordered);
  const start = cast.time + first;
  const elapsed = cast.elapsed?.map((seconds) => seconds + correction(cast.time + seconds) - first) ?? null;
  const outside = cast.time < from.instrument || cast.time > to.instrument;
  const warned = Math.abs(drift) > largestDrift ? `; it drifts by ${drift.toFixed(1)} s a day, check it` : "";
  const record: StepRecord = {
    step,
    parameters: {
      correction: first,
      drift: Number.isNaN(drift) ? null : drift,
      pairs: ordered.flatMap((pair) => [pair.instrument, pair.true]),
      largestDrift,
      largestResidual: residual,
      outsidePairs: pairs.length > 1 && outside,
    },
    counts: { pairs: pairs.length },
    words: `instrument clock corrected by ${first.toFixed(1)} s${pairs.length > 1 && outside ? ", the nearest reading of the clock" : ""}${warned}`,
  };
  return withStep(
    { ...cast, time: start, endTime: cast.endTime + correction(cast.endTime), elapsed },
    record,
  );
}

const offsetOf = (pair: ClockPair): number => pair.true - pair.instrument;

/** What must be added to a time of the instrument, s. */
function correctionAt(ordered: readonly ClockPair[], time: number): number {
  const after = ordered.findIndex(({ instrument }) => instrument >= time);
  if (after < 0) return offsetOf(ordered.at(-1)!);
  if (after === 0) return offsetOf(ordered[0]!);
  const [a, b] = [ordered[after - 1]!, ordered[after]!];
  const part = (time - a.instrument) / (b.instrument - a.instrument);
  return offsetOf(a) + part * (offsetOf(b) - offsetOf(a));
}

/** Largest distance of a pair from the straight line between the first and the last, s. */
function largestResidual(ordered: readonly ClockPair[]): number {
  const [from, to] = [ordered[0]!, ordered.at(-1)!];
  const span = to.instrument - from.instrument;
  let largest = 0;
  for (const pair of ordered) {
    const part = span > 0 ? (pair.instrument - from.instrument) / span : 0;
    const line = offsetOf(from) + part * (offsetOf(to) - offsetOf(from));
    largest = Math.max(largest, Math.abs(offsetOf(pair) - line));
  }
  return largest;
}
