import { type AnomalyTable, anomalyTable, LATITUDES, LEVELS, LONGITUDES } from "./anomaly-ratio-table.ts";
import { nearCentralAmerica, northOfLine } from "./central-america.ts";
import type { ValidityRange } from "./validity-range.ts";

export const anomalyRatioRange: ValidityRange = { p: [0, 6_131], lon: [-180, 360], lat: [-86, 90] };

const STEP = 4;
const SOUTH = -86;
const corners = new Float64Array(4);
const counts = new Uint8Array(4);

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
  if (!(lat >= SOUTH && lat <= 90) || !Number.isFinite(p + lon)) return Number.NaN;
  const turned = east(lon);
  const i = Math.min(Math.floor(turned / STEP), LONGITUDES - 2);
  const j = Math.min(Math.floor((lat - SOUTH) / STEP), LATITUDES - 2);
  const table = anomalyTable();
  const deepest = table.cellLevels[i * (LATITUDES - 1) + j]!;
  if (deepest === 0) return 0;

  // no extrapolation downwards
  const pressure = Math.min(p, LEVELS[deepest - 1]!);
  let k = 0;
  while (k < LEVELS.length - 2 && LEVELS[k + 1]! <= pressure) k++;

  markCorners(turned, lat, i, j);
  const r = (turned - STEP * i) / STEP;
  const s = (lat - SOUTH - STEP * j) / STEP;
  const upper = atLevel(table, i, j, k, r, s);
  const lower = atLevel(table, i, j, k + 1, r, s);
  return upper + ((pressure - LEVELS[k]!) / (LEVELS[k + 1]! - LEVELS[k]!)) * (lower - upper);
}

/** Whether the atlas knows the sea at a place; where it does not, Absolute Salinity is Reference Salinity. */
export function hasAnomalyRatio(lon: number, lat: number): boolean {
  if (!(lat >= SOUTH && lat <= 90) || !Number.isFinite(lon)) return false;
  const i = Math.min(Math.floor(east(lon) / STEP), LONGITUDES - 2);
  const j = Math.min(Math.floor((lat - SOUTH) / STEP), LATITUDES - 2);
  return anomalyTable().cellLevels[i * (LATITUDES - 1) + j]! > 0;
}

/** Longitude from 0 up to 360, so that a place has one value however its longitude is written. */
const east = (lon: number): number => ((lon % 360) + 360) % 360;

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
