import { look } from "./look.ts";
import { element, round } from "./svg.ts";

/** An open diamond: questionable. */
export const questionableMark = (x: number, y: number): string =>
  element("path", {
    class: "questionable",
    d: `M${round(x)} ${round(y - 4.6)}l4.6 4.6l-4.6 4.6l-4.6 -4.6z`,
    fill: look.paper,
    stroke: look.ink,
    "stroke-width": "1.2",
  });

/** A cross: bad. */
export const badMark = (x: number, y: number): string =>
  element("path", {
    class: "bad",
    d: `M${round(x - 4)} ${round(y - 4)}l8 8m0 -8l-8 8`,
    fill: "none",
    stroke: look.ink,
    "stroke-width": "1.9",
  });

/** A bar and a head at the side of a panel: a flagged value lies beyond it. */
export function beyondMark(x: number, y: number, side: "left" | "right"): string {
  const s = side === "left" ? -1 : 1;
  return element("path", {
    class: `beyond ${side}`,
    d: `M${round(x - 11 * s)} ${round(y)}h${round(10 * s)}m${round(-4 * s)} -3.6l${round(4 * s)} 3.6l${round(-4 * s)} 3.6`,
    fill: "none",
    stroke: look.ink,
    "stroke-width": "1.5",
  });
}

/** A small arrow head on a line: the way the instrument went. */
export const wayMark = (x: number, y: number, way: "down" | "up", stroke: string): string =>
  element("path", {
    class: `way ${way}`,
    d:
      way === "down"
        ? `M${round(x - 4.5)} ${round(y - 4)}l4.5 5.5l4.5 -5.5`
        : `M${round(x - 4.5)} ${round(y + 4)}l4.5 -5.5l4.5 5.5`,
    fill: "none",
    stroke,
    "stroke-width": "1.8",
  });
