import { convertUnits, parseIsoTime } from "@wherry/core";
import type { DatasetView } from "../../engine/dataset-view.ts";
import { spanOf } from "../../engine/span.ts";
import { isTime } from "../../engine/unit-kinds.ts";
import { epochSeconds, timeVariables } from "../cf/time-variable.ts";
import { validSpan, validValues } from "./coverage.ts";

/** From the first to the last moment of the data, and how much further the sampling may reach. Epoch seconds UTC. */
export interface TimeSpan {
  readonly first: number;
  readonly last: number;
  /** Earliest moment that anything in the file tells: bounds of times, start times. */
  readonly earliest: number;
  /** Latest moment that anything in the file tells: bounds, end times, start plus elapsed time. */
  readonly latest: number;
  /** The end of the data as the file tells it; null where casts have elapsed times, so that it is known within limits. */
  readonly end: number | null;
}

const DAY = 86400;

/** Null if no time coordinate can be read. */
export async function timeSpan(dataset: DatasetView): Promise<TimeSpan | null> {
  const coordinates: number[] = [];
  const others: number[] = [];
  for (const time of timeVariables(dataset)) {
    const seconds = await epochSeconds(dataset, time);
    for (const second of seconds ?? [])
      if (Number.isFinite(second)) (time.isCoordinate ? coordinates : others).push(second);
    const bounds = time.isCoordinate ? dataset.listed(time.variable, "bounds")[0] : undefined;
    if (bounds === undefined || bounds.has("units") || time.moment === null || time.unit === null) continue;
    const second = convertUnits(1, time.unit, "s");
    for (const value of await validValues(dataset, bounds))
      others.push(time.moment.epochSeconds + value * second);
  }
  const [first, last] = spanOf(coordinates);
  if (!Number.isFinite(first)) return null;
  const [earliest, latest] = spanOf([...others, first, last]);
  const elapsed = await longestElapsed(dataset);
  // where the file does not tell how long a cast took, its end may lie after its time, within a day
  const unknown =
    dataset.layout.featureType?.endsWith("profile") === true && latest === last && elapsed === 0;
  const end = elapsed === 0 ? latest : null;
  return { first, last, earliest, latest: Math.max(latest, last + elapsed) + (unknown ? DAY : 0), end };
}

/** Longest time since the start of a feature, from variables in units of time; 0 if there are none. */
async function longestElapsed(dataset: DatasetView): Promise<number> {
  let longest = 0;
  for (const variable of dataset.sampled) {
    const units = variable.text("units");
    if (units === undefined || !isTime(units) || variable.has("cell_methods")) continue;
    const [, most] = await validSpan(dataset, variable);
    if (Number.isFinite(most)) longest = Math.max(longest, convertUnits(most, units, "s"));
  }
  return longest;
}

/** The moments that a text can mean: a date alone is its whole day. Null if it cannot be read. */
export function statedMoment(text: string | undefined): { from: number; to: number } | null {
  const value = text?.trim() ?? "";
  const read = parseIsoTime(value);
  if (!read.ok || !/^\d{4}-\d\d-\d\d(?:T|$)/.test(value)) return null;
  const from = read.value.epochSeconds;
  if (!value.includes("T")) return { from, to: from + DAY };
  return { from, to: from + (/T\d\d:\d\d(?!:)/.test(value) ? 60 : 0) };
}
