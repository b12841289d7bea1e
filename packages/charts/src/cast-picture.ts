import type { Cast, Column } from "@wherry/core";
import { picture } from "./picture.ts";
import { drawProfile } from "./profile-drawing.ts";
import { axisTitle, quantityName } from "./quantity-words.ts";
import { textElement } from "./svg.ts";
import { drawTimePanel } from "./time-panel.ts";

const [WIDTH, HEIGHT] = [720, 318];

export interface CastPictureOptions {
  /** Begins the ids within the picture; unique in the page that holds several. */
  readonly scope: string;
  /** Columns drawn against depth, at most three. */
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
  const frame = { left: 62, right: 508, top: 54, bottom: HEIGHT - 10 };
  const profile =
    place && columns.length > 0
      ? drawProfile(cast, columns, place, frame, { scope, gap: 22, notes: false }).svg
      : [
          textElement(
            "text",
            { x: frame.left, y: frame.top, class: "small" },
            "No depth, or no quantity to draw.",
          ),
        ];
  const time =
    drawTimePanel(cast, { ...frame, left: 574, right: WIDTH - 8 }, `${scope}-time`) ??
    textElement("text", { x: 574, y: frame.top + 14, class: "small" }, "Rows have no times.");
  const names = columns.map(quantityName).join(", ");
  return picture(
    {
      ...{ scope, width: WIDTH, height: HEIGHT, description },
      title: `Cast ${cast.id}: ${names || "no quantity"} against ${place ? axisTitle(place) : "depth"}, sea pressure against time`,
    },
    [...profile, time],
  );
}
