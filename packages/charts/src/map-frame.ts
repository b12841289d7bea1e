import { type GeoProjection, geoAzimuthalEquidistant, geoCircle, geoPath } from "d3-geo";
import type { PanelPlace } from "./axes.ts";
import { look } from "./look.ts";
import { element, round, textElement } from "./svg.ts";

/** Degrees east and north. */
export type LonLat = readonly [longitude: number, latitude: number];

export interface MapFrame {
  readonly projection: GeoProjection;
  readonly at: PanelPlace;
  readonly pixelsPerKilometre: number;
}

/** Mean radius of the Earth, km (IUGG). */
const EARTH = 6371.0088;
const DEGREES = 180 / Math.PI;
/** A map of one station shows so many km around it. */
const LEAST = 0.25;

/** Middle of positions, also across the date line and at a pole. */
export function middleOf(places: readonly LonLat[]): LonLat {
  let [x, y, z] = [0, 0, 0];
  for (const [lon, lat] of places) {
    x += Math.cos(lat / DEGREES) * Math.cos(lon / DEGREES);
    y += Math.cos(lat / DEGREES) * Math.sin(lon / DEGREES);
    z += Math.sin(lat / DEGREES);
  }
  return [Math.atan2(y, x) * DEGREES, Math.atan2(z, Math.hypot(x, y)) * DEGREES];
}

/**
 * An azimuthal equidistant projection about the middle of the places: north is up there, and lengths are true along
 * lines through it. The frame is as high as the places ask for, within the limits given.
 */
export function mapFrame(
  places: readonly LonLat[],
  { left, right, top }: Omit<PanelPlace, "bottom">,
  [lowest, highest]: readonly [number, number],
): MapFrame {
  const [lon, lat] = middleOf(places);
  const around = geoCircle()
    .center([lon, lat])
    .radius((LEAST / EARTH) * DEGREES)().coordinates[0]!;
  const shown = { type: "MultiPoint" as const, coordinates: [...places.map(([x, y]) => [x, y]), ...around] };
  const projection = geoAzimuthalEquidistant().rotate([-lon, -lat]).precision(0.3);
  const path = geoPath(projection.fitSize([1000, 1000], shown));
  const [[x0], [x1]] = path.bounds(shown);
  const [[, y0], [, y1]] = path.bounds({ type: "MultiPoint", coordinates: places.map(([x, y]) => [x, y]) });
  const wanted = ((right - left) * (y1 - y0)) / Math.max(x1 - x0, 1);
  const bottom = top + Math.min(Math.max(wanted, lowest), highest);
  const inner = 44;
  projection
    .fitExtent(
      [
        [left + inner, top + inner],
        [right - inner, bottom - inner],
      ],
      shown,
    )
    .clipExtent([
      [left, top],
      [right, bottom],
    ]);
  return { projection, at: { left, right, top, bottom }, pixelsPerKilometre: projection.scale() / EARTH };
}

/** Steps of meridians and parallels, in minutes of arc. */
const STEPS = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 30, 60, 120, 300, 600, 1200, 1800] as const;

/** Meridians and parallels with their names at the lower and the left edge. */
export function drawGraticule({ projection, at, pixelsPerKilometre }: MapFrame): {
  readonly lines: readonly string[];
  readonly names: readonly string[];
} {
  const path = geoPath(projection).digits(1);
  const middle = projection.invert!([(at.left + at.right) / 2, (at.top + at.bottom) / 2])!;
  const minute = (EARTH / DEGREES / 60) * pixelsPerKilometre;
  const stepFor = (pixels: number, apart: number) => STEPS.find((step) => step * pixels >= apart) ?? 1800;
  const east = stepFor(minute * Math.max(Math.cos(middle[1] / DEGREES), 0.02), 105);
  const north = stepFor(minute, 80);
  const bottom = crossings(projection, [at.left, at.bottom], [at.right, at.bottom], 0, east, middle[0]);
  const side = crossings(projection, [at.left, at.bottom], [at.left, at.top], 1, north, 0);
  const reach = (1.5 * Math.max(at.right - at.left, at.bottom - at.top)) / (60 * minute);
  const [low, high] = [Math.max(middle[1] - reach, -90), Math.min(middle[1] + reach, 90)];
  const across = Math.min(reach / Math.max(Math.cos(middle[1] / DEGREES), 0.02), 180);
  const line = (coordinates: number[][]) =>
    element("path", { d: path({ type: "LineString", coordinates }) ?? "", fill: "none", stroke: look.grid });
  const points = (from: number, to: number) =>
    Array.from({ length: 41 }, (_, k) => from + ((to - from) * k) / 40);
  return {
    lines: [
      ...multiples(middle[0] - across, middle[0] + across, east).map((lon) =>
        line(points(low, high).map((lat) => [lon, lat])),
      ),
      ...multiples(low, high, north).map((lat) =>
        line(points(middle[0] - across, middle[0] + across).map((lon) => [lon, lat])),
      ),
    ],
    names: [
      ...bottom.map(({ at: [x], degrees }) =>
        textElement(
          "text",
          { x: x!, y: at.bottom + 17, "text-anchor": "middle", class: "tick" },
          angleWords(degrees, "EW", east),
        ),
      ),
      ...side.map(({ at: [, y], degrees }) =>
        textElement(
          "text",
          {
            transform: `translate(${round(at.left - 9)} ${round(y!)}) rotate(-90)`,
            "text-anchor": "middle",
            class: "tick",
          },
          angleWords(degrees, "NS", north),
        ),
      ),
    ],
  };
}

