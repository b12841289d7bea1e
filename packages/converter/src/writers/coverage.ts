import { type Cast, formatIsoDuration, formatIsoTime } from "@wherry/core";
import { type Attribute, numberAttribute } from "@wherry/netcdf";
import { attributes, type Stored } from "./storage.ts";

/**
 * ACDD attributes on where and when the data are, found from the data themselves.
 *
 * @param vertical   stored values of the vertical coordinate with its unit; null if there is none
 * @param resolution text of `geospatial_vertical_resolution`; null if layers are not regular
 * @param interval   text of `time_coverage_resolution`; null if times are irregular
 * @param span       first and last moment of the data, where they are not those of the whole casts
 */
export function coverageAttributes(
  casts: readonly Cast[],
  vertical: { readonly stored: Stored; readonly units: string } | null,
  resolution: string | null,
  interval: string | null,
  span: readonly [number, number] | null = null,
): Attribute[] {
  return [
    ...timeCoverage(span ?? spanOf(casts), interval),
    ...horizontalCoverage(casts, vertical !== null && vertical.units === "m"),
    ...verticalCoverage(vertical, resolution),
  ];
}

function timeCoverage([start, end]: readonly [number, number], interval: string | null): Attribute[] {
  if (!(Number.isFinite(start) && Number.isFinite(end))) return [];
  return attributes(
    ["time_coverage_start", formatIsoTime(start)],
    ["time_coverage_end", formatIsoTime(end)],
    ["time_coverage_duration", formatIsoDuration(end - start)],
    ["time_coverage_resolution", interval],
  );
}

/** From the first start of a cast to the latest moment that any tells; not finite if no start is known. */
function spanOf(casts: readonly Cast[]): readonly [number, number] {
  const known = (moments: readonly number[]) => moments.filter((moment) => !Number.isNaN(moment));
  const starts = known(casts.map(({ time }) => time));
  const ends = known(casts.flatMap((cast) => [cast.time, cast.endTime, lastRowTime(cast)]));
  return [Math.min(...starts), Math.max(...ends)];
}

/** Time of the last row, where the time of the first is known; else NaN. */
function lastRowTime(cast: Cast): number {
  if (cast.timeRole !== "start" || cast.elapsed === null) return Number.NaN;
  return cast.elapsed.reduce(
    (latest, elapsed) =>
      cast.time + elapsed > latest || Number.isNaN(latest) ? cast.time + elapsed : latest,
    Number.NaN,
  );
}

function horizontalCoverage(casts: readonly Cast[], hasDepth: boolean): Attribute[] {
  const places = casts.flatMap(({ start }) =>
    start === null || Number.isNaN(start.latitude) || Number.isNaN(start.longitude) ? [] : [start],
  );
  if (places.length === 0) return [];
  const latitudes = places.map(({ latitude }) => latitude);
  const south = Math.min(...latitudes);
  const north = Math.max(...latitudes);
  const { west, east } = longitudeRange(places.map(({ longitude }) => longitude));
  const degrees = (name: string, value: number) => numberAttribute(name, "double", value);
  return attributes(
    degrees("geospatial_lat_min", south),
    degrees("geospatial_lat_max", north),
    ["geospatial_lat_units", "degrees_north"],
    degrees("geospatial_lon_min", west),
    degrees("geospatial_lon_max", east),
    ["geospatial_lon_units", "degrees_east"],
    ["geospatial_bounds", boundsText(south, north, west, east)],
    ["geospatial_bounds_crs", "EPSG:4326"],
    // depth below the instantaneous water surface
    ["geospatial_bounds_vertical_crs", hasDepth ? "EPSG:5831" : null],
  );
}

/**
 * The shorter way round the globe that holds all longitudes. `west` is greater than `east` where it crosses the
 * meridian at which the longitudes jump.
 */
export function longitudeRange(longitudes: readonly number[]): { west: number; east: number } {
  const sorted = [...new Set(longitudes)].sort((a, b) => a - b);
  let west = sorted[0]!;
  let east = sorted.at(-1)!;
  let widest = 360 - (east - west);
  for (let k = 0; k + 1 < sorted.length; k++) {
    const gap = sorted[k + 1]! - sorted[k]!;
    if (gap <= widest) continue;
    widest = gap;
    west = sorted[k + 1]!;
    east = sorted[k]!;
  }
  return { west, east };
}

/** Well-known text, latitude first as EPSG:4326 has it; a point or a line where the box has no area. */
export function boundsText(south: number, north: number, west: number, east: number): string {
  if (south === north && west === east) return `POINT (${south} ${west})`;
  if (south === north || west === east) return `LINESTRING (${south} ${west}, ${north} ${east})`;
  return `POLYGON ((${south} ${west}, ${north} ${west}, ${north} ${east}, ${south} ${east}, ${south} ${west}))`;
}

function verticalCoverage(
  vertical: { readonly stored: Stored; readonly units: string } | null,
  resolution: string | null,
): Attribute[] {
  if (vertical?.stored.range == null) return [];
  const { type, range } = vertical.stored;
  return attributes(
    numberAttribute("geospatial_vertical_min", type, range[0]),
    numberAttribute("geospatial_vertical_max", type, range[1]),
    ["geospatial_vertical_units", vertical.units],
    ["geospatial_vertical_positive", "down"],
    ["geospatial_vertical_resolution", resolution],
  );
}
