import { type Cast, type Column, Flag, formatIsoTime } from "@wherry/core";
import { scaleLinear } from "d3-scale";
import { type Manner, mannerOfRows } from "./cast-rows.ts";
import { extentOf } from "./extent.ts";
import { drawLegend } from "./legend.ts";
import { look } from "./look.ts";
import { drawPanel, type Panel, type PanelPlace } from "./panel.ts";
import { axisTitle, printedUnits, quantityName } from "./quantity-words.ts";
import { element, round, textElement } from "./svg.ts";

export interface PictureOptions {
  /** Heading; the cast's id without it. */
  readonly title?: string;
  /** Names of columns to draw, at most four; those the cast lacks are left out. */
  readonly quantities?: readonly string[];
  /** Size in pixels; at least 480 by 420. */
  readonly width?: number;
  readonly height?: number;
}

const CAUTION = "Not for navigation or diving decisions: the local authority and licensed practice decide.";

/** Temperature, salinity, and density or else sound speed. */
function chosenColumns(cast: Cast, names: readonly string[] | undefined): Column[] {
  const third = cast.columns.has("density") ? "density" : "sound_speed";
  const columns = (names ?? ["temperature", "salinity", third])
    .slice(0, 4)
    .map((name) => cast.columns.get(name));
  return columns.filter((column) => column !== undefined);
}

function whenAndWhere(cast: Cast): string {
  const role = { start: "start", bottom: "at the bottom", end: "end", unknown: "of what is not told" }[
    cast.timeRole
  ];
  const time = Number.isFinite(cast.time)
    ? `${formatIsoTime(cast.time, 0).replace("T", " ").replace("Z", " UTC")} (${role})`
    : "time not known";
  const fix = cast.start ?? cast.end;
  const degrees = (value: number, signs: string) =>
    `${Math.abs(value).toFixed(4)}° ${value < 0 ? signs[1] : signs[0]}`;
  const where = fix
    ? `${degrees(fix.latitude, "NS")}, ${degrees(fix.longitude, "EW")}`
    : "position not known";
  return `${time}  ·  ${where}  ·  ${cast.rows} rows`;
}

/** A range in words, to as many places as tell its ends apart. */
function rangeWords(column: Column, { smallest, largest }: Panel): string {
  if (Number.isNaN(smallest)) return `${quantityName(column)}: no values`;
  const places = Math.min(Math.max(2 - Math.floor(Math.log10(largest - smallest || 1)), 0), 4);
  const units = printedUnits(column.units);
  return `${quantityName(column)} from ${smallest.toFixed(places)} to ${largest.toFixed(places)}${units && ` ${units}`}`;
}

function description(
  columns: readonly Column[],
  panels: readonly Panel[],
  place: Column,
  deepest: number,
): string {
  const manners = new Set(panels.flatMap((panel) => [...panel.manners]));
  const ways = [
    manners.has("down") ? "the downcast is a solid line" : "",
    manners.has("up") ? "the upcast a dashed line" : "",
    manners.has("rest") ? "rows before, between and after them dotted" : "",
  ].filter((words) => words !== "");
  const sum = (of: (panel: Panel) => number) => panels.reduce((total, panel) => total + of(panel), 0);
  const reach = Number.isFinite(deepest)
    ? `${quantityName(place)} down to ${deepest.toFixed(1)} ${printedUnits(place.units)}`
    : "";
  const sentences = [
    ...columns.map((column, i) => rangeWords(column, panels[i]!)),
    reach,
    ways.join(", "),
    `${sum((panel) => panel.questionable)} values questionable, ${sum((panel) => panel.bad)} bad, ${sum((panel) => panel.missing)} missing`,
    CAUTION.replace(/\.$/, ""),
  ];
  return `${sentences
    .filter((words) => words !== "")
    .map((words) => words[0]!.toUpperCase() + words.slice(1))
    .join(". ")}.`;
}

const style = (scope: string) => `#${scope} text{font-family:${look.font};fill:${look.ink}}
#${scope} .heading{font-size:20px;font-weight:600}
#${scope} .axis{font-size:13.5px;font-weight:600}
#${scope} .tick{font-size:12px;fill:${look.quiet}}
#${scope} .small{font-size:12px;fill:${look.quiet}}
#${scope} .caution{font-size:12px;font-style:italic;fill:${look.ink}}`;

/**
 * Picture of a cast: quantities side by side against one axis of depth (of sea pressure where the cast has no depth).
 *
 * Downcast solid, upcast dashed, other rows dotted, rows in air left out; a line breaks where a value is missing or
 * bad. Questionable values carry an open diamond, bad ones a cross; one that lies beyond the scale an arrow at the
 * side. Numbers are rounded to a tenth of a pixel, so the same cast gives the same text.
 *
 * @returns a stand-alone SVG document without an XML declaration, with title and description for screen readers
 */
