import { type Cast, type Column, formatIsoTime } from "@wherry/core";
import { drawLegend } from "./legend.ts";
import type { Panel } from "./panel.ts";
import { CAUTION, picture, scopeOf } from "./picture.ts";
import { drawProfile } from "./profile-drawing.ts";
import { printedUnits, quantityName } from "./quantity-words.ts";
import { textElement } from "./svg.ts";

export interface PictureOptions {
  /** Heading; the cast's id without it. */
  readonly title?: string;
  /** Names of columns to draw, at most four; those the cast lacks are left out. */
  readonly quantities?: readonly string[];
  /** Size in pixels; at least 480 by 420. */
  readonly width?: number;
  readonly height?: number;
}

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
  const scope = scopeOf("cast", cast.id);
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
  const drawing =
    place && columns.length > 0 ? drawProfile(cast, columns, place, frame, { scope, gap: 38 }) : null;
  const legend = drawing
    ? drawLegend(drawing.panels, drawing.rowsInAir, drawing.hatch, {
        left: 22,
        right: frame.right,
        y: frame.bottom + 46,
      })
    : null;
  const nothing =
    "This cast has no depth or pressure, or none of the quantities asked for: there is no profile to draw.";
  const body =
    drawing && legend
      ? [...drawing.svg, legend]
      : [textElement("text", { x: 22, y: frame.top, class: "axis" }, nothing)];
  const words =
    drawing && place ? description(columns, drawing.panels, place, drawing.deepest) : `${nothing} ${CAUTION}`;
  return picture({ scope, width, height, title: caption, description: words }, [...top, ...body, bottom]);
}
