import type { Cast, StepRecord } from "./cast.ts";
import { valuesOf } from "./change.ts";
import { type LayerChoice, layerWidthFor, mostLayers, placedRows } from "./layer-width.ts";
import { averaged, type MeanColumn, meansOf } from "./mean-column.ts";
import { median } from "./robust.ts";

export interface LayerOptions extends LayerChoice {
  /** m or dbar; null: found from the cast (`layerWidthFor`), or its own levels where it came averaged. */
  readonly width: number | null;
  /** Why the upcast is averaged, in words; told with the layers. */
  readonly reason?: string | null;
}

export interface LayerMeans {
  /** m or dbar; for a cast's own levels their median spacing. */
  readonly width: number;
  readonly coordinate: "depth" | "pressure";
  readonly direction: "down" | "up";
  /** Every row of a cast that came averaged is a layer of its own. */
  readonly ownLevels: boolean;
  /** m or dbar, increasing. */
  readonly centres: Float64Array;
  /** Upper and lower edge of each layer, one pair after the other. */
  readonly bounds: Float64Array;
  readonly columns: ReadonlyMap<string, MeanColumn>;
  /** Rows shallower than half a width, left out. */
  readonly rowsAboveLayers: number;
  readonly step: StepRecord;
}

/**
 * Layer means of one direction of a cast.
 *
 * Centres are multiples of the width; layer c holds rows from c - width/2 (included) to c + width/2. Each quantity
 * averages the rows whose own flag and whose pressure's flag are 1 or 2 (a 3 from rated pressure or from an
 * inversion between layers is no obstacle). Computed quantities are means of the row values. Flags: 9 if no row
 * was left, 3 if at least half of the rows carry a 3 from those tests, else 1 if at least half are 1, else 2.
 * Layers run from the first to the last that holds a row; empty ones between stay missing.
 *
 * @throws RangeError for a width that is not positive
 * @source house
 */
export function layerMeans(cast: Cast, options: LayerOptions): LayerMeans {
  const { coordinate, direction } = options;
  if (options.width !== null && !(options.width > 0 && Number.isFinite(options.width)))
    throw new RangeError(`layer width must be positive, got ${options.width}`);
  const place = valuesOf(cast, coordinate) ?? new Float64Array(cast.rows).fill(Number.NaN);
  const rows = placedRows(cast, options);
  const ownLevels = options.width === null && cast.state.processing === "averaged";
  const layers = ownLevels
    ? levelsOf(place, rows)
    : layersOf(place, rows, options.width ?? layerWidthFor([cast], options));
  const columns = new Map<string, MeanColumn>();
  for (const [name, column] of cast.columns)
    columns.set(name, averaged(column, rows, layers.layerOf, layers.centres.length));
  const used = rows.length - layers.above - layers.beyond;
  const unit = coordinate === "depth" ? "m" : "dbar";
  const reason = options.reason ?? null;
  const way = direction === "down" ? "downcast" : `upcast (${reason ?? "no reason given"})`;
  return {
    width: layers.width,
    coordinate,
    direction,
    ownLevels,
    centres: layers.centres,
    bounds: layers.bounds,
    columns,
    rowsAboveLayers: layers.above,
    step: {
      step: "layer means",
      parameters: {
        width: layers.width,
        coordinate,
        direction,
        ...(direction === "up" ? { reason } : {}),
        ownLevels,
        automatic: options.width === null,
      },
      counts: {
        layers: layers.centres.length,
        rows: used,
        rowsAboveLayers: layers.above,
        ...(layers.beyond > 0 ? { rowsBeyondLayers: layers.beyond } : {}),
      },
      words: ownLevels
        ? `the source's own ${layers.centres.length} levels kept`
        : `means of ${layers.centres.length} layers of ${layers.width} ${unit} made from ${used} rows of the ${way}, ${layers.above} rows above the first layer left out`,
    },
  };
}

interface Layers {
  readonly width: number;
  readonly centres: Float64Array;
  readonly bounds: Float64Array;
  /** Index of the layer of each of the rows given; -1 for none. */
  readonly layerOf: Int32Array;
  readonly above: number;
  readonly beyond: number;
}

function layersOf(place: Float64Array, rows: Int32Array, width: number): Layers {
  const numbers = new Int32Array(rows.length);
  for (let r = 0; r < numbers.length; r++) {
    const number = Math.floor(place[rows[r]!]! / width + 0.5);
    numbers[r] = number < 1 ? 0 : number > mostLayers ? -1 : number;
  }
  let first = mostLayers + 1;
  let last = 0;
  let above = 0;
  let beyond = 0;
  for (const number of numbers) {
    if (number === 0) above++;
    else if (number < 0) beyond++;
    else {
      first = Math.min(first, number);
      last = Math.max(last, number);
    }
  }
  const count = Math.max(0, last - first + 1);
  const centres = new Float64Array(count);
  const bounds = new Float64Array(2 * count);
  for (let c = 0; c < count; c++) {
    centres[c] = (first + c) * width;
    bounds[2 * c] = (first + c - 0.5) * width;
    bounds[2 * c + 1] = (first + c + 0.5) * width;
  }
  for (let r = 0; r < numbers.length; r++) numbers[r] = numbers[r]! < 1 ? -1 : numbers[r]! - first;
  return { width, centres, bounds, layerOf: numbers, above, beyond };
}

/** One layer per row, in order of the coordinate; edges midway between neighbours. */
function levelsOf(place: Float64Array, rows: Int32Array): Layers {
  const order = Uint32Array.from(rows.keys()).sort((a, b) => place[rows[a]!]! - place[rows[b]!]! || a - b);
  const centres = Float64Array.from(order, (r) => place[rows[r]!]!);
  const layerOf = new Int32Array(rows.length);
  for (let c = 0; c < order.length; c++) layerOf[order[c]!] = c;
  const spacing = median(Float64Array.from(centres.subarray(1), (centre, c) => centre - centres[c]!));
  const width = Number.isNaN(spacing) ? 0 : spacing;
  const bounds = new Float64Array(2 * centres.length);
  for (let c = 0; c < centres.length; c++) {
    const previous = c > 0 ? centres[c - 1]! : centres[c]! - width;
    const next = c + 1 < centres.length ? centres[c + 1]! : centres[c]! + width;
    bounds[2 * c] = (previous + centres[c]!) / 2;
    bounds[2 * c + 1] = (centres[c]! + next) / 2;
  }
  return { width, centres, bounds, layerOf, above: 0, beyond: 0 };
}

/** Means alone, for layers along pressure, of the columns named: what the comparison of both ways needs. */
export function meansAlone(
  cast: Cast,
  direction: "down" | "up",
  width: number,
  names: readonly string[],
): { readonly centres: Float64Array; readonly means: readonly (Float64Array | null)[] } {
  const rows = placedRows(cast, { coordinate: "pressure", direction });
  const place = valuesOf(cast, "pressure") ?? new Float64Array();
  const { centres, layerOf } = layersOf(place, rows, width);
  const means = names.map((name) => {
    const column = cast.columns.get(name);
    return column === undefined ? null : meansOf(column, rows, layerOf, centres.length).mean;
  });
  return { centres, means };
}
