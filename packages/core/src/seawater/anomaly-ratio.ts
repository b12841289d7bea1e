import { type AnomalyTable, anomalyTable, LATITUDES, LEVELS, LONGITUDES } from "./anomaly-ratio-table.ts";
import { nearCentralAmerica, northOfLine } from "./central-america.ts";
import type { ValidityRange } from "./validity-range.ts";

export const anomalyRatioRange: ValidityRange = { p: [0, 6_131], lon: [-180, 360], lat: [-86, 90] };

const STEP = 4;
const SOUTH = -86;
const levels = Float64Array.from(LEVELS);
const corners = new Float64Array(4);
const counts = new Uint8Array(4);

/** Level at the top of each 10 dbar; no two levels are nearer to each other, so the one sought is it or the next. */
const levelOfBin = Uint8Array.from({ length: 614 }, (_, bin) => LEVELS.findLastIndex((p) => p <= 10 * bin));

/**
 * Absolute Salinity Anomaly Ratio at a place: what composition adds to Reference Salinity, as a share of it.
 *
 * Interpolated in longitude and latitude at the two levels about p, then in p. Near the coast a corner without
 * water takes the mean of the others, so the sea's value spreads landwards; where a whole cell of 4 by 4 degrees
 * has no ocean the ratio is 0. Central America parts the oceans. In estuaries the value speaks of the sea next
 * door, not of the river.
 *
 * @param p   sea pressure, dbar; below the cell's deepest level that level's value is taken
 * @param lon longitude, degrees east, any turn
 * @param lat latitude, degrees north, -86 to 90
 * @returns   ratio, unit 1; NaN outside the latitudes or if an input is NaN
 * @source    McDougall, Jackett, Millero, Pawlowicz and Barker (2012), Ocean Science 8, 1123-1134; table of the
 *            TEOS-10 library rounded to 1e-9, hence Absolute Salinity within 5e-8 g kg-1. In four cells of the
 *            Central American box below 3800 dbar up to 0.02 g kg-1 off
 */
export function anomalyRatio(p: number, lon: number, lat: number): number {
  const deepest = deepestLevel(lon, lat);
  if (deepest < 0 || !Number.isFinite(p)) return Number.NaN;
  if (deepest === 0) return 0;
  // no extrapolation downwards
  const pressure = Math.min(p, LEVELS[deepest - 1]!);
  const k = levelAbove(pressure);
  fillLevels(lon, lat, k, k + 1, scratch);
  return between(scratch, k, pressure);
}

/** The ratio at every level of one place, for many pressures there. */
export interface AnomalyProfile {
  /** Ratio by level. */
  readonly ratios: Float64Array;
  /** Number of levels that count; 0 where there is no ocean, -1 outside the atlas. */
  deepest: number;
}

export const newAnomalyProfile = (): AnomalyProfile => ({
  ratios: new Float64Array(LEVELS.length),
  deepest: -1,
});

const scratch = new Float64Array(LEVELS.length);

/** Makes `profile` that of a place, down to the pressure `p` or further; parameters as {@link anomalyRatio}. */
export function fillAnomalyProfile(lon: number, lat: number, p: number, profile: AnomalyProfile): void {
  profile.deepest = deepestLevel(lon, lat);
  if (profile.deepest <= 0) return;
  // the lowest level that counts may have one below it in the interpolation
  const lowest = Math.min(profile.deepest, levelAbove(Math.min(p, levels[profile.deepest - 1]!)) + 1);
  fillLevels(lon, lat, 0, Math.min(lowest, LEVELS.length - 1), profile.ratios);
}

/** {@link anomalyRatio} at the place of a filled profile, to the last bit. */
export function ratioInProfile(profile: AnomalyProfile, p: number): number {
  if (profile.deepest < 0 || !Number.isFinite(p)) return Number.NaN;
  if (profile.deepest === 0) return 0;
  const pressure = Math.min(p, levels[profile.deepest - 1]!);
  return between(profile.ratios, levelAbove(pressure), pressure);
}

