import { Flag } from "../quality/flag.ts";
import { keptOut } from "../quality/inherited-flags.ts";
import type { Cast } from "./cast.ts";
import { valuesOf } from "./change.ts";
import { median } from "./robust.ts";

/** What layers are counted in, and which way of the cast is averaged. */
export interface LayerChoice {
  readonly coordinate: "depth" | "pressure";
  readonly direction: "down" | "up";
}

const widths = [0.25, 0.5, 1, 2] as const;
const fewestRows = 3;
/** A finer division than this is a mistake in the data or the width. */
export const mostLayers = 100_000;

/**
 * Rows of a direction whose place is known, whose pressure is not questionable and whose sensors had settled, in
 * the order of the record.
 */
export function placedRows(cast: Cast, { coordinate, direction }: LayerChoice): Int32Array {
  const place = valuesOf(cast, coordinate);
  const judge = cast.columns.get("pressure") ?? cast.columns.get(coordinate);
  if (place === null || judge === undefined) return new Int32Array();
  const out = keptOut(judge).slice();
  for (const name of ["temperature", "conductivity"]) {
    const unsettled = cast.columns.get(name)?.tests.get("unsettled");
    if (unsettled !== undefined)
      for (let k = 0; k < out.length; k++) if (unsettled[k] === Flag.questionable) out[k] = 1;
  }
  const rows = new Int32Array(cast.rows);
  let count = 0;
  for (const { kind, firstRow, lastRow } of cast.segments)
    if (kind === direction)
      for (let k = firstRow; k <= lastRow; k++)
        if (out[k] === 0 && !Number.isNaN(place[k]!)) rows[count++] = k;
  return rows.slice(0, count);
}

/**
 * Width of layers that suits all of the casts given: the smallest of 0.25, 0.5, 1 and 2 (m or dbar) that gives a
 * median of at least 3 rows a layer and is not finer than the median spacing of the casts' own rows; 2, or the
 * own spacing if that is wider, if none does.
 *
 * @source house
 */
export function layerWidthFor(casts: readonly Cast[], choice: LayerChoice): number {
  const places = casts.flatMap((cast) => {
    const values = valuesOf(cast, choice.coordinate);
    const rows = placedRows(cast, choice);
    if (values === null || rows.length === 0) return [];
    const place = new Float64Array(rows.length);
    for (let r = 0; r < place.length; r++) place[r] = values[rows[r]!]!;
    return [place];
  });
  const spacings = new Float64Array(places.reduce((sum, place) => sum + place.length - 1, 0));
  let s = 0;
  for (const place of places)
    for (let k = 1; k < place.length; k++) spacings[s++] = Math.abs(place[k]! - place[k - 1]!);
  const spacing = median(spacings);
  // a spacing of 0.9999 m is one metre
  const own = Number.isNaN(spacing) ? 0 : Math.round(spacing * 100) / 100;
  for (const width of widths) {
    if (width < own) continue;
    const counts = places.flatMap((place) => rowsInLayers(place, width));
    if (median(Float64Array.from(counts)) >= fewestRows) return width;
  }
  return Math.max(2, own);
}

/** Rows in each layer that holds any. */
function rowsInLayers(place: Float64Array, width: number): number[] {
  let largest = 0;
  for (let k = 0; k < place.length; k++) if (place[k]! > largest) largest = place[k]!;
  const deepest = Math.min(mostLayers, Math.floor(largest / width + 0.5));
  const counts = new Int32Array(deepest + 1);
  for (let k = 0; k < place.length; k++) {
    const layer = Math.floor(place[k]! / width + 0.5);
    if (layer >= 1 && layer <= deepest) counts[layer]! += 1;
  }
  const filled: number[] = [];
  for (let layer = 1; layer <= deepest; layer++) if (counts[layer]! > 0) filled.push(counts[layer]!);
  return filled;
}
