import { type ScaleLinear, scaleLinear } from "d3-scale";
import { axisAcross, clipOf, outline, ticksOf } from "./axes.ts";
import type { Point } from "./cast-rows.ts";
import { depthAxis, drawDepthAxis } from "./depth-axis.ts";
import { extentOf } from "./extent.ts";
import { isolines, type Station } from "./isolines.ts";
import { pathOf } from "./lines.ts";
import { look } from "./look.ts";
import { picture } from "./picture.ts";
import { element, round, textElement } from "./svg.ts";
import { thinned } from "./thin.ts";

export interface SectionStation extends Station {
  /** Short name of the cast. */
  readonly label: string;
}

export interface SectionOptions {
  readonly scope: string;
  readonly title: string;
  readonly description: string;
  /** Each with its unit. */
  readonly quantityTitle: string;
  readonly placeTitle: string;
  readonly distanceTitle: string;
}

const [WIDTH, HEIGHT] = [720, 330];

/**
 * Distance against depth. What was measured is a column of tones under each station; between neighbouring stations
 * only lines of equal value, from linear interpolation at equal depth, none below the shallower of the two.
 */
export function sectionPicture(stations: readonly SectionStation[], options: SectionOptions): string {
  const at = { left: 62, right: WIDTH - 114, top: 46, bottom: HEIGHT - 48 };
  const values = extentOf(stations.flatMap((each) => [...(extentOf(each.values) ?? [])])) ?? [0, 1];
  const span = values[1] - values[0] || Math.max(Math.abs(values[0]) * 0.01, 0.01);
  const distances = extentOf(stations.map(({ distance }) => distance)) ?? [0, 1];
  const margin = 0.035 * (distances[1] - distances[0] || 1);
  const across = scaleLinear([distances[0] - margin, distances[1] + margin], [at.left, at.right]);
  const axis = depthAxis(
    stations.map(({ place }) => extentOf(place)?.[1] ?? Number.NaN),
    at,
  );
  const { down } = axis;
  const tone = scaleLinear<string>([values[0], values[0] + span / 2, values[0] + span], [...look.tones]);
  const ordered = [...stations].sort((a, b) => a.distance - b.distance);
  const gaps = ordered.slice(1).map(({ distance }, k) => across(distance) - across(ordered[k]!.distance));
  const wide = Math.min(14, Math.max(3, 0.6 * Math.min(...gaps)));
  const columns = ordered.map((station) => drawColumn(station, across(station.distance), wide, down, tone));
  const levels = scaleLinear([values[0], values[0] + span], [0, 1]).ticks(8);
  const print = scaleLinear([values[0], values[0] + span], [0, 1]).tickFormat(8, "f");
  const named: Point[] = [];
  const lines = levels.map((level) => {
    const pieces = ordered
      .slice(1)
      .flatMap((right, k) =>
        isolines(ordered[k]!, right, level).map((run) => run.map(([x, y]): Point => [across(x), down(y)])),
      );
    const longest = pieces.reduce<readonly Point[]>(
      (best, each) => (lengthOf(each) > lengthOf(best) ? each : best),
      [],
    );
    const [x, y] = middleOf(longest);
    const crowded = named.some(([nx, ny]) => Math.abs(nx - x) < 24 && Math.abs(ny - y) < 12);
    if (!crowded) named.push([x, y]);
    const name =
      crowded || lengthOf(longest) < 30
        ? []
        : [textElement("text", { x, y: y + 4, "text-anchor": "middle", class: "onlines" }, print(level))];
    const d = pathOf(pieces.map((piece) => thinned(piece, "x")));
    // a light edge, so that it can be seen on dark tones
    return [
      element("path", { d, fill: "none", stroke: look.paper, "stroke-width": "3", "stroke-opacity": "0.7" }),
      element("path", { class: "isoline", d, fill: "none", stroke: look.ink, "stroke-width": "1.1" }),
      ...name,
    ];
  });
  const floor = ordered
    .flatMap(({ distance, place }) =>
      place.length > 0 ? [`${round(across(distance))} ${round(down(place.at(-1)!))}`] : [],
    )
    .map((point, k) => `${k === 0 ? "M" : "L"}${point}`)
    .join("");
  const clip = `${options.scope}-panel`;
  return picture({ ...options, width: WIDTH, height: HEIGHT }, [
    clipOf(clip, at),
    ...axisAcross(ticksOf(across, 64), options.distanceTitle, at, "below"),
    ...drawDepthAxis(axis, options.placeTitle, [at]),
    element("g", { "clip-path": `url(#${clip})` }, [
      ...columns,
      element("path", {
        class: "deepest",
        d: floor,
        fill: "none",
        stroke: look.quiet,
        "stroke-dasharray": "1 3",
      }),
    ]),
    ...lines.flat(),
    ...stationNames(ordered, across, at.top),
    outline(at),
    ...toneScale(levels, print, tone, values, at, options.quantityTitle),
  ]);
}

