import { type Cast, type Column, Flag } from "@wherry/core";
import { scaleLinear } from "d3-scale";
import { axisAcross, axisDown, clipOf, outline, type PanelPlace, ticksOf } from "./axes.ts";
import { type Manner, mannerOfRows, type Point, runsOf, spreadOut } from "./cast-rows.ts";
import { extentOf } from "./extent.ts";
import { pathOf } from "./lines.ts";
import { look } from "./look.ts";
import { badMark, questionableMark } from "./marks.ts";
import { picture } from "./picture.ts";
import { axisTitle } from "./quantity-words.ts";
import { element, round } from "./svg.ts";
import { thinned } from "./thin.ts";
import { timeAxis } from "./time-axis.ts";

export interface SeriesOptions {
  readonly scope: string;
  readonly title: string;
  readonly description: string;
  readonly columns: readonly Column[];
}

const WIDTH = 720;
const [PANEL, GAP, TOP, BOTTOM] = [128, 22, 14, 46];

/**
 * A series at a fixed depth: quantities over time, one under the other. Rows of the stay are a solid line, others
 * dotted, rows in air left out; questionable values carry an open diamond, bad ones a cross. Pressure grows downward.
 */
export function seriesPicture(cast: Cast, { columns, ...frame }: SeriesOptions): string {
  const [left, right] = [76, WIDTH - 14];
  const start = cast.timeRole === "start" ? cast.time : Number.NaN;
  const { across, ticks, title } = timeAxis(start, cast.elapsed, cast.rows, [left, right]);
  const manners = mannerOfRows(cast);
  const bottomOf = (k: number) => TOP + (k + 1) * PANEL + k * GAP;
  const height = bottomOf(Math.max(columns.length, 1) - 1) + BOTTOM;
  const panels = columns.map((column, k) => {
    const at = { left, right, top: bottomOf(k) - PANEL, bottom: bottomOf(k) };
    const isLast = k === columns.length - 1;
    return drawSeriesPanel(column, manners, across, at, `${frame.scope}-panel-${k + 1}`, [
      ...axisAcross(
        isLast ? ticks : ticks.map(({ at: x }) => ({ at: x, words: "" })),
        isLast ? title : "",
        at,
        "below",
      ),
      ...borders(cast, across, at),
    ]);
  });
  return picture({ ...frame, width: WIDTH, height }, panels);
}

function drawSeriesPanel(
  column: Column,
  manners: readonly Manner[],
  across: (row: number) => number,
  at: PanelPlace,
  clip: string,
  behind: readonly string[],
): string {
  const inWater = (row: number) =>
    manners[row] !== "air" && Number.isFinite(column.values[row]) && Number.isFinite(across(row));
  const extent = (of: (row: number) => boolean) => extentOf(column.values, (row) => inWater(row) && of(row));
  const settled = (row: number) => manners[row] === "all" && (column.flags[row] ?? 9) <= Flag.notEvaluated;
  const [low, high] = extent(settled) ?? extent(() => true) ?? [0, 1];
  const margin = Math.max((high - low) * 0.15, Math.abs(high) * 1e-6, 1e-3);
  const downward = column.name === "pressure" || column.name === "depth";
  const [from, to] = downward ? [at.top, at.bottom] : [at.bottom, at.top];
  const scale = scaleLinear([low - margin, high + margin], [from, to]).nice(4);
  const point = (row: number): Point => [across(row), scale(column.values[row]!)];
  const sound = (row: number) => inWater(row) && column.flags[row] !== Flag.bad;
  const lines = (["rest", "all"] as const).flatMap((manner) => {
    const runs = runsOf(manners, manner, sound, point).map((run) => thinned(run, "x"));
    if (runs.length === 0) return [];
    return element("path", {
      ...{
        class: manner,
        d: pathOf(runs),
        fill: "none",
        "stroke-linejoin": "round",
        "stroke-linecap": "round",
      },
      ...look.lines[manner],
      "stroke-width": "0.9",
    });
  });
  const marksAt = (flag: number) => {
    const rows = [...manners.keys()].filter((row) => inWater(row) && column.flags[row] === flag);
    // beyond the scale the mark stands at the edge
    return spreadOut(
      rows.map((row): Point => [across(row), Math.min(Math.max(point(row)[1], at.top), at.bottom)]),
      9,
    );
  };
  return element("g", { class: "panel", "data-quantity": column.name }, [
    clipOf(clip, at),
    ...behind,
    ...axisDown(ticksOf(scale, 34), axisTitle(column), [at], 62),
    element("g", { "clip-path": `url(#${clip})` }, lines.length > 0 ? lines : [element("g", {})]),
    ...marksAt(Flag.questionable).map(([x, y]) => questionableMark(x, y)),
    ...marksAt(Flag.bad).map(([x, y]) => badMark(x, y)),
    outline(at),
  ]);
}

/** Lines where the stay begins and ends. */
function borders(cast: Cast, across: (row: number) => number, at: PanelPlace): string[] {
  return cast.segments
    .filter(({ firstRow }) => firstRow > 0)
    .map(({ firstRow }) =>
      element("path", {
        d: `M${round(across(firstRow))} ${round(at.top)}V${round(at.bottom)}`,
        ...{ fill: "none", stroke: look.frame, "stroke-dasharray": "2 2" },
      }),
    );
}
