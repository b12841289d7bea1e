import type { Cast, Position } from "../cast/cast.ts";
import { Flag } from "./flag.ts";
import { location } from "./location.ts";
import { type Preset, presets } from "./presets.ts";
import { satellites } from "./satellites.ts";

/**
 * Flag of one fix: 9 without a position, 4 for an impossible one, 3 with few satellites, 2 if their number is not
 * told, else 1.
 */
export function positionFlag(position: Position | null, preset: Preset = presets.shelf): Flag {
  if (position === null) return Flag.missing;
  const { latitude, longitude } = position;
  if (Number.isNaN(latitude) || Number.isNaN(longitude)) return Flag.missing;
  if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) return Flag.bad;
  return satellites(position.satellites, preset.fewestSatellites.value);
}

/**
 * Flags of the start fixes of a survey's casts, in the order given: as `positionFlag`, and 3 where the boat would
 * have had to go faster than boats go since the cast before in time.
 */
export function positionFlags(casts: readonly Cast[], preset: Preset = presets.shelf): Uint8Array {
  const order = [...casts.keys()].sort((a, b) => casts[a]!.time - casts[b]!.time || a - b);
  const value = (of: (cast: Cast) => number) => Float64Array.from(order, (k) => of(casts[k]!));
  const { flags } = location(
    value((cast) => cast.time),
    value((cast) => cast.start?.latitude ?? Number.NaN),
    value((cast) => cast.start?.longitude ?? Number.NaN),
    {
      largestSpeed: preset.largestSpeed.value,
      adviceDistanceKm: preset.adviceDistance.value,
      ignoreBelowKm: 0.1,
    },
  );
  const result = new Uint8Array(casts.length);
  for (const [place, k] of order.entries()) {
    const own = positionFlag(casts[k]!.start, preset);
    const reached = flags[place]!;
    result[k] = reached === Flag.questionable && own < Flag.questionable ? Flag.questionable : own;
  }
  return result;
}

/** No conductivity was lowered on a wire before, epoch seconds of 1900-01-01; house. */
const EARLIEST = -2_208_988_800;

/**
 * Flag of the time of a cast: 9 if not known; 4 for an impossible one, before 1900; 3 where it lies after the moment
 * at which the data set was made, where the record's own times run back or where its end lies before its start; 2
 * where it is not known what the time stands for; else 1.
 *
 * @param madeAt epoch seconds; that moment comes from the person who made the data set, who may be the one in error
 * @source impossible date: GTSPP test 1.2 (IOC Manuals and Guides 22), Argo test 2; limits and the rest: house
 */
export function timeFlag(cast: Cast, madeAt = Number.POSITIVE_INFINITY): Flag {
  if (Number.isNaN(cast.time)) return Flag.missing;
  if (cast.time < EARLIEST) return Flag.bad;
  if (cast.time > madeAt) return Flag.questionable;
  if (cast.timeRole === "start" && cast.endTime < cast.time) return Flag.questionable;
  let latest = Number.NEGATIVE_INFINITY;
  for (const seconds of cast.elapsed ?? []) {
    if (seconds < latest) return Flag.questionable;
    if (seconds > latest) latest = seconds;
  }
  return cast.timeRole === "unknown" ? Flag.notEvaluated : Flag.good;
}
