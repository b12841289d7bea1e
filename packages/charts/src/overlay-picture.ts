import { scaleLinear } from "d3-scale";
import { axisAcross, outline, type PanelPlace, sideBySide, ticksOf } from "./axes.ts";
import type { Point } from "./cast-rows.ts";
import { depthAxis, drawDepthAxis } from "./depth-axis.ts";
import { extentOf } from "./extent.ts";
import { drawLabels } from "./labels.ts";
import { pathOf } from "./lines.ts";
import { look } from "./look.ts";
import { picture } from "./picture.ts";
import { element } from "./svg.ts";
import { thinned } from "./thin.ts";

/** Levels of a profile, arrays of one length; missing is NaN. */
export interface Levels {
  /** Short name of the cast. */
  readonly label: string;
  readonly place: Float64Array;
  /** By quantity. */
  readonly values: ReadonlyMap<string, Float64Array>;
}

export interface OverlayPanel {
  readonly quantity: string;
  /** With unit. */
  readonly title: string;
}

export interface OverlayOptions {
  readonly scope: string;
  readonly title: string;
  readonly description: string;
  /** With unit. */
  readonly placeTitle: string;
  /** At most three a row. */
  readonly panels: readonly OverlayPanel[];
}

const WIDTH = 720;
const ROW = 430;

/** Lighter to darker, in the order of the casts; dark where there is one. */
export function tintOfOrder(count: number): (index: number) => string {
  const [light, dark] = look.order;
  return count < 2 ? () => dark : scaleLinear<string>([0, count - 1], [light, dark]);
}

/** All profiles of a survey over each other, one panel for each quantity; the names stand at their lower ends. */
export function overlayPicture(casts: readonly Levels[], options: OverlayOptions): string {
  const { panels, placeTitle } = options;
  const rows = Math.ceil(panels.length / 3);
  const svg = Array.from({ length: rows }, (_, row) => {
    const frame = { left: 62, right: WIDTH - 10, top: row * ROW + 54, bottom: (row + 1) * ROW - 16 };
    const places = sideBySide(Math.min(panels.length, 3), frame, 24);
    return overlayRow(casts, panels.slice(3 * row, 3 * row + 3), placeTitle, frame, places);
  });
  return picture({ ...options, width: WIDTH, height: Math.max(rows, 1) * ROW }, svg);
}

function overlayRow(
  casts: readonly Levels[],
  panels: readonly OverlayPanel[],
  placeTitle: string,
  frame: PanelPlace,
  allPlaces: readonly PanelPlace[],
): string {
  const places = allPlaces.slice(0, panels.length);
  const axis = depthAxis(
    casts.map(({ place }) => extentOf(place)?.[1] ?? Number.NaN),
    frame,
  );
  const { down } = axis;
  const tint = tintOfOrder(casts.length);
  return element("g", {}, [
    ...drawDepthAxis(axis, placeTitle, places),
    ...panels.map(({ quantity, title }, i) => {
      const at = places[i]!;
      const all = extentOf(casts.flatMap(({ values }) => [...(extentOf(values.get(quantity) ?? []) ?? [])]));
      if (!all) return element("g", {}, [...axisAcross([], title, at), outline(at)]);
      const margin = Math.max((all[1] - all[0]) * 0.05, Math.abs(all[1]) * 1e-6, 1e-3);
      const across = scaleLinear([all[0] - margin, all[1] + margin], [at.left, at.right]);
      const ends: { at: Point; label: string }[] = [];
      const lines = casts.map(({ label, place, values }, k) => {
        const of = values.get(quantity);
        const runs = of ? runsOfLevels(place, of, (x, y) => [across(x), down(y)]) : [];
        const end = runs.at(-1)?.at(-1);
        if (end) ends.push({ at: end, label });
        return element("path", {
          d: pathOf(runs.map((run) => thinned(run, "y"))),
          fill: "none",
          stroke: tint(k),
          "stroke-width": "1.3",
          "stroke-linejoin": "round",
          "stroke-linecap": "round",
        });
      });
      return element("g", { "data-quantity": quantity }, [
        ...axisAcross(ticksOf(across, 64), title, at),
        ...lines,
        drawLabels(ends, at).svg,
        outline(at),
      ]);
    }),
  ]);
}

/** Runs of neighbouring levels that hold a value. */
export function runsOfLevels(
  place: Float64Array,
  values: Float64Array,
  point: (value: number, place: number) => Point,
): readonly (readonly Point[])[] {
  const runs: Point[][] = [];
  let broken = true;
  for (const [k, value] of values.entries()) {
    const held = Number.isFinite(value) && Number.isFinite(place[k]);
    if (held && broken) runs.push([]);
    if (held) runs.at(-1)!.push(point(value, place[k]!));
    broken = !held;
  }
  return runs;
}
