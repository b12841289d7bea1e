import type { Cast, Column } from "@wherry/core";
import { picture } from "./picture.ts";
import { drawProfile } from "./profile-drawing.ts";
import { axisTitle, quantityName } from "./quantity-words.ts";
import { textElement } from "./svg.ts";
import { drawTimePanel } from "./time-panel.ts";

const [WIDTH, ROW] = [720, 318];
/** Quantities beside each other. */
const ABREAST = 3;

export interface CastPictureOptions {
  /** Begins the ids within the picture; unique in the page that holds several. */
  readonly scope: string;
  /** Columns drawn against depth, three in a row. */
  readonly columns: readonly Column[];
  /** What can be read from it, for those who do not see it. */
  readonly description: string;
}

/**
 * A cast on a page of many: quantities against depth, and pressure against time with the segments. Lines and marks as
 * in {@link profilePicture}; their key, heading and caution are the page's.
 */
export function castPicture(cast: Cast, { scope, columns, description }: CastPictureOptions): string {
  const place = cast.columns.get("depth") ?? cast.columns.get("pressure");
  const rows = Math.max(Math.ceil(columns.length / ABREAST), 1);
  const frameOf = (row: number) => ({
    left: 62,
    right: 508,
    top: row * ROW + 54,
    bottom: (row + 1) * ROW - 10,
  });
  const profiles = Array.from({ length: rows }, (_, row) => {
    const own = columns.slice(ABREAST * row, ABREAST * (row + 1));
    const frame = frameOf(row);
    const part = (own.length - ABREAST) / ABREAST;
    const right = row === 0 ? frame.right : frame.right + part * (frame.right - frame.left + 22);
    return place && own.length > 0
      ? drawProfile(
          cast,
          own,
          place,
          { ...frame, right },
          { scope: `${scope}-${row + 1}`, gap: 22, notes: false },
        ).svg
      : [textElement("text", { x: 62, y: frame.top, class: "small" }, "No depth, or no quantity to draw.")];
  });
  const frame = frameOf(0);
  const time =
    drawTimePanel(cast, { ...frame, left: 574, right: WIDTH - 8 }, `${scope}-time`) ??
    textElement("text", { x: 574, y: frame.top + 14, class: "small" }, "Rows have no times.");
  const names = columns.map(quantityName).join(", ");
  return picture(
    {
      ...{ scope, width: WIDTH, height: rows * ROW, description },
      title: `Cast ${cast.id}: ${names || "no quantity"} against ${place ? axisTitle(place) : "depth"}, sea pressure against time`,
    },
    [...profiles.flat(), time],
  );
}
