import type { LayerMeans } from "@wherry/core";

/** How the layers of a product are described. */
export interface LayerWords {
  readonly coordinate: "depth" | "pressure";
  readonly direction: "down" | "up";
  /** Thickness; "mixed" if casts differ; null for the source's own levels. */
  readonly width: number | "mixed" | null;
  /** For the parentheses of `cell_methods`. */
  readonly rows: string;
  readonly centreName: string;
  readonly title: string;
  readonly summary: string;
  readonly level: string;
  readonly history: readonly string[];
  /** Text of `geospatial_vertical_resolution`. */
  readonly resolution: string | null;
}

/**
 * @returns null if no cast has layers
 * @throws  RangeError if casts differ in coordinate or direction
 */
export function layerWordsOf(layers: readonly (LayerMeans | null)[]): LayerWords | null {
  const present = layers.filter((own) => own !== null && own.centres.length > 0) as LayerMeans[];
  const [first] = present;
  if (!first) return null;
  const { coordinate, direction } = first;
  if (present.some((own) => own.coordinate !== coordinate || own.direction !== direction))
    throw new RangeError("layers of one product must be in one coordinate and one direction");
  const areLevels = present.every(({ ownLevels }) => ownLevels);
  const widths = new Set(present.map(({ width, ownLevels }) => (ownLevels ? "own" : width)));
  const width = areLevels ? null : widths.size === 1 ? first.width : "mixed";
  const units = coordinate === "depth" ? "m" : "dbar";
  const cast = direction === "down" ? "downcast" : "upcast";
  const { reason } = first.step.parameters;
  const why = direction === "down" ? "" : ` (${reason ?? "no reason given"})`;
  if (width === null)
    return {
      coordinate,
      direction,
      width,
      rows: "",
      centreName: coordinate === "depth" ? "depth below the water surface" : "sea pressure",
      title: "levels as received",
      summary: "Levels as the source had averaged them, with quality flags.",
      level: "levels as received, quality flagged",
      history: ["levels of the source written"],
      resolution: null,
    };
  const thickness =
    width === "mixed" ? "layers of the thickness that their bounds give" : `layers ${width} ${units} thick`;
  return {
    coordinate,
    direction,
    width,
    rows: `${cast} rows flagged 1 or 2, ${thickness}`,
    centreName:
      coordinate === "depth"
        ? "depth of the layer centre below the water surface"
        : "sea pressure of the layer centre",
    title: width === "mixed" ? "layer means" : `layer means of ${width} ${units}`,
    summary: `Means of the ${cast}${why} in ${thickness}, with the number of rows and the standard deviation in each layer and a quality flag.`,
    level: `layer means of the ${cast}`,
    history: [`means of the ${cast}${why} in ${thickness} written`],
    resolution: width === "mixed" ? null : `${width} ${units}`,
  };
}
