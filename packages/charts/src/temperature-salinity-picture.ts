import { freezingConservativeTemperature, sigma0 } from "@wherry/core";
import { type ScaleLinear, scaleLinear } from "d3-scale";
import { axisAcross, axisDown, clipOf, outline, type PanelPlace, ticksOf } from "./axes.ts";
import type { Point } from "./cast-rows.ts";
import { extentOf } from "./extent.ts";
import { drawLabels } from "./labels.ts";
import { pathOf } from "./lines.ts";
import { look } from "./look.ts";
import { tintOfOrder } from "./overlay-picture.ts";
import { picture } from "./picture.ts";
import { element, round, textElement } from "./svg.ts";

/** Levels of a cast, arrays of one length; missing is NaN. */
export interface WaterOfCast {
  readonly label: string;
  /** Absolute Salinity, g kg-1. */
  readonly SA: Float64Array;
  /** Conservative Temperature, degree Celsius. */
  readonly CT: Float64Array;
}

export interface WaterOptions {
  readonly scope: string;
  readonly title: string;
  readonly description: string;
}

type Scale = ScaleLinear<number, number>;
const [WIDTH, HEIGHT] = [720, 520];

/** Conservative Temperature against Absolute Salinity, with lines of equal potential density anomaly (TEOS-10). */
export function temperatureSalinityPicture(casts: readonly WaterOfCast[], options: WaterOptions): string {
  const at = { left: 62, right: WIDTH - 14, top: 14, bottom: HEIGHT - 50 };
  const found = [
    extentOf(casts.flatMap(({ SA }) => [...(extentOf(SA) ?? [])])),
    extentOf(casts.flatMap(({ CT }) => [...(extentOf(CT) ?? [])])),
  ] as const;
  const salt = found[0] ?? ([0, 35] as const);
  const warmth = found[1] ?? ([0, 20] as const);
  // a shelf sea must not look like an estuary: an axis spans at least a tenth of a g/kg and half a degree
  const across = scaleLinear(widened(salt, 0.1, 0), [at.left, at.right]);
  const up = scaleLinear(widened(warmth, 0.5, -3), [at.bottom, at.top]);
  const clip = `${options.scope}-panel`;
  const tint = tintOfOrder(casts.length);
  const all: Point[] = [];
  const ends: { at: Point; label: string }[] = [];
  const marks = casts.map(({ label, SA, CT }, k) => {
    const points = [...SA.keys()]
      .filter((i) => Number.isFinite(SA[i]) && Number.isFinite(CT[i]))
      .map((i): Point => [across(SA[i]!), up(CT[i]!)]);
    const last = points.at(-1);
    all.push(...points);
    if (last) ends.push({ at: last, label });
    const dots = apart(points, 3)
      .map(([x, y]) => `M${round(x)} ${round(y)}h0.1`)
      .join("");
    const stroke = { fill: "none", stroke: tint(k) };
    return element("g", { "data-cast": label }, [
      element("path", { d: pathOf([apart(points, 1.5)]), ...stroke, "stroke-width": "0.8" }),
      element("path", { d: dots, ...stroke, "stroke-width": "4", "stroke-linecap": "round" }),
    ]);
  });
  return picture({ ...options, width: WIDTH, height: HEIGHT }, [
    clipOf(clip, at),
    ...axisAcross(ticksOf(across, 64), "Absolute Salinity / g kg⁻¹", at, "below"),
    ...axisDown(ticksOf(up, 55), "Conservative Temperature / °C", [at]),
    element("g", { "clip-path": `url(#${clip})` }, [...densityLines(across, up, at), ...marks]),
    drawLabels(ends, at, all).svg,
    outline(at),
  ]);
}

function widened([low, high]: readonly [number, number], least: number, floor: number): [number, number] {
  const margin = Math.max((high - low) * 0.06, (least - (high - low)) / 2, 0);
  return [Math.max(low - margin, Math.min(floor, low)), high + margin];
}

/** Points at least so far from the last one kept; the first and the last stay. */
function apart(points: readonly Point[], pixels: number): readonly Point[] {
  const kept: Point[] = [];
  for (const [k, point] of points.entries()) {
    const last = kept.at(-1);
    if (!last || k === points.length - 1 || Math.hypot(point[0] - last[0], point[1] - last[1]) >= pixels)
      kept.push(point);
  }
  return kept;
}

/** Lines of equal sigma0 at round steps, each with its value where it meets the upper or right edge. */
function densityLines(across: Scale, up: Scale, at: PanelPlace): string[] {
  const [[leastSA, mostSA], [leastCT, mostCT]] = [across.domain(), up.domain()] as [Pair, Pair];
  const levels = scaleLinear([sigma0(leastSA, mostCT), sigma0(mostSA, leastCT)], [0, 1]).ticks(9);
  const temperatures = Array.from({ length: 61 }, (_, i) => leastCT + ((mostCT - leastCT) * i) / 60);
  const steps = new Set(levels.map((level) => (String(level).split(".")[1] ?? "").length));
  const decimals = Math.max(...steps, 0);
  const lines = levels.flatMap((level) => {
    const points = temperatures.map((CT): Point => [across(salinityAt(level, CT)), up(CT)]);
    const inside = points.filter(([x]) => x >= at.left && x <= at.right);
    if (inside.length < 2) return [];
    const [x, y] = inside.at(-1)!;
    const name = textElement(
      "text",
      {
        x: Math.min(x - 4, at.right - 6),
        y: Math.min(y + 16, at.bottom - 8),
        "text-anchor": "end",
        class: "onlines",
      },
      level.toFixed(decimals),
    );
    const d = pathOf([points.filter(([px]) => Number.isFinite(px))]);
    return [
      element("path", { class: "density", d, fill: "none", stroke: look.frame, "stroke-dasharray": "5 3" }),
      name,
    ];
  });
  const freezing = temperatures.map((_, i) => {
    const SA = leastSA + ((mostSA - leastSA) * i) / 60;
    return [across(SA), up(freezingConservativeTemperature(SA, 0, 1))] as const;
  });
  const ice = element("path", {
    class: "freezing",
    d: pathOf([freezing]),
    fill: "none",
    stroke: look.quiet,
    "stroke-width": "1.6",
  });
  return freezing.some(([, y]) => y < at.bottom) ? [...lines, ice] : lines;
}

type Pair = [number, number];

/** More salt than any line within the panel needs just outside it. */
const SALTIEST = 120;

/** Salinity at which the density is reached at a temperature, by halving: density grows with salinity. */
function salinityAt(level: number, CT: number): number {
  let [low, high] = [0, SALTIEST];
  if (sigma0(low, CT) > level || sigma0(high, CT) < level) return Number.NaN;
  for (let k = 0; k < 44; k++) {
    const middle = (low + high) / 2;
    if (sigma0(middle, CT) < level) low = middle;
    else high = middle;
  }
  return low;
}
