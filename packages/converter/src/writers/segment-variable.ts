import type { Cast, SegmentKind } from "@wherry/core";
import { type MemoryVariable, numberAttribute } from "@wherry/netcdf";
import type { RowPlaces } from "./column-groups.ts";
import { attributes, BYTE_FILL } from "./storage.ts";

const CODES: readonly SegmentKind[] = ["air", "soak", "down", "bottom", "up", "other", "stay"];

/** Parts of the casts, row by row; null if no cast has been divided into segments. */
export function segmentVariable(
  casts: readonly Cast[],
  places: RowPlaces,
  dimension: string,
  coordinates: string | null,
): MemoryVariable | null {
  if (casts.every((cast) => cast.segments.length === 0)) return null;
  const data = new Int8Array(places.total).fill(BYTE_FILL);
  for (const [index, cast] of casts.entries())
    for (const { kind, firstRow, lastRow } of cast.segments)
      data.fill(
        CODES.indexOf(kind) + 1,
        places.offsets[index]! + firstRow,
        places.offsets[index]! + lastRow + 1,
      );
  const isSeries = casts.some(
    (cast) => cast.kind === "fixed-depth" || cast.segments.some(({ kind }) => kind === "stay"),
  );
  const kinds = isSeries ? CODES : CODES.slice(0, -1);
  return {
    name: "segment",
    type: "byte",
    dimensions: [dimension],
    data,
    attributes: attributes(
      [
        "long_name",
        isSeries ? "part of the record; stay is the time at the fixed depth" : "part of the cast",
      ],
      numberAttribute("_FillValue", "byte", BYTE_FILL),
      numberAttribute(
        "flag_values",
        "byte",
        kinds.map((_, index) => index + 1),
      ),
      ["flag_meanings", kinds.join(" ")],
      ["coverage_content_type", "thematicClassification"],
      ["coordinates", coordinates],
    ),
  };
}
