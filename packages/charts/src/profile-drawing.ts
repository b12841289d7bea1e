import { type Cast, type Column, Flag } from "@wherry/core";
import { scaleLinear } from "d3-scale";
import { axisDown, clipOf, type PanelPlace, sideBySide, ticksOf } from "./axes.ts";
import { mannerOfRows } from "./cast-rows.ts";
import { extentOf } from "./extent.ts";
import { look } from "./look.ts";
import { drawPanel, type Panel } from "./panel.ts";
import { axisTitle } from "./quantity-words.ts";
import { element } from "./svg.ts";

export interface ProfileDrawing {
  readonly svg: readonly string[];
  readonly panels: readonly Panel[];
  /** Deepest place drawn; NaN if there is none. */
  readonly deepest: number;
  readonly rowsInAir: number;
  /** Fill that marks what lies below the deepest row. */
  readonly hatch: string;
}

/** Quantities of a cast side by side against one axis of depth. */
export function drawProfile(
  cast: Cast,
  columns: readonly Column[],
  place: Column,
  frame: PanelPlace,
  { scope, gap, notes = true }: { readonly scope: string; readonly gap: number; readonly notes?: boolean },
): ProfileDrawing {
  const manners = mannerOfRows(cast);
  const placed = (row: number) => manners[row] !== "air" && place.flags[row] !== Flag.bad;
  const [shallowest, deepest] = extentOf(place.values, placed) ?? [0, NaN];
  const reach = Number.isFinite(deepest) && deepest > 0 ? deepest : 1;
  const depthScale = scaleLinear([Math.min(0, shallowest), reach * 1.06], [frame.top, frame.bottom]);
  const places = sideBySide(columns.length, frame, gap);
  const clips = places.map((at, i) => clipOf(`${scope}-panel-${i + 1}`, at));
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
  const grid = axisDown(ticksOf(depthScale, 55), axisTitle(place), places);
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
    drawPanel(cast, column, place, manners, depthScale, places[i]!, {
      clip: `${scope}-panel-${i + 1}`,
      note: notes,
    }),
  );
  return {
    panels,
    deepest,
    rowsInAir: manners.filter((manner) => manner === "air").length,
    hatch: `url(#${scope}-hatch)`,
    svg: [
      element("defs", {}, [...clips, hatch]),
      ...(Number.isFinite(deepest) ? below : []),
      ...grid,
      ...panels.map((panel) => panel.svg),
    ],
  };
}