/** Whether the atlas knows the sea at a place; where it does not, Absolute Salinity is Reference Salinity. */
export const hasAnomalyRatio = (lon: number, lat: number): boolean => deepestLevel(lon, lat) > 0;

/** Longitude from 0 up to 360, so that a place has one value however its longitude is written. */
const east = (lon: number): number => ((lon % 360) + 360) % 360;

const cellOfLongitude = (turned: number): number => Math.min(Math.floor(turned / STEP), LONGITUDES - 2);
const cellOfLatitude = (lat: number): number => Math.min(Math.floor((lat - SOUTH) / STEP), LATITUDES - 2);

/** Number of levels that count at a place; -1 outside the atlas. */
function deepestLevel(lon: number, lat: number): number {
  if (!(lat >= SOUTH && lat <= 90) || !Number.isFinite(lon)) return -1;
  return anomalyTable().cellLevels[cellOfLongitude(east(lon)) * (LATITUDES - 1) + cellOfLatitude(lat)]!;
}

/** The last level at or above a pressure not below the deepest, but never the last of all. */
function levelAbove(pressure: number): number {
  if (!(pressure >= 10)) return 0;
  const k = levelOfBin[Math.floor(pressure / 10)]!;
  return Math.min(levels[k + 1]! <= pressure ? k + 1 : k, LEVELS.length - 2);
}

const between = (ratios: Float64Array, k: number, p: number): number =>
  ratios[k]! + ((p - levels[k]!) / (levels[k + 1]! - levels[k]!)) * (ratios[k + 1]! - ratios[k]!);

/** Fills the ratios of the levels from `first` to `last`. */
function fillLevels(lon: number, lat: number, first: number, last: number, out: Float64Array): void {
  const turned = east(lon);
  const i = cellOfLongitude(turned);
  const j = cellOfLatitude(lat);
  markCorners(turned, lat, i, j);
  const r = (turned - STEP * i) / STEP;
  const s = (lat - SOUTH - STEP * j) / STEP;
  const table = anomalyTable();
  for (let k = first; k <= last; k++) out[k] = atLevel(table, i, j, k, r, s);
}

/** Corners in the order south-west, south-east, north-east, north-west; 1 where a corner counts. */
function markCorners(lon: number, lat: number, i: number, j: number): void {
  counts.fill(1);
  if (!nearCentralAmerica(lon, lat)) return;
  const side = northOfLine(lon, lat);
  for (let corner = 0; corner < 4; corner++) {
    const cornerLon = STEP * (i + eastward(corner));
    const cornerLat = SOUTH + STEP * (j + northward(corner));
    counts[corner] = northOfLine(cornerLon, cornerLat) === side ? 1 : 0;
  }
}

const eastward = (corner: number): number => (corner === 1 || corner === 2 ? 1 : 0);
const northward = (corner: number): number => (corner >= 2 ? 1 : 0);

function atLevel({ ratios }: AnomalyTable, i: number, j: number, k: number, r: number, s: number): number {
  let sum = 0;
  let used = 0;
  for (let corner = 0; corner < 4; corner++) {
    const column = (i + eastward(corner)) * LATITUDES + j + northward(corner);
    const value = counts[corner] === 1 ? ratios[column * LEVELS.length + k]! : Number.NaN;
    corners[corner] = value;
    if (Number.isNaN(value)) continue;
    sum += value;
    used++;
  }
  const mean = used > 0 ? sum / used : 0;
  for (let corner = 0; corner < 4; corner++) if (Number.isNaN(corners[corner]!)) corners[corner] = mean;
  const south = corners[0]! + r * (corners[1]! - corners[0]!);
  const north = corners[3]! + r * (corners[2]! - corners[3]!);
  return (1 - s) * south + s * north;
}
