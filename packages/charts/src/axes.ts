import type { ScaleLinear } from "d3-scale";
import { look } from "./look.ts";
import { element, round, textElement } from "./svg.ts";

/** Where a panel lies in the picture, in pixels. */
export interface PanelPlace {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Tick {
  /** Pixels. */
  readonly at: number;
  readonly words: string;
}

/** Ticks of a scale, with one printed at least every so many pixels. */
export function ticksOf(scale: ScaleLinear<number, number>, apart: number): readonly Tick[] {
  const [from = 0, to = 0] = scale.range();
  const count = Math.max(2, Math.floor(Math.abs(to - from) / apart));
  const print = scale.tickFormat(count, "f");
  return scale.ticks(count).map((tick) => ({ at: scale(tick), words: print(tick) }));
}

/** Room that a letter of a number takes, pixels. */
const LETTER = 6.7;
/** So near to an edge a number is moved to stay within the panel. */
const EDGE = 12;

/** Ticks whose numbers would run into each other keep their lines, and every second, third … its number. */
function withRoom(ticks: readonly Tick[], { left, right }: PanelPlace): readonly Tick[] {
  if (ticks.length < 2) return ticks;
  const wide = LETTER * Math.max(...ticks.map(({ words }) => words.length)) + 6;
  const moved = ticks.some(({ at }) => at < left + EDGE || at > right - EDGE);
  const every = Math.ceil(((moved ? 1.5 : 1) * wide) / Math.abs(ticks[1]!.at - ticks[0]!.at));
  return ticks.map(({ at, words }, k) => ({ at, words: k % every === 0 ? words : "" }));
}

const line = (d: string, stroke: string) => element("path", { d, stroke, fill: "none" });

/** Lines down the panel; their numbers and the title above or below it. */
export function axisAcross(
  ticks: readonly Tick[],
  title: string,
  place: PanelPlace,
  side: "above" | "below" = "above",
): string[] {
  const { left, right, top, bottom } = place;
  const [edge, out] = side === "above" ? [top, -1] : [bottom, 1];
  const words =
    side === "above" ? { tick: top - 9, title: top - 29 } : { tick: bottom + 18, title: bottom + 37 };
  // numbers at the corners stay within the panel, where the next one's begin
  const anchorAt = (at: number) => (at < left + EDGE ? "start" : at > right - EDGE ? "end" : "middle");
  return [
    ...withRoom(ticks, place).flatMap(({ at, words: text }) => [
      line(`M${round(at)} ${round(top)}V${round(bottom)}`, look.grid),
      line(`M${round(at)} ${round(edge + 5 * out)}V${round(edge)}`, look.frame),
      ...(text === ""
        ? []
        : [textElement("text", { x: at, y: words.tick, "text-anchor": anchorAt(at), class: "tick" }, text)]),
    ]),
    textElement(
      "text",
      { x: (left + right) / 2, y: words.title, "text-anchor": "middle", class: "axis" },
      title,
    ),
  ];
}

/** Lines across the panels; their numbers and the title at the left of the first. */
export function axisDown(
  ticks: readonly Tick[],
  title: string,
  places: readonly PanelPlace[],
  titleAway = 46,
): string[] {
  const [{ left, top, bottom }] = places as readonly [PanelPlace, ...PanelPlace[]];
  const middle = (top + bottom) / 2;
  return [
    ...ticks.flatMap(({ at, words }) => [
      ...places.map((place) => line(`M${round(place.left)} ${round(at)}H${round(place.right)}`, look.grid)),
      textElement("text", { x: left - 9, y: at + 4.2, "text-anchor": "end", class: "tick" }, words),
    ]),
    textElement(
      "text",
      {
        transform: `translate(${round(left - titleAway)} ${round(middle)}) rotate(-90)`,
        "text-anchor": "middle",
        class: "axis",
      },
      title,
    ),
  ];
}

export const outline = ({ left, right, top, bottom }: PanelPlace): string =>
  element("path", {
    d: `M${round(left)} ${round(top)}H${round(right)}V${round(bottom)}H${round(left)}Z`,
    fill: "none",
    stroke: look.frame,
    "stroke-width": "1",
  });

/** What is drawn within it ends at the panel's edge. */
export const clipOf = (id: string, { left, right, top, bottom }: PanelPlace): string =>
  element("clipPath", { id }, [
    element("rect", { x: left, y: top, width: right - left, height: bottom - top }),
  ]);

/** Panels of one height side by side. */
export function sideBySide(count: number, frame: PanelPlace, gap: number): readonly PanelPlace[] {
  const each = (frame.right - frame.left - gap * (count - 1)) / count;
  return Array.from({ length: count }, (_, i) => {
    const left = frame.left + i * (each + gap);
    return { ...frame, left, right: left + each };
  });
}