/** Multiples of so many minutes between two angles, degrees; at most two hundred. */
function multiples(from: number, to: number, minutes: number): number[] {
  const first = Math.ceil((from * 60) / minutes);
  const last = Math.min(Math.floor((to * 60) / minutes), first + 200);
  return Array.from({ length: Math.max(last - first + 1, 0) }, (_, k) => ((first + k) * minutes) / 60);
}

/** Where an edge of the frame meets round longitudes (0) or latitudes (1). */
function crossings(
  projection: GeoProjection,
  from: readonly [number, number],
  to: readonly [number, number],
  which: 0 | 1,
  minutes: number,
  middle: number,
): { readonly at: readonly [number, number]; readonly degrees: number }[] {
  const parts = 64;
  const found: { at: [number, number]; degrees: number }[] = [];
  let before = Number.NaN;
  for (let k = 0; k <= parts; k++) {
    const place = (part: number): [number, number] => [
      from[0] + ((to[0] - from[0]) * part) / parts,
      from[1] + ((to[1] - from[1]) * part) / parts,
    ];
    const angle = projection.invert!(place(k))?.[which] ?? Number.NaN;
    // longitudes run on over the date line
    const now = which === 0 ? middle + (((angle - middle + 540) % 360) - 180) : angle;
    if (Math.abs(now - before) < 90)
      for (const degrees of multiples(Math.min(before, now), Math.max(before, now), minutes))
        if (degrees !== before)
          found.push({ at: place(k - 1 + (degrees - before) / (now - before)), degrees });
    before = now;
  }
  return found;
}

/** Degrees and minutes, to the places that the step between the lines asks for. */
function angleWords(degrees: number, signs: string, step: number): string {
  const turned = signs === "EW" ? ((degrees + 540) % 360) - 180 : degrees;
  const decimals = step >= 1 ? 0 : step >= 0.1 ? 1 : 2;
  const minutes = Number((Math.abs(turned) * 60).toFixed(decimals));
  const whole = Math.floor(minutes / 60);
  const rest = minutes - whole * 60;
  const sign = minutes === 0 || whole === 180 ? "" : turned < 0 ? signs[1] : signs[0];
  return step >= 60 ? `${whole}°${sign}` : `${whole}°${rest.toFixed(decimals).padStart(2, "0")}′${sign}`;
}

/** Pixels that the scale bars take. */
export const SCALE_BARS = { width: 210, height: 44 } as const;

/** A bar of a round length in km above one in nautical miles; left upper corner of their room at x, y. */
export function drawScaleBars(pixelsPerKilometre: number, x: number, y: number): string[] {
  const bar = (perUnit: number, unit: string, plural: string, base: number, side: 1 | -1) => {
    const length = roundBelow(110 / perUnit);
    const wide = length * perUnit;
    return [
      element("path", {
        d: `M${round(x)} ${round(base + 5 * side)}v${-5 * side}h${round(wide)}v${5 * side}`,
        ...{ fill: "none", stroke: look.ink, "stroke-width": "1.2" },
      }),
      textElement(
        "text",
        { x: x + wide + 7, y: base + (side < 0 ? 0 : 9), class: "onlines" },
        `${length} ${length === 1 ? unit : plural}`,
      ),
    ];
  };
  return [
    ...bar(pixelsPerKilometre, "km", "km", y + 16, -1),
    ...bar(pixelsPerKilometre * 1.852, "nautical mile", "nautical miles", y + 21, 1),
  ];
}

/** The largest of 1, 2, 5 times a power of ten that is not above a number. */
function roundBelow(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  const digit = [5, 2, 1].find((each) => each * power <= most) ?? 1;
  return Number((digit * power).toPrecision(1));
}