export function profilePicture(cast: Cast, options: PictureOptions = {}): string {
  const width = Math.max(options.width ?? 900, 480);
  const height = Math.max(options.height ?? 740, 420);
  const scope = `cast-${cast.id.replace(/[^A-Za-z0-9_-]/g, "_")}`;
  const place = cast.columns.get("depth") ?? cast.columns.get("pressure");
  const columns = chosenColumns(cast, options.quantities);
  const names = columns.map((column) =>
    quantityName(column).toLowerCase().replace("practical salinity", "Practical Salinity"),
  );
  const heading = options.title ?? `Cast ${cast.id}`;
  const caption = `${heading}: ${names.join(", ") || "no quantity"} against ${place ? quantityName(place).toLowerCase() : "depth"}`;

  const frame = { left: 78, right: width - 26, top: 128, bottom: height - 122 };
  const top = [
    textElement("text", { x: 22, y: 34, class: "heading" }, heading),
    textElement("text", { x: 22, y: 56, class: "small" }, whenAndWhere(cast)),
  ];
  const bottom = textElement("text", { x: 22, y: height - 18, class: "caution" }, CAUTION);
  const drawing = place && columns.length > 0 ? drawProfile(cast, columns, place, frame, scope) : null;
  const nothing =
    "This cast has no depth or pressure, or none of the quantities asked for: there is no profile to draw.";
  const body = drawing?.svg ?? [textElement("text", { x: 22, y: frame.top, class: "axis" }, nothing)];
  const words =
    drawing && place ? description(columns, drawing.panels, place, drawing.deepest) : `${nothing} ${CAUTION}`;
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      id: scope,
      width,
      height,
      viewBox: `0 0 ${round(width)} ${round(height)}`,
      role: "img",
      "aria-labelledby": `${scope}-title ${scope}-desc`,
    },
    [
      textElement("title", { id: `${scope}-title` }, caption),
      textElement("desc", { id: `${scope}-desc` }, words),
      `<style>${style(scope)}</style>`,
      element("rect", { width, height, fill: look.paper }),
      ...top,
      ...body,
      bottom,
    ],
  ).concat("\n");
}

function drawProfile(
  cast: Cast,
  columns: readonly Column[],
  place: Column,
  frame: PanelPlace,
  scope: string,
) {
  const manners = mannerOfRows(cast);
  const placed = (row: number) => manners[row] !== "air" && place.flags[row] !== Flag.bad;
  const [shallowest, deepest] = extentOf(place.values.filter((_, row) => placed(row))) ?? [0, NaN];
  const reach = Number.isFinite(deepest) && deepest > 0 ? deepest : 1;
  const depthScale = scaleLinear([Math.min(0, shallowest), reach * 1.06], [frame.top, frame.bottom]);
  const gap = 38;
  const each = (frame.right - frame.left - gap * (columns.length - 1)) / columns.length;
  const places = columns.map((_, i) => {
    const left = frame.left + i * (each + gap);
    return { ...frame, left, right: left + each };
  });
  const clips = places.map((at, i) =>
    element("clipPath", { id: `${scope}-panel-${i + 1}` }, [
      element("rect", { x: at.left, y: at.top, width: at.right - at.left, height: at.bottom - at.top }),
    ]),
  );
  const hatch = element(
    "pattern",
    {
      id: `${scope}-hatch`,
      width: 7,
      height: 7,
      patternUnits: "userSpaceOnUse",
      patternTransform: "rotate(45)",
    },
    [element("path", { d: "M0 0V7", stroke: look.hatch, "stroke-width": "1.6" })],
  );
  const ticks = depthScale.ticks(Math.max(2, Math.floor((frame.bottom - frame.top) / 55)));
  const printDepth = depthScale.tickFormat(ticks.length, "f");
  const grid = ticks.flatMap((tick) => [
    ...places.map((at) =>
      element("path", {
        d: `M${round(at.left)} ${round(depthScale(tick))}H${round(at.right)}`,
        stroke: look.grid,
        fill: "none",
      }),
    ),
    textElement(
      "text",
      { x: frame.left - 9, y: depthScale(tick) + 4.2, "text-anchor": "end", class: "tick" },
      printDepth(tick),
    ),
  ]);
  const end = depthScale(reach);
  const below = places.map((at) =>
    element("rect", {
      class: "not-sampled",
      x: at.left,
      y: end,
      width: at.right - at.left,
      height: frame.bottom - end,
      fill: `url(#${scope}-hatch)`,
    }),
  );
  const panels = columns.map((column, i) =>
    drawPanel(cast, column, place, manners, depthScale, places[i]!, `${scope}-panel-${i + 1}`),
  );
  const inAir = manners.filter((manner): manner is Manner => manner === "air").length;
  return {
    panels,
    deepest,
    svg: [
      element("defs", {}, [...clips, hatch]),
      ...(Number.isFinite(deepest) ? below : []),
      ...grid,
      textElement(
        "text",
        {
          transform: `translate(32 ${round((frame.top + frame.bottom) / 2)}) rotate(-90)`,
          "text-anchor": "middle",
          class: "axis",
        },
        axisTitle(place),
      ),
      ...panels.map((panel) => panel.svg),
      drawLegend(panels, inAir, `url(#${scope}-hatch)`, {
        left: 22,
        right: frame.right,
        y: frame.bottom + 46,
      }),
    ],
  };
}