/** Tones are told apart in so many steps; neighbours of one step are one block. */
const TONES = 40;

/** Blocks of tones, each level as high as the way to its neighbours. */
function drawColumn(
  { place, values, label }: SectionStation,
  x: number,
  wide: number,
  down: (value: number) => number,
  tone: ScaleLinear<string, string>,
): string {
  const [least = 0, , most = 1] = tone.domain();
  const stepOf = (value: number) => Math.round(((value - least) / (most - least)) * TONES);
  const edge = (k: number) =>
    k <= 0
      ? place[0]! - ((place[1] ?? place[0]!) - place[0]!) / 2
      : k >= place.length
        ? place.at(-1)! + (place.at(-1)! - (place.at(-2) ?? place.at(-1)!)) / 2
        : (place[k - 1]! + place[k]!) / 2;
  const blocks: string[] = [];
  for (let first = 0; first < place.length; ) {
    const step = stepOf(values[first]!);
    let next = first + 1;
    while (next < place.length && Object.is(stepOf(values[next]!), step)) next++;
    if (!Number.isNaN(step)) {
      const [top, bottom] = [down(edge(first)), down(edge(next))];
      const fill = tone(least + (step / TONES) * (most - least));
      blocks.push(
        element("rect", { x: x - wide / 2, y: top, width: wide, height: Math.max(bottom - top, 0.6), fill }),
      );
    }
    first = next;
  }
  return element("g", { "data-cast": label, "shape-rendering": "crispEdges" }, blocks);
}

const lengthOf = (points: readonly Point[]): number =>
  points.reduce(
    (sum, [x, y], k) => sum + (k === 0 ? 0 : Math.hypot(x - points[k - 1]![0], y - points[k - 1]![1])),
    0,
  );

function middleOf(points: readonly Point[]): Point {
  const half = lengthOf(points) / 2;
  for (let k = 1, way = 0; k < points.length; k++) {
    const [[ax, ay], [bx, by]] = [points[k - 1]!, points[k]!];
    const step = Math.hypot(bx - ax, by - ay);
    if (way + step >= half) {
      const part = step === 0 ? 0 : (half - way) / step;
      return [ax + part * (bx - ax), ay + part * (by - ay)];
    }
    way += step;
  }
  return points[0] ?? [0, 0];
}

/** A tick for each station, and its name where there is room. */
function stationNames(
  ordered: readonly SectionStation[],
  across: (value: number) => number,
  top: number,
): string[] {
  let free = -Infinity;
  return ordered.flatMap(({ label, distance }) => {
    const x = across(distance);
    const tick = element("path", {
      d: `M${round(x)} ${round(top - 9)}v9`,
      fill: "none",
      stroke: look.ink,
      "stroke-width": "1.4",
    });
    const wide = label.length * 6.6;
    if (x - wide / 2 < free) return [tick];
    free = x + wide / 2 + 5;
    return [tick, textElement("text", { x, y: top - 14, "text-anchor": "middle", class: "small" }, label)];
  });
}

function toneScale(
  levels: readonly number[],
  print: (value: number) => string,
  tone: (value: number) => string,
  [least, most]: readonly [number, number],
  at: { readonly right: number; readonly top: number; readonly bottom: number },
  title: string,
): string[] {
  const up = scaleLinear([least, most], [at.bottom, at.top + 30]);
  const steps = 24;
  const left = at.right + 22;
  const blocks = Array.from({ length: steps }, (_, k) => {
    const value = least + ((k + 0.5) / steps) * (most - least);
    const height = (at.bottom - at.top - 30) / steps;
    return element("rect", {
      x: left,
      y: up(value) - height / 2,
      width: 12,
      height: height + 0.3,
      fill: tone(value),
    });
  });
  return [
    ...blocks,
    ...levels.map((level) =>
      textElement("text", { x: left + 18, y: up(level) + 4, class: "tick" }, print(level)),
    ),
    textElement("text", { x: left - 14, y: at.top + 12, class: "small" }, title),
  ];
}
