import { type Cast, Flag } from "@wherry/core";
import { scaleLinear } from "d3-scale";
import { axisAcross, axisDown, clipOf, outline, type PanelPlace, ticksOf } from "./axes.ts";
import { mannerOfRows, type Point, runsOf, spreadOut } from "./cast-rows.ts";
import { extentOf } from "./extent.ts";
import { pathOf } from "./lines.ts";
import { look } from "./look.ts";
import { badMark, questionableMark } from "./marks.ts";
import { element, round, textElement } from "./svg.ts";
import { thinned } from "./thin.ts";

/** Seconds after which minutes are easier to read. */
const LONG = 900;

/**
 * Pressure against the time since the first row, with the segments told apart by lines between them and their names.
 * Null where rows have no times or the cast no pressure.
 */
export function drawTimePanel(cast: Cast, at: PanelPlace, clip: string): string | null {
  const pressure = cast.columns.get("pressure");
  const { elapsed } = cast;
  if (!pressure || !elapsed) return null;
  const known = (row: number) => Number.isFinite(pressure.values[row]) && Number.isFinite(elapsed[row]);
  const sound = (row: number) => known(row) && pressure.flags[row] !== Flag.bad;
  const seconds = extentOf(elapsed);
  const reach = extentOf(pressure.values, sound);
  if (!seconds || !reach) return null;
  const minutes = seconds[1] - seconds[0] > LONG;
  const unit = minutes ? 60 : 1;
  const across = scaleLinear(
    [seconds[0] / unit, Math.max(seconds[1], seconds[0] + 1) / unit],
    [at.left, at.right],
  );
  const span = Math.max(reach[1] - reach[0], 0.5);
  const down = scaleLinear(
    [Math.min(0, reach[0]) - 0.03 * span, reach[1] + 0.06 * span],
    [at.top, at.bottom],
  );
  const point = (row: number): Point => [across(elapsed[row]! / unit), down(pressure.values[row]!)];
  const manners = mannerOfRows(cast);
  const lines = (["air", "rest", "up", "down", "all"] as const).flatMap((manner) => {
    const runs = runsOf(manners, manner, sound, point).map((run) => thinned(run, "x"));
    if (runs.length === 0) return [];
    return element("path", {
      class: manner,
      d: pathOf(runs),
      fill: "none",
      "stroke-linejoin": "round",
      "stroke-linecap": "round",
      ...look.lines[manner === "air" ? "rest" : manner],
    });
  });
  const places = (flag: number) =>
    spreadOut(
      [...manners.keys()].filter((row) => pressure.flags[row] === flag && known(row)).map(point),
      8,
    ).filter(([, y]) => y >= at.top && y <= at.bottom);
  return element("g", { class: "pressure-in-time" }, [
    clipOf(clip, at),
    ...axisAcross(ticksOf(across, 46), minutes ? "Time / min" : "Time / s", at),
    ...axisDown(ticksOf(down, 55), "Sea pressure / dbar", [at], 38),
    element("g", { "clip-path": `url(#${clip})` }, [...lines, element("g", {})]),
    ...places(Flag.questionable).map(([x, y]) => questionableMark(x, y)),
    ...places(Flag.bad).map(([x, y]) => badMark(x, y)),
    ...segmentNames(cast, (row) => across(elapsed[row]! / unit), at),
    outline(at),
  ]);
}

/** A line where a segment begins, and its name along it where there is room. */
function segmentNames(cast: Cast, across: (row: number) => number, at: PanelPlace): string[] {
  return cast.segments.flatMap(({ kind, firstRow, lastRow }) => {
    const [from, to] = [across(firstRow), across(Math.min(lastRow + 1, cast.rows - 1))];
    if (!Number.isFinite(from) || !Number.isFinite(to)) return [];
    const border =
      firstRow === 0
        ? []
        : [
            element("path", {
              d: `M${round(from)} ${round(at.top)}V${round(at.bottom)}`,
              fill: "none",
              stroke: look.frame,
              "stroke-dasharray": "2 2",
            }),
          ];
    const name = textElement(
      "text",
      {
        transform: `translate(${round((from + to) / 2 + 3.5)} ${round(at.bottom - 5)}) rotate(-90)`,
        class: "onlines",
      },
      kind,
    );
    return to - from < 11 ? border : [...border, name];
  });
}
