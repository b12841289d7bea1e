import {
  type AtmosphericOffsetParameters,
  atmosphericOffsetDefaults,
  type BurstParameters,
  burstDefaults,
  type CellParameters,
  type ChosenTests,
  type ComparisonParameters,
  cellDefaults,
  comparisonDefaults,
  type DepthMethod,
  type JudgedQuantity,
  type NeighbourParameters,
  neighbourDefaults,
  noChosenTests,
  noPlaceTests,
  type OwnLimits,
  type PlaceTests,
  type PresetName,
  type ResponseParameters,
  type ReversalParameters,
  responseDefaults,
  reversalDefaults,
  type SegmentationParameters,
  type SeriesParameters,
  type SmoothingParameters,
  type SoundSpeedProfileParameters,
  segmentationDefaults,
  seriesDefaults,
  soundSpeedProfileDefaults,
} from "@wherry/core";

/** A reading of the instrument's clock and the true time, ISO 8601 in UTC. */
export interface ClockReading {
  readonly instrument: string;
  readonly true: string;
}

/** A dated correction of a sensor, house units; `date` year-month-day. */
export interface DatedCorrection {
  readonly date: string;
  readonly slope?: number;
  readonly offset?: number;
  readonly afterCleaning?: boolean;
  readonly document?: string;
}

/** Everything that decides what processing does to a cast. The form of a recipe document is recipe.schema.json. */
export interface RecipeSettings {
  readonly preset: PresetName;
  readonly clock: { readonly pairs: readonly ClockReading[]; readonly largestDrift: number };
  readonly calibration: {
    readonly temperature: readonly DatedCorrection[];
    readonly conductivity: readonly DatedCorrection[];
    readonly pressure: readonly DatedCorrection[];
    readonly salinityOffset: { readonly value: number; readonly from: string } | null;
  };
  readonly atmosphericOffset: AtmosphericOffsetParameters;
  readonly segmentation: SegmentationParameters;
  readonly response: ResponseParameters;
  readonly cell: CellParameters;
  readonly reversals: ReversalParameters;
  readonly smoothing: SmoothingParameters;
  readonly comparison: ComparisonParameters;
  readonly series: SeriesParameters;
  readonly bursts: BurstParameters;
  readonly quality: OwnLimits &
    PlaceTests & {
      /** Ranges by the data sheet instead of the preset's; house units. */
      readonly sensorRanges: Partial<Readonly<Record<JudgedQuantity, readonly [number, number]>>>;
      readonly ratedPressure: number | null;
      /** Published tests that no preset runs. */
      readonly tests: ChosenTests;
      /** Whether the result of each test is written, not only the flag that they give together. */
      readonly testFlags: boolean;
      /** Comparison with an earlier profile of the place. */
      readonly neighbour: NeighbourParameters;
    };
  readonly depth: { readonly method: DepthMethod };
  readonly layers: {
    /** m or dbar; null: found from the casts. */
    readonly width: number | null;
    readonly coordinate: "depth" | "pressure";
    readonly direction: "down" | "up";
    /** Why the upcast is averaged. */
    readonly reason: string | null;
  };
  readonly soundSpeedProfile: SoundSpeedProfileParameters;
}

export const defaultSettings: RecipeSettings = {
  preset: "estuary",
  clock: { pairs: [], largestDrift: 1 },
  calibration: { temperature: [], conductivity: [], pressure: [], salinityOffset: null },
  atmosphericOffset: atmosphericOffsetDefaults,
  segmentation: segmentationDefaults,
  response: responseDefaults,
  cell: cellDefaults,
  reversals: reversalDefaults,
  smoothing: { window: null },
  comparison: comparisonDefaults,
  series: seriesDefaults,
  bursts: burstDefaults,
  quality: {
    sensorRanges: {},
    ratedPressure: null,
    expectedRanges: {},
    spikeReturn: {},
    densityInversion: null,
    freezingTolerance: null,
    ...noPlaceTests,
    testFlags: false,
    tests: noChosenTests,
    neighbour: neighbourDefaults,
  },
  depth: { method: "automatic" },
  layers: { width: null, coordinate: "depth", direction: "down", reason: null },
  soundSpeedProfile: soundSpeedProfileDefaults,
};
