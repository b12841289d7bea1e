import {
  type AtmosphericOffsetParameters,
  atmosphericOffsetDefaults,
  type DepthMethod,
  type JudgedQuantity,
  type PresetName,
  type ReversalParameters,
  reversalDefaults,
  type SegmentationParameters,
  segmentationDefaults,
} from "@wherry/core";

/** Everything that decides what processing does to a cast. The form of a recipe document is recipe.schema.json. */
export interface RecipeSettings {
  readonly preset: PresetName;
  readonly atmosphericOffset: AtmosphericOffsetParameters;
  readonly segmentation: SegmentationParameters;
  readonly reversals: ReversalParameters;
  readonly quality: {
    /** Ranges by the data sheet instead of the preset's; house units. */
    readonly sensorRanges: Partial<Readonly<Record<JudgedQuantity, readonly [number, number]>>>;
    /** dbar; null: as the source tells, else the test is not run. */
    readonly ratedPressure: number | null;
  };
  readonly depth: { readonly method: DepthMethod };
  readonly layers: {
    /** m or dbar; null: found from the casts. */
    readonly width: number | null;
    readonly coordinate: "depth" | "pressure";
    readonly direction: "down" | "up";
  };
}

export const defaultSettings: RecipeSettings = {
  preset: "estuary",
  atmosphericOffset: atmosphericOffsetDefaults,
  segmentation: segmentationDefaults,
  reversals: reversalDefaults,
  quality: { sensorRanges: {}, ratedPressure: null },
  depth: { method: "automatic" },
  layers: { width: null, coordinate: "depth", direction: "down" },
};
