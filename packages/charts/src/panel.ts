import { type Cast, type Column, Flag } from "@wherry/core";
import { type ScaleLinear, scaleLinear } from "d3-scale";
import { axisAcross, outline, type PanelPlace, ticksOf } from "./axes.ts";
import { isSound, type Manner, type Point, runsOf, spreadOut } from "./cast-rows.ts";
import { extentOf } from "./extent.ts";
import { pathOf } from "./lines.ts";
import { look } from "./look.ts";
import { badMark, beyondMark, questionableMark, wayMark } from "./marks.ts";
import { axisTitle } from "./quantity-words.ts";
import { element, textElement } from "./svg.ts";
import { thinned } from "./thin.ts";

export interface Panel {
  readonly svg: string;
  readonly questionable: number;
  readonly bad: number;
  readonly missing: number;
  readonly beyond: number;
  /** Smallest and largest value drawn; NaN if there is none. */
  readonly smallest: number;
  readonly largest: number;
  readonly manners: ReadonlySet<Manner>;
}

const MANNERS = ["rest", "up", "down", "all"] as const;

/**
 * Good and unjudged values of the profile proper decide the scale; questionable ones widen it by two fifths at most,
 * so that a spike does not flatten the rest. Rows at the surface or on the bottom may run out of the frame.
 */
function valueScale(column: Column, place: Column, manners: readonly Manner[], range: [number, number]) {
  const within = (of: (row: number) => boolean) =>
    extentOf(column.values, (row) => of(row) && isSound(column, place, row));
  const inProfile = (row: number) => manners[row] !== "rest" && manners[row] !== "air";
  const unquestioned = (row: number) => column.flags[row] !== Flag.questionable;
  const choices = [
    within((row) => inProfile(row) && unquestioned(row)),
    within(inProfile),
    within((row) => manners[row] !== "air"),
  ];
  const found = choices.find((choice) => choice !== null);
  const [low, high] = found ?? [0, 1];
  const [lowest, highest] = within(inProfile) ?? [low, high];
  // a quantity that does not change still gets a scale, one in the last places would only show noise
  const span = Math.max(high - low, Math.abs(high) * 1e-6);
  const widen = high - low > Math.abs(high) * 1e-6 ? span * 0.04 : Math.max(Math.abs(high) * 0.01, 0.5);
  const from = Math.max(Math.min(low, lowest), low - 0.4 * span) - widen;
  const to = Math.min(Math.max(high, highest), high + 0.4 * span) + widen;
  const scale = scaleLinear([from, to], range).nice(5);
  return { scale, smallest: found ? low : NaN, largest: found ? high : NaN };
}

/** Arrow heads at a third and two thirds of the longest run of a direction. */
function wayMarks(runs: readonly (readonly Point[])[], way: "down" | "up"): string[] {
  const points = runs.flat();
  const [top, bottom] = extentOf(points.map(([, y]) => y)) ?? [0, 0];
  if (bottom - top < 60) return [];
  const { stroke } = look.lines[way];
  return (way === "down" ? [0.28, 0.72] : [0.42, 0.86]).map((part) => {
    const y = top + (bottom - top) * part;
    const nearest = points.reduce((best, point) =>
      Math.abs(point[1] - y) < Math.abs(best[1] - y) ? point : best,
    );
    return wayMark(nearest[0], nearest[1], way, stroke);
  });
}

function noteUnder(lines: number, counts: readonly string[], misplaced: number, column: Column): string {
  if (lines === 0) return "no value to draw";
  const judged = column.flags.some((flag) => flag !== Flag.notEvaluated && flag !== Flag.missing);
  const words = judged ? counts : [...counts, "values not judged"];
  if (words.length === 0) return "no value flagged or missing";
  return words.join(", ") + (misplaced > 0 ? ` (${misplaced} at no sure depth)` : "");
}

/** One quantity against depth: grid, lines by direction, marks for flagged values. */
export function drawPanel(
  cast: Cast,
  column: Column,
  place: Column,
  manners: readonly Manner[],
  depthScale: ScaleLinear<number, number>,
  at: PanelPlace,
  { clip, note }: { readonly clip: string; readonly note: boolean },
): Panel {
  const { scale, smallest, largest } = valueScale(column, place, manners, [at.left, at.right]);
  const point = (row: number): Point => [scale(column.values[row]!), depthScale(place.values[row]!)];
  const drawn = new Set<Manner>();
  const lines: string[] = [];
  const ways: string[] = [];
  for (const manner of MANNERS) {
    const runs = runsOf(manners, manner, (row) => isSound(column, place, row), point).map((run) =>
      thinned(run, "y"),
    );
    if (runs.length === 0) continue;
    drawn.add(manner);
    lines.push(
      element("path", {
        class: manner,
        d: pathOf(runs),
        fill: "none",
        "stroke-linejoin": "round",
        "stroke-linecap": "round",
        ...look.lines[manner],
      }),
    );
    if (manner === "down" || manner === "up") ways.push(...wayMarks(runs, manner));
  }
  const flagged: Record<"questionable" | "bad", Point[]> = { questionable: [], bad: [] };
  const beyond: { at: Point; side: "left" | "right" }[] = [];
  let [questionable, bad, missing, misplaced] = [0, 0, 0, 0];
  for (let row = 0; row < cast.rows; row++) {
    if (manners[row] === "air") continue;
    const flag = column.flags[row];
    if (!Number.isFinite(column.values[row])) missing++;
    else if (flag === Flag.questionable || flag === Flag.bad) {
      if (flag === Flag.bad) bad++;
      else questionable++;
      if (place.flags[row] === Flag.bad || !Number.isFinite(place.values[row])) {
        misplaced++; // its height in the picture would be wrong
        continue;
      }
      const [x, y] = point(row);
      if (!(y >= at.top && y <= at.bottom)) continue;
      if (x < at.left) beyond.push({ at: [at.left, y], side: "left" });
      else if (x > at.right) beyond.push({ at: [at.right, y], side: "right" });
      else flagged[flag === Flag.bad ? "bad" : "questionable"].push([x, y]);
    }
  }
  const marks = [
    ...spreadOut(flagged.questionable, 8).map(([x, y]) => questionableMark(x, y)),
    ...spreadOut(flagged.bad, 8).map(([x, y]) => badMark(x, y)),
    ...(["left", "right"] as const).flatMap((side) =>
      spreadOut(
        beyond.filter((each) => each.side === side).map((each) => each.at),
        8,
      ).map(([x, y]) => beyondMark(x, y, side)),
    ),
  ];
  const counts = [
    questionable > 0 ? `${questionable} questionable` : "",
    bad > 0 ? `${bad} bad` : "",
    missing > 0 ? `${missing} missing` : "",
  ].filter((words) => words !== "");
  const svg = element("g", { class: "panel", "data-quantity": column.name }, [
    ...axisAcross(lines.length > 0 ? ticksOf(scale, 64) : [], axisTitle(column), at),
    element("g", { "clip-path": `url(#${clip})` }, lines.length > 0 ? lines : [element("g", {})]),
    ...ways,
    ...marks,
    outline(at),
    ...(note
      ? [
          textElement(
            "text",
            { x: (at.left + at.right) / 2, y: at.bottom + 18, "text-anchor": "middle", class: "small" },
            noteUnder(lines.length, counts, misplaced, column),
          ),
        ]
      : []),
  ]);
  return { svg, questionable, bad, missing, beyond: beyond.length, smallest, largest, manners: drawn };
}
