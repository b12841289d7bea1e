import { formatIsoTime } from "@wherry/core";
import { scaleLinear, scaleUtc } from "d3-scale";
import type { Tick } from "./axes.ts";
import { extentOf } from "./extent.ts";

export interface TimeAxis {
  /** NaN for a row without a time. */
  readonly across: (row: number) => number;
  readonly ticks: readonly Tick[];
  readonly title: string;
}

const DAY = 86_400;

/**
 * Rows along an axis of UTC; of seconds since the first row where the moment of that is not known, of row numbers where
 * rows have no times.
 *
 * @param start epoch seconds of the first row; NaN if not known
 * @param range pixels of its ends
 */
export function timeAxis(
  start: number,
  elapsed: Float64Array | null,
  rows: number,
  range: readonly [number, number],
): TimeAxis {
  const last = (elapsed ? extentOf(elapsed)?.[1] : rows - 1) ?? 0;
  const end = Math.max(last, 1);
  if (!elapsed || !Number.isFinite(start)) {
    const scale = scaleLinear([0, end], range);
    const ticks = scale.ticks(8).map((tick) => ({ at: scale(tick), words: String(tick) }));
    return elapsed
      ? { across: (row) => scale(elapsed[row]!), ticks, title: "Time since the first row / s" }
      : { across: (row) => scale(row), ticks, title: "Row" };
  }
  const scale = scaleUtc([start * 1000, (start + end) * 1000], range);
  const shown = scale.ticks(8);
  const step = shown.length > 1 ? (shown[1]!.getTime() - shown[0]!.getTime()) / 1000 : end;
  const words = (time: Date) => {
    const text = formatIsoTime(time.getTime() / 1000, 0);
    if (step >= DAY) return text.slice(5, 10);
    // the first of a day says which
    return step < 60
      ? text.slice(11, 19)
      : end > DAY && text.slice(11, 16) === "00:00"
        ? text.slice(5, 10)
        : text.slice(11, 16);
  };
  const [from, to] = [start, start + end].map((time) => formatIsoTime(time, 0).slice(0, 10));
  return {
    across: (row) => scale(1000 * (start + elapsed[row]!)),
    ticks: shown.map((time) => ({ at: scale(time), words: words(time) })),
    title: from === to ? `${from}, UTC` : `${from} to ${to}, UTC`,
  };
}
