import type { Cast, LayerMeans, MeanColumn } from "@wherry/core";
import type { Dataset } from "@wherry/netcdf";
import { textOf } from "./attributes.ts";
import type { CastValues } from "./cast-values.ts";
import { placeOfRow } from "./layout.ts";
import { inUnitsOf, type ProductParts } from "./own-product.ts";

interface LayerSource {
  readonly dataset: Dataset;
  readonly from: CastValues;
  /** Of the cast in the layout. */
  readonly place: number;
  readonly rowsAbove: number;
}

/** Layer means of a cast as a product of this program has them; null if the product has no vertical coordinate. */
export async function ownLayers(
  cast: Cast,
  { columns, others }: ProductParts,
  { dataset, from, place, rowsAbove }: LayerSource,
): Promise<LayerMeans | null> {
  const methods = [...dataset.variables.values()].flatMap(
    ({ attributes }) => textOf(attributes, "cell_methods") ?? [],
  );
  const [, named, way, thick] =
    methods
      .flatMap((text) => [
        /^(depth|pressure): mean \((down|up)cast rows .*?layers (?:([\d.]+) \S+ thick|of )/.exec(text),
      ])
      .find((found) => found !== null) ?? [];
  const coordinate = (named ?? (columns.has("depth") ? "depth" : "pressure")) as LayerMeans["coordinate"];
  const centres = columns.get(coordinate)?.values;
  if (!centres) return null;
  const ownLevels = named === undefined;
  const read = await boundsOf(dataset, coordinate, from, place, cast.rows);
  const lower = read?.lower ?? others.get(`${coordinate}_bounds_lower`)?.values;
  const upper = read?.upper ?? others.get(`${coordinate}_bounds_upper`)?.values;
  const thickness = others.get("layer_thickness")?.values[0];
  const width = Number(thick ?? thickness ?? (lower && upper ? upper[0]! - lower[0]! : spacing(centres)));
  const bounds = new Float64Array(2 * cast.rows);
  for (const [row, centre] of centres.entries()) {
    bounds[2 * row] = lower?.[row] ?? centre - width / 2;
    bounds[2 * row + 1] = upper?.[row] ?? centre + width / 2;
  }
  const direction = way === "up" ? "up" : "down";
  const layers = new Map<string, MeanColumn>();
  for (const [name, column] of columns) {
    if (name === coordinate) continue;
    const header = column.source?.header ?? name;
    const [sd, count] = [others.get(`${header}_sd`), others.get(`${header}_count`)];
    layers.set(name, {
      name,
      mean: column.values,
      sd: sd ? inUnitsOf(sd.values, sd, column) : new Float64Array(cast.rows).fill(Number.NaN),
      count: Int32Array.from(count?.values ?? new Float64Array(cast.rows).fill(1)),
      flags: column.flags,
    });
  }
  return {
    width,
    coordinate,
    direction,
    ownLevels,
    centres,
    bounds,
    columns: layers,
    rowsAboveLayers: Number.isNaN(rowsAbove) ? 0 : rowsAbove,
    step: {
      step: "layer means",
      parameters: { width, coordinate, direction, ownLevels, received: true },
      counts: { layers: cast.rows },
      words: `${cast.rows} layers kept as the product had them`,
    },
  };
}

/** Edges of the layers of a cast, where the product has them as bounds. */
async function boundsOf(
  dataset: Dataset,
  coordinate: string,
  { layout }: CastValues,
  place: number,
  rows: number,
): Promise<{ readonly lower: Float64Array; readonly upper: Float64Array } | null> {
  const variable = dataset.variables.get(`${coordinate}_bounds`);
  if (variable?.dimensions.length !== 2) return null;
  const read = await dataset.read(variable.name);
  if (!read.ok) return null;
  const { rows: places } = layout.places[place]!;
  const edge = (which: number) =>
    Float64Array.from({ length: rows }, (_, row) => Number(read.value[2 * placeOfRow(places, row) + which]));
  return { lower: edge(0), upper: edge(1) };
}

const spacing = (centres: Float64Array): number => (centres.length < 2 ? 0 : centres[1]! - centres[0]!);
