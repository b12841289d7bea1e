import { type ScaleLinear, scaleLinear } from "d3-scale";
import { axisDown, type PanelPlace, type Tick, ticksOf } from "./axes.ts";
import { look } from "./look.ts";
import { element, round } from "./svg.ts";

export interface DepthAxis {
  readonly down: ScaleLinear<number, number>;
  /** Below it the axis is compressed; null if it is not. */
  readonly brokenAt: number | null;
}

/** Part of the height that the upper water gets on a broken axis. */
const UPPER = 0.62;

/**
 * An axis of depth for casts of different depths. Where one reaches more than three times as deep as three quarters of
 * them, what lies below is compressed, so that the shallow ones can be read.
 *
 * @param deepest of every cast
 */
export function depthAxis(deepest: readonly number[], { top, bottom }: PanelPlace): DepthAxis {
  const sorted = deepest.filter((depth) => Number.isFinite(depth)).sort((a, b) => a - b);
  const most = Math.max(sorted.at(-1) ?? 1, 0.1);
  const [, usual = 0] = scaleLinear([0, sorted[Math.ceil(0.75 * sorted.length) - 1] ?? 0], [0, 1])
    .nice(5)
    .domain();
  if (usual === 0 || most <= 3 * usual)
    return { down: scaleLinear([0, most * 1.05], [top, bottom]), brokenAt: null };
  const knee = top + UPPER * (bottom - top);
  return { down: scaleLinear([0, usual, most * 1.05], [top, knee, bottom]), brokenAt: usual };
}

/** Whether {@link depthAxis} compresses what lies deep, and from where. */
export const brokenAxisAt = (deepest: readonly number[]): number | null =>
  depthAxis(deepest, { left: 0, right: 1, top: 0, bottom: 1 }).brokenAt;

/** Numbers and lines of the axis; where it is compressed, a heavier line. */
export function drawDepthAxis(
  { down, brokenAt }: DepthAxis,
  title: string,
  places: readonly PanelPlace[],
): string[] {
  if (brokenAt === null) return axisDown(ticksOf(down, 50), title, places);
  const [top, knee, bottom] = down.range() as [number, number, number];
  const most = down.domain().at(-1)!;
  const lower = ticksOf(scaleLinear([brokenAt, most], [knee, bottom]), 50).filter(({ at }) => at > knee + 14);
  const ticks: readonly Tick[] = [...ticksOf(scaleLinear([0, brokenAt], [top, knee]), 50), ...lower];
  return [
    ...axisDown(ticks, title, places),
    ...places.map(({ left, right }) =>
      element("path", {
        class: "broken",
        d: `M${round(left)} ${round(knee)}H${round(right)}M${round(left - 5)} ${round(knee + 3)}l10 -6`,
        ...{ fill: "none", stroke: look.frame, "stroke-width": "1.4" },
      }),
    ),
  ];
}
