import { Flag } from "./flag.ts";

export interface LocationLimits {
  /** m/s between two positions above which the later is questionable. */
  readonly largestSpeed: number;
  /** km between two positions above which a person is told; no flag. */
  readonly adviceDistanceKm: number;
  /** km below which no speed is computed: the scatter of fixes. */
  readonly ignoreBelowKm: number;
}

const earthRadiusKm = 6371;

/** Great-circle distance on a sphere of 6371 km radius, km; positions in decimal degrees. */
export function distanceKm(fromLat: number, fromLon: number, toLat: number, toLon: number): number {
  const radians = Math.PI / 180;
  const half =
    Math.sin(((toLat - fromLat) * radians) / 2) ** 2 +
    Math.cos(fromLat * radians) *
      Math.cos(toLat * radians) *
      Math.sin(((toLon - fromLon) * radians) / 2) ** 2;
  return 2 * earthRadiusKm * Math.asin(Math.min(1, Math.sqrt(half)));
}

/**
 * Positions in order of time: impossible ones 4, those that no ship reaches 3, missing 9.
 *
 * @param time      epoch seconds; NaN if not known
 * @param latitude  decimal degrees north
 * @param longitude decimal degrees east
 * @returns flags, and the indices of positions far from the last acceptable one (advice, no flag)
 * @source QARTOD test 3 (doi 10.25607/OBP-1465); speed and distance: house
 */
export function location(
  time: Float64Array,
  latitude: Float64Array,
  longitude: Float64Array,
  { largestSpeed, adviceDistanceKm, ignoreBelowKm }: LocationLimits,
): { flags: Uint8Array; advice: number[] } {
  const flags = new Uint8Array(latitude.length).fill(Flag.good);
  const advice: number[] = [];
  let last = -1;
  for (let k = 0; k < latitude.length; k++) {
    const lat = latitude[k]!;
    const lon = longitude[k]!;
    if (Number.isNaN(lat) || Number.isNaN(lon)) {
      flags[k] = Flag.missing;
      continue;
    }
    if (Math.abs(lat) > 90 || Math.abs(lon) > 180) {
      flags[k] = Flag.bad;
      continue;
    }
    if (last >= 0) {
      const distance = distanceKm(latitude[last]!, longitude[last]!, lat, lon);
      const passed = time[k]! - time[last]!;
      if (distance > ignoreBelowKm && passed > 0 && (distance * 1000) / passed > largestSpeed)
        flags[k] = Flag.questionable;
      if (distance > adviceDistanceKm) advice.push(k);
    }
    last = k;
  }
  return { flags, advice };
}
