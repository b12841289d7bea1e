import type { PanelPlace } from "./axes.ts";
import type { Point } from "./cast-rows.ts";
import { element, textElement } from "./svg.ts";

interface Mark {
  readonly at: Point;
  readonly label: string;
}

export interface Labels {
  readonly svg: string;
  /** Marks that there was no room to name. */
  readonly unnamed: number;
}

/** Room a letter takes, pixels, at the size of small words. */
const LETTER = 6.6;
const NEAR = 11;

type Box = readonly [left: number, top: number, right: number, bottom: number];

/**
 * Names beside marks where they cover neither marks nor each other; marks that lie together share one.
 *
 * @param others points besides the marks that names keep off
 */
export function drawLabels(marks: readonly Mark[], frame: PanelPlace, others: readonly Point[] = []): Labels {
  const groups: { at: Point; labels: string[] }[] = [];
  for (const { at, label } of marks) {
    const group = groups.find((each) => Math.hypot(each.at[0] - at[0], each.at[1] - at[1]) < NEAR);
    if (group) group.labels.push(label);
    else groups.push({ at, labels: [label] });
  }
  const taken: Box[] = [
    ...marks.map(({ at: [x, y] }): Box => [x - 5, y - 5, x + 5, y + 5]),
    ...others.map(([x, y]): Box => [x - 1, y - 1, x + 1, y + 1]),
  ];
  const out: string[] = [];
  let unnamed = 0;
  for (const {
    at: [x, y],
    labels,
  } of groups) {
    const words =
      labels.length <= 4
        ? labels.join(", ")
        : `${labels.slice(0, 3).join(", ")} and ${labels.length - 3} more`;
    const wide = words.length * LETTER;
    const places: [number, number, "start" | "middle" | "end"][] = [
      [x + 8, y + 4, "start"],
      [x - 8, y + 4, "end"],
      [x, y - 9, "middle"],
      [x, y + 17, "middle"],
      [x + 7, y - 7, "start"],
      [x - 7, y - 7, "end"],
      [x + 7, y + 15, "start"],
      [x - 7, y + 15, "end"],
    ];
    const boxOf = ([left, base, anchor]: (typeof places)[number]): Box => {
      const start = anchor === "start" ? left : anchor === "end" ? left - wide : left - wide / 2;
      return [start, base - 10, start + wide, base + 2];
    };
    const free = places.find((place) => {
      const box = boxOf(place);
      const inFrame =
        box[0] > frame.left && box[2] < frame.right && box[1] > frame.top && box[3] < frame.bottom;
      return inFrame && taken.every((other) => apart(box, other));
    });
    if (!free) {
      unnamed += labels.length;
      continue;
    }
    taken.push(boxOf(free));
    out.push(
      textElement("text", { x: free[0], y: free[1], "text-anchor": free[2], class: "onlines" }, words),
    );
  }
  return { svg: element("g", { class: "labels" }, out), unnamed };
}

const apart = (a: Box, b: Box) => a[2] < b[0] || b[2] < a[0] || a[3] < b[1] || b[3] < a[1];
