import { Flag } from "./flag.ts";
import { flagsFor } from "./flags-of-test.ts";
import type { Threshold } from "./presets.ts";

type Range = readonly [number, number];

/** A region of the sea and what is known to occur in it. */
export interface SeaRegion {
  readonly name: string;
  /** Corners of the region, longitude and latitude, degrees; null for the whole ocean. */
  readonly corners: readonly Range[] | null;
  readonly temperature: Threshold<Range>;
  readonly salinity: Threshold<Range>;
}

const quoted = (value: Range, unit: string): Threshold<Range> => ({ value, unit, status: "quoted" });
const box = (west: number, east: number, south: number, north: number): readonly Range[] => [
  [west, south],
  [east, south],
  [east, north],
  [west, north],
];

/**
 * Regions in the order in which they are asked; the last one holds every place. The corners of the first two are from
 * memory and not verified, as are the limits of the whole ocean.
 *
 * @source Recommendations for in-situ data near real time quality control (doi 10.13155/36230), regional ranges, as
 *         quoted in public documents; Argo quality control manual (doi 10.13155/33951), tests 6 and 7
 */
export const seaRegions: readonly SeaRegion[] = [
  {
    name: "Red Sea",
    corners: [
      [40, 10],
      [50, 20],
      [30, 30],
    ],
    temperature: quoted([21.7, 40], "degree_C"),
    salinity: quoted([2, 41], "1"),
  },
  {
    name: "Mediterranean Sea",
    corners: [
      [-6, 30],
      [40, 30],
      [35, 40],
      [20, 42],
      [15, 50],
      [-5, 40],
    ],
    temperature: quoted([10, 40], "degree_C"),
    salinity: quoted([2, 40], "1"),
  },
  {
    name: "north-western shelves",
    corners: box(-20, 10, 50, 60),
    temperature: quoted([-2, 24], "degree_C"),
    salinity: quoted([0, 37], "1"),
  },
  {
    name: "south-western shelves",
    corners: box(-30, 0, 25, 50),
    temperature: quoted([-2, 30], "degree_C"),
    salinity: quoted([0, 38], "1"),
  },
  {
    name: "Arctic Ocean",
    corners: box(-180, 180, 60, 90),
    temperature: quoted([-1.92, 25], "degree_C"),
    salinity: quoted([2, 40], "1"),
  },
  {
    name: "whole ocean",
    corners: null,
    temperature: { value: [-2.5, 40], unit: "degree_C", status: "memory" },
    salinity: { value: [2, 41], unit: "1", status: "memory" },
  },
];

/**
 * The region that a place lies in.
 *
 * @param longitude degrees east, -180 to 180
 * @param latitude  degrees north
 */
export const regionAt = (longitude: number, latitude: number): SeaRegion =>
  seaRegions.find(({ corners }) => corners === null || isInside(longitude, latitude, corners))!;

/** Whether a point lies inside a polygon or on its western or southern edge: even-odd rule. */
function isInside(x: number, y: number, corners: readonly Range[]): boolean {
  let inside = false;
  for (const [k, [x1, y1]] of corners.entries()) {
    const [x2, y2] = corners[(k + 1) % corners.length]!;
    if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) inside = !inside;
  }
  return inside;
}

/**
 * Regional range: each value against what is known to occur in its region.
 *
 * @param range both limits included, in the unit of the values
 * @returns 1; 3 outside; 9 missing
 * @source GTSPP test 2.2 (IOC Manuals and Guides 22), Argo test 7; never 4: rivers and bays go beyond
 */
export function regionalRange(values: Float64Array, [low, high]: Range): Uint8Array {
  const flags = flagsFor(values, Flag.good);
  for (let k = 0; k < values.length; k++)
    if (values[k]! < low || values[k]! > high) flags[k] = Flag.questionable;
  return flags;
}
