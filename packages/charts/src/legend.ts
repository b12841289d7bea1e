import { look } from "./look.ts";
import { badMark, beyondMark, questionableMark, wayMark } from "./marks.ts";
import type { Panel } from "./panel.ts";
import { element, round, textElement } from "./svg.ts";

interface Entry {
  readonly words: string;
  /** Draws the sample with its left end at x. */
  readonly sample: (x: number, y: number) => string;
}

const SAMPLE = 34;

function lineSample(manner: "down" | "up" | "rest" | "all") {
  return (x: number, y: number) => {
    const stroke = element("path", {
      d: `M${round(x)} ${round(y)}h${SAMPLE}`,
      fill: "none",
      ...look.lines[manner],
    });
    const way =
      manner === "down" || manner === "up"
        ? [wayMark(x + SAMPLE / 2, y, manner, look.lines[manner].stroke)]
        : [];
    return [stroke, ...way].join("\n");
  };
}

/** Samples of what the panels hold, in lines that fit the width. */
export function drawLegend(
  panels: readonly Panel[],
  rowsInAir: number,
  hatch: string,
  at: { readonly left: number; readonly right: number; readonly y: number },
): string {
  const has = (test: (panel: Panel) => boolean) => panels.some(test);
  const middle = SAMPLE / 2;
  const entries: (Entry | null)[] = [
    has((panel) => panel.manners.has("down")) ? { words: "downcast", sample: lineSample("down") } : null,
    has((panel) => panel.manners.has("up")) ? { words: "upcast", sample: lineSample("up") } : null,
    has((panel) => panel.manners.has("all"))
      ? { words: "all rows, directions not told apart", sample: lineSample("all") }
      : null,
    has((panel) => panel.manners.has("rest"))
      ? { words: "soak, bottom and other rows", sample: lineSample("rest") }
      : null,
    has((panel) => panel.questionable > 0)
      ? { words: "questionable", sample: (x, y) => questionableMark(x + middle, y) }
      : null,
    has((panel) => panel.bad > 0) ? { words: "bad", sample: (x, y) => badMark(x + middle, y) } : null,
    has((panel) => panel.beyond > 0)
      ? { words: "flagged, beyond the scale", sample: (x, y) => beyondMark(x + middle + 5, y, "right") }
      : null,
    {
      words:
        rowsInAir > 0
          ? `below the deepest row (${rowsInAir} rows in air not drawn)`
          : "below the deepest row",
      sample: (x, y) =>
        element("rect", {
          x,
          y: y - 6,
          width: SAMPLE,
          height: 12,
          fill: hatch,
          stroke: look.hatch,
          "stroke-width": "0.8",
        }),
    },
  ];
  const out: string[] = [];
  let x = at.left;
  let y = at.y;
  for (const entry of entries) {
    if (!entry) continue;
    const length = SAMPLE + 8 + entry.words.length * 5.9 + 24;
    if (x > at.left && x + length > at.right + 24) [x, y] = [at.left, y + 22];
    out.push(
      entry.sample(x, y),
      textElement("text", { x: x + SAMPLE + 8, y: y + 4, class: "small" }, entry.words),
    );
    x += length;
  }
  return element("g", { class: "legend" }, out);
}
