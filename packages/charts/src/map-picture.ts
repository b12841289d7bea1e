import type { Position } from "@wherry/core";
import { geoGraticule10, geoOrthographic, geoPath } from "d3-geo";
import { clipOf, outline, type PanelPlace } from "./axes.ts";
import type { Point } from "./cast-rows.ts";
import { drawLabels } from "./labels.ts";
import { drawLand, naturalEarthLand, type Shoreline } from "./land.ts";
import { look } from "./look.ts";
import { drawGraticule, drawScaleBars, type LonLat, mapFrame, middleOf, SCALE_BARS } from "./map-frame.ts";
import { picture } from "./picture.ts";
import { element, round, textElement } from "./svg.ts";

export interface MapCast {
  /** Short name. */
  readonly label: string;
  readonly kind: "profile" | "fixed-depth";
  readonly start: Position | null;
  readonly end: Position | null;
}

export interface MapOptions {
  readonly scope: string;
  readonly title: string;
  readonly description: string;
  /** The user's own; without one, Natural Earth where the map is wide enough for it. */
  readonly shoreline?: Shoreline | null;
}

export interface SurveyMap {
  readonly svg: string;
  /** Whose shore is drawn. */
  readonly land: "own" | "Natural Earth 1:50m" | "none";
  readonly unnamed: number;
}

const WIDTH = 720;
/** Kilometres across the map below which Natural Earth's lines are nearer to a guess than to a shore. */
const WIDE = 150;

/** Most stations whose names are tried; more find no room anyhow. */
const MOST_NAMES = 600;

const lonLat = ({ longitude, latitude }: Position): LonLat => [longitude, latitude];

/**
 * Stations on a graticule with track, scale bar and, beside it, where on the globe they lie. Casts in the order of
 * time.
 *
 * @returns null if no cast has a position
 */
export function mapPicture(casts: readonly MapCast[], options: MapOptions): SurveyMap | null {
  const fixes = casts.flatMap(({ start, end }) => [start, end].filter((fix) => fix !== null).map(lonLat));
  if (fixes.length === 0) return null;
  const frame = mapFrame(fixes, { left: 34, right: 566, top: 8 }, [270, 600]);
  const { projection, at, pixelsPerKilometre } = frame;
  const onMap = (fix: Position): Point => projection([...lonLat(fix)])!;
  const wide = (at.right - at.left) / pixelsPerKilometre >= WIDE;
  const land = options.shoreline ?? (wide ? naturalEarthLand("fine") : null);
  const stations = casts.flatMap(({ label, kind, start, end }) => {
    const first = start ?? end;
    return first ? [{ label, kind, at: onMap(first), end: end ? onMap(end) : null }] : [];
  });
  const graticule = drawGraticule(frame);
  const d = withoutRepeats(
    stations.map(({ at: [x, y] }) => `${round(x)} ${round(y)}`),
    "followed",
  ).join("L");
  const track = element("path", {
    class: "track",
    d: `M${d}`,
    fill: "none",
    stroke: look.frame,
    "stroke-dasharray": "4 3",
  });
  const drift = stations
    .filter(({ at: [x, y], end }) => end && Math.hypot(end[0] - x, end[1] - y) > 4)
    .map(({ at: [x, y], end }) => `M${round(x)} ${round(y)}L${round(end![0])} ${round(end![1])}`)
    .join("");
  const labels = drawLabels(stations.slice(0, MOST_NAMES), at);
  const clip = `${options.scope}-frame`;
  const svg = picture({ ...options, width: WIDTH, height: at.bottom + 30 }, [
    clipOf(clip, at),
    element("g", { "clip-path": `url(#${clip})` }, [
      ...(land ? [drawLand(land, projection)] : []),
      ...graticule.lines,
      track,
      ...(drift
        ? [element("path", { class: "drift", d: drift, fill: "none", stroke: look.ink, "stroke-width": "2" })]
        : []),
    ]),
    ...graticule.names,
    ...withoutRepeats(
      stations.map(({ kind, at: [x, y] }) => stationMark(kind, x, y)),
      "anywhere",
    ),
    labels.svg,
    outline(at),
    ...drawGlobe(middleOf(fixes), 645, 72, 62, `${options.scope}-globe`),
    ...drawKey(casts, drift !== "", 590, 168),
    ...drawScaleBars(pixelsPerKilometre, ...emptiestCorner(stations, at)),
  ]);
  return {
    svg,
    land: options.shoreline ? "own" : land ? "Natural Earth 1:50m" : "none",
    unnamed: labels.unnamed + Math.max(stations.length - MOST_NAMES, 0),
  };
}

