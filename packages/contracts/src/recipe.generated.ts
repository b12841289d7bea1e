/** Types of schemas/recipe.schema.json. Made by tools/generate.ts; change the schema, not this file. */

/**
 * Every number that decides what processing does to a cast. What is left out keeps its default. x-unit is the unit of a parameter, x-source where its default comes from.
 */
export interface ProcessingRecipe {
  /**
   * Place of this schema, for editors that complete and check.
   */
  $schema?: string;
  /**
   * Version of the form of this document; always 1.
   */
  version: 1;
  /**
   * Kind of water: which limits the quality tests use.
   */
  preset?: "shelf" | "estuary" | "fresh" | "ocean";
  atmosphericOffset?: AtmosphericOffset;
  segmentation?: Segmentation;
  reversals?: PressureReversals;
  quality?: QualityTests;
  depth?: Depth;
  layers?: LayerMeans;
}
/**
 * The reading of the pressure sensor in air, found from the cast itself and subtracted.
 */
export interface AtmosphericOffset {
  /**
   * What the pressure of the source counts from, where it is known; null: the cast's own reading in air decides, or a question.
   */
  reference?: "sea" | "absolute" | null;
  /**
   * An offset chosen by name instead of the cast's own reading, such as one borrowed from other casts of the day.
   */
  given?: null | ChosenOffset;
  /**
   * Readings in air up to this are zero errors and subtracted.
   */
  largestZeroError?: number;
  /**
   * Readings in air in this range are evidence of an absolute sensor, and a question.
   *
   * @minItems 2
   * @maxItems 2
   */
  absoluteRange?: [number, number];
  /**
   * Change of the reading in air from start to end of a record that is worth a warning.
   */
  largestDrift?: number;
  /**
   * Subtracted from absolute pressure where the cast has no rows in air.
   */
  standardAtmosphere?: number;
  air?: RowsInAir;
}
export interface ChosenOffset {
  /**
   * Subtracted from pressure, dbar.
   */
  value: number;
  /**
   * Where it comes from, in words.
   */
  from: string;
}
/**
 * How rows in air are told from rows in water.
 */
export interface RowsInAir {
  /**
   * Time at either end of the record that is looked at first.
   */
  lookSeconds?: number;
  /**
   * Rows deeper than the reading at the end of the record by this count as water.
   */
  waterBelow?: number;
  /**
   * Air conducts less than this part of the freshest water of the cast.
   */
  largestRatio?: number;
  /**
   * Air conducts less than this.
   */
  largestConductivity?: number;
  /**
   * Robust standard deviation of pressure up to which it is at rest; three times the noise if that is more.
   */
  restless?: number;
  /**
   * The run of air goes on up to this part of the way from air to the freshest water.
   */
  edge?: number;
  /**
   * Time next to the water that does not count for the reading in air.
   */
  guardSeconds?: number;
}
/**
 * How a cast is cut into air, soak, downcast, bottom stop and upcast.
 */
export interface Segmentation {
  /**
   * Limit of the shallow part, as a part of the largest pressure.
   */
  shallowPart?: number;
  /**
   * The limit of the shallow part is at least the first (or half of the largest pressure) and at most the second.
   *
   * @minItems 2
   * @maxItems 2
   */
  shallowLimits?: [number, number];
  /**
   * The bottom stop lies within this of the largest pressure.
   */
  bottomBand?: number;
  /**
   * The downcast starts where the gain over this time, or over half of the way down if that is less, is large enough.
   */
  startSeconds?: number;
  /**
   * Large enough is this part of what the mean lowering speed would give.
   */
  startPart?: number;
  /**
   * Part of the mean lowering speed below which the package has all but stopped at the bottom.
   */
  stopPart?: number;
  /**
   * A stay this long below the shallow limit is a deep soak.
   */
  deepSoakSeconds?: number;
  /**
   * Part of the mean lowering speed below which the package stays.
   */
  soakPart?: number;
  /**
   * Time in water before the downcast that makes a soak.
   */
  soakSeconds?: number;
  /**
   * The same in response times of the slowest sensor; the larger counts.
   */
  soakResponses?: number;
  /**
   * Response times until a sensor dropped through the surface has settled.
   */
  settleResponses?: number;
  /**
   * Response time of the slowest sensor; give the instrument's own if you know it.
   */
  responseTime?: number;
  /**
   * A record that stays shallower is no cast.
   */
  leastPressure?: number;
}
/**
 * Rows of the downcast that a hand or a wave lifted or held.
 */
export interface PressureReversals {
  /**
   * A row above the deepest so far by more than this times the pressure noise was passed already.
   */
  noiseFactor?: number;
  /**
   * Part of the median lowering speed below which a row is too slow.
   */
  slowPart?: number;
  /**
   * Multiple of the noise of the speed below which nothing can be said.
   */
  speedNoiseFactor?: number;
}
/**
 * What the sheet of an instrument tells the quality tests.
 */
export interface QualityTests {
  sensorRanges?: SensorRanges;
  /**
   * Pressure that the instrument is rated for; null: as the source or the sheet tells.
   */
  ratedPressure?: number | null;
}
/**
 * Lowest and highest value that each sensor can give, by its data sheet, instead of the preset's.
 */
export interface SensorRanges {
  /**
   * degree_C.
   *
   * @minItems 2
   * @maxItems 2
   */
  temperature?: [number, number];
  /**
   * mS cm-1.
   *
   * @minItems 2
   * @maxItems 2
   */
  conductivity?: [number, number];
  /**
   * Practical Salinity, 1.
   *
   * @minItems 2
   * @maxItems 2
   */
  salinity?: [number, number];
  /**
   * dbar of sea pressure.
   *
   * @minItems 2
   * @maxItems 2
   */
  pressure?: [number, number];
}
/**
 * How depth comes from pressure.
 */
export interface Depth {
  /**
   * automatic: by the measured density where the mean salinity of the downcast is below 30, by the standard ocean elsewhere.
   */
  method?: "automatic" | "measured density" | "standard ocean";
}
/**
 * Layers that are averaged.
 */
export interface LayerMeans {
  /**
   * Thickness of the layers; null: the smallest of 0.25, 0.5, 1 and 2 with a median of at least 3 rows, never finer than the source's own spacing.
   */
  width?: number | null;
  /**
   * What the layers are counted in.
   */
  coordinate?: "depth" | "pressure";
  /**
   * Which way of the cast is averaged. Down is the reference: the sensors meet undisturbed water.
   */
  direction?: "down" | "up";
}
