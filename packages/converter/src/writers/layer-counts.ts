import type { Cast, LayerMeans } from "@wherry/core";
import type { MemoryVariable } from "@wherry/netcdf";
import type { LayerWords } from "./layer-words.ts";
import { wholeNumbers } from "./storage.ts";

/** Per cast, how many rows of its direction are in no layer and how many did not enter a mean. */
export function layerCounts(
  casts: readonly Cast[],
  layers: readonly (LayerMeans | null)[],
  words: LayerWords,
): MemoryVariable[] {
  if (words.width === null) return [];
  const cast = words.direction === "down" ? "downcast" : "upcast";
  const above = layers.map((own) => own?.rowsAboveLayers ?? Number.NaN);
  const named = ["salinity", "temperature"].find((name) => layers.some((own) => own?.columns.has(name)));
  const variables = [
    wholeNumbers("rows_above_layers", "int", ["profile"], above, {
      longName: `number of ${cast} rows above the first layer, left out`,
      content: "auxiliaryInformation",
    }),
  ];
  if (named === undefined) return variables;
  const leftOut = layers.map((own, index) => {
    const kept = casts[index]!.finished?.rowsFlagged;
    if (kept != null) return kept;
    const counts = own?.columns.get(named)?.count;
    if (!own || !counts) return Number.NaN;
    const used = counts.reduce((sum, count) => sum + count, 0);
    return Math.max(0, rowsInDirection(casts[index]!, words.direction) - own.rowsAboveLayers - used);
  });
  return [
    ...variables,
    wholeNumbers("rows_flagged", "int", ["profile"], leftOut, {
      longName: `number of ${cast} rows in the layers with a value left out of the mean of ${named}`,
      content: "auxiliaryInformation",
    }),
  ];
}

/** Rows of the segments of a direction; all rows where there are no segments. */
function rowsInDirection(cast: Cast, direction: "down" | "up"): number {
  if (cast.segments.length === 0) return cast.rows;
  return cast.segments
    .filter(({ kind }) => kind === direction)
    .reduce((sum, { firstRow, lastRow }) => sum + lastRow - firstRow + 1, 0);
}
