import { conservativeTemperature } from "../seawater/conservative-temperature.ts";
import { pressureFromDepth } from "../seawater/depth.ts";
import { referenceSalinity } from "../seawater/reference-salinity.ts";
import { soundSpeed } from "../seawater/sound-speed.ts";
import type { LayerMeans } from "./layer-means.ts";

export interface SoundSpeedProfileParameters {
  /** Largest error of linear interpolation between the points that are kept, m s-1; 0 keeps every layer. */
  readonly tolerance: number;
  /** Whether the value of the shallowest layer is carried to the surface. */
  readonly toSurface: boolean;
  /** Depth to which the profile is carried below its deepest layer, m; null: not at all. */
  readonly toDepth: number | null;
}

/** Only what was measured, thinned a little. */
export const soundSpeedProfileDefaults: SoundSpeedProfileParameters = {
  tolerance: 0.1,
  toSurface: false,
  toDepth: null,
};

/** Sound speed against depth. Arrays have one element per point. */
export interface SoundSpeedProfile {
  /** m below the instantaneous water surface, strictly increasing. */
  readonly depth: Float64Array;
  /** m s-1. */
  readonly soundSpeed: Float64Array;
  /** Index of the layer that a point is the mean of; -1 for a point that was carried. */
  readonly layer: Int32Array;
}

/**
 * Sound-speed profile out of layer means: layers without a depth, without a value or flagged 3 or worse are left out,
 * and of the others those that linear interpolation between their neighbours gives within the tolerance.
 *
 * Carried to the surface, the value is that of the shallowest layer. Carried downwards, temperature and salinity are
 * those of the deepest layer and the pressure grows (TEOS-10); without them nothing is carried down.
 *
 * Not for navigation or diving: local authority and licensed practice decide.
 *
 * @source Thinning: Douglas and Peucker (1973), doi 10.3138/FM57-6770-U75U-7727, distance taken in sound speed
 */
export function soundSpeedProfile(
  layers: LayerMeans,
  latitude: number,
  { tolerance, toSurface, toDepth }: SoundSpeedProfileParameters = soundSpeedProfileDefaults,
): SoundSpeedProfile {
  const { depth, speed, layer } = usable(layers);
  const kept = thinned(depth, speed, tolerance);
  const points = kept.map((k) => ({ depth: depth[k]!, speed: speed[k]!, layer: layer[k]! }));
  const [top] = points;
  const deepest = points.at(-1);
  if (top && toSurface && top.depth > 0) points.unshift({ depth: 0, speed: top.speed, layer: -1 });
  if (deepest && toDepth !== null && toDepth > deepest.depth) {
    const change = changeDownTo(toDepth, deepest.depth, layers, deepest.layer, latitude);
    if (!Number.isNaN(change)) points.push({ depth: toDepth, speed: deepest.speed + change, layer: -1 });
  }
  return {
    depth: Float64Array.from(points, (point) => point.depth),
    soundSpeed: Float64Array.from(points, (point) => point.speed),
    layer: Int32Array.from(points, (point) => point.layer),
  };
}

/**
 * Sound speed of a profile at a depth, linear between its points, m s-1; NaN outside of them.
 *
 * @param depth m
 */
export function soundSpeedAt(
  { depth: depths, soundSpeed: speeds }: SoundSpeedProfile,
  depth: number,
): number {
  const above = depths.findLastIndex((each) => each <= depth);
  if (above < 0) return Number.NaN;
  if (depths[above] === depth) return speeds[above]!;
  if (above + 1 === depths.length) return Number.NaN;
  const part = (depth - depths[above]!) / (depths[above + 1]! - depths[above]!);
  return speeds[above]! + part * (speeds[above + 1]! - speeds[above]!);
}

function usable({ coordinate, centres, columns }: LayerMeans) {
  const places = coordinate === "depth" ? centres : columns.get("depth")?.mean;
  const sound = columns.get("sound_speed");
  const depth: number[] = [];
  const speed: number[] = [];
  const layer: number[] = [];
  for (let k = 0; k < centres.length; k++) {
    const place = places?.[k] ?? Number.NaN;
    const value = sound?.mean[k] ?? Number.NaN;
    if (!(place >= 0) || Number.isNaN(value) || sound!.flags[k]! > 2) continue;
    if (depth.length > 0 && !(place > depth.at(-1)!)) continue;
    depth.push(place);
    speed.push(value);
    layer.push(k);
  }
  return { depth, speed, layer };
}

/** Indices of the points to keep, in order. */
function thinned(x: readonly number[], y: readonly number[], tolerance: number): number[] {
  const keep = new Uint8Array(x.length);
  if (x.length > 0) keep[0] = keep[x.length - 1] = 1;
  const open: [number, number][] = [[0, x.length - 1]];
  for (let span = open.pop(); span !== undefined; span = open.pop()) {
    const [first, last] = span;
    let worst = -1;
    let most = tolerance;
    for (let k = first + 1; k < last; k++) {
      const part = (x[k]! - x[first]!) / (x[last]! - x[first]!);
      const error = Math.abs(y[k]! - y[first]! - part * (y[last]! - y[first]!));
      if (tolerance > 0 ? error <= most : error < most) continue;
      most = error;
      worst = k;
    }
    if (worst < 0) continue;
    keep[worst] = 1;
    open.push([first, worst], [worst, last]);
  }
  return [...keep.keys()].filter((k) => keep[k] === 1);
}

function changeDownTo(
  toDepth: number,
  fromDepth: number,
  { columns }: LayerMeans,
  layer: number,
  latitude: number,
): number {
  const t = columns.get("temperature")?.mean[layer] ?? Number.NaN;
  const SR = referenceSalinity(columns.get("salinity")?.mean[layer] ?? Number.NaN);
  const lat = Number.isNaN(latitude) ? 45 : latitude;
  const [p0, p1] = [pressureFromDepth(fromDepth, lat), pressureFromDepth(toDepth, lat)];
  const CT = conservativeTemperature(SR, t, p0);
  return soundSpeed(SR, CT, p1) - soundSpeed(SR, CT, p0);
}