/** Texts without those that repeat the one before, or any before: stations of one place are drawn once. */
function withoutRepeats(texts: readonly string[], where: "followed" | "anywhere"): readonly string[] {
  return where === "anywhere" ? [...new Set(texts)] : texts.filter((text, k) => text !== texts[k - 1]);
}

/** Where the scale bars cover fewest stations: their left upper corner. */
function emptiestCorner(stations: readonly { readonly at: Point }[], at: PanelPlace): [number, number] {
  const { width, height } = SCALE_BARS;
  const [left, right] = [at.left + 14, at.right - width];
  const [top, bottom] = [at.top + 8, at.bottom - height];
  const corners: [number, number][] = [
    [left, bottom],
    [right, bottom],
    [left, top],
    [right, top],
  ];
  const covered = ([x, y]: [number, number]) =>
    stations.filter(({ at: [sx, sy] }) => sx > x - 10 && sx < x + width && sy > y - 10 && sy < y + height)
      .length;
  return corners.reduce((best, each) => (covered(each) < covered(best) ? each : best));
}

const stationMark = (kind: MapCast["kind"], x: number, y: number): string =>
  kind === "profile"
    ? element("circle", { cx: x, cy: y, r: 3.6, fill: look.paper, stroke: look.ink, "stroke-width": "1.5" })
    : element("rect", {
        x: x - 4,
        y: y - 4,
        width: 8,
        height: 8,
        fill: look.ink,
        stroke: look.paper,
        "stroke-width": "1",
      });

/** The half of the Earth about the place, which shows at once a longitude of the wrong sign. */
function drawGlobe([lon, lat]: LonLat, x: number, y: number, radius: number, id: string): string[] {
  const projection = geoOrthographic()
    .rotate([-lon, -Math.max(-60, Math.min(60, lat))])
    .translate([x, y])
    .scale(radius);
  const path = geoPath(projection).digits(1);
  const [px, py] = projection([lon, lat]) ?? [x, y];
  return [
    element("g", { id }, [
      element("circle", { cx: x, cy: y, r: radius, fill: look.paper, stroke: look.frame }),
      element("path", {
        d: path(geoGraticule10()) ?? "",
        fill: "none",
        stroke: look.grid,
        "stroke-width": "0.5",
      }),
      drawLand(naturalEarthLand("coarse"), projection),
      element("path", {
        d: `M${round(px - 9)} ${round(py)}h6m6 0h6M${round(px)} ${round(py - 9)}v6m0 6v6`,
        fill: "none",
        stroke: look.ink,
        "stroke-width": "2",
      }),
    ]),
  ];
}

function drawKey(casts: readonly MapCast[], drifts: boolean, x: number, top: number): string[] {
  const has = (kind: MapCast["kind"]) => casts.some((cast) => cast.kind === kind);
  const entries: [boolean, (y: number) => string, string][] = [
    [has("profile"), (y) => stationMark("profile", x + 9, y), "cast"],
    [has("fixed-depth"), (y) => stationMark("fixed-depth", x + 9, y), "fixed depth"],
    [
      casts.length > 1,
      (y) =>
        element("path", {
          d: `M${x} ${round(y)}h18`,
          fill: "none",
          stroke: look.frame,
          "stroke-dasharray": "4 3",
        }),
      "in order of time",
    ],
    [
      drifts,
      (y) =>
        element("path", { d: `M${x} ${round(y)}h18`, fill: "none", stroke: look.ink, "stroke-width": "2" }),
      "start to end fix",
    ],
  ];
  return entries
    .filter(([shown]) => shown)
    .flatMap(([, sample, words], k) => [
      sample(top + 22 * k),
      textElement("text", { x: x + 26, y: top + 4 + 22 * k, class: "small" }, words),
    ]);
}
