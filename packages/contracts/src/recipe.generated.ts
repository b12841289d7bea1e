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
  clock?: ClockCorrection;
  calibration?: CalibrationCorrections;
  atmosphericOffset?: AtmosphericOffset;
  segmentation?: Segmentation;
  response?: ResponseMatching;
  cell?: CellThermalInertia;
  reversals?: PressureReversals;
  smoothing?: Smoothing;
  comparison?: ComparisonOfDowncastAndUpcast;
  series?: SignsOfASeries;
  bursts?: BurstMeans;
  quality?: QualityTests;
  depth?: Depth;
  layers?: LayerMeans;
  soundSpeedProfile?: SoundSpeedProfile;
}
/**
 * The time of the instrument's clock made true before anything else.
 */
export interface ClockCorrection {
  /**
   * Readings of the instrument's clock and the true time, both in UTC: one is an offset, between two and more the correction is linear in time, outside them constant.
   */
  pairs?: ClockReading[];
  /**
   * Drift of the clock that is worth a warning.
   */
  largestDrift?: number;
}
export interface ClockReading {
  /**
   * What the instrument's clock showed, as 2024-05-20T08:00:31Z.
   */
  instrument: string;
  /**
   * The true time at that moment, as 2024-05-20T08:00:00Z.
   */
  true: string;
}
/**
 * Slope and offset of each sensor by date, linear in time between two calibrations. Conductivity is corrected, never salinity.
 */
export interface CalibrationCorrections {
  /**
   * Dated corrections: true value = slope times reading plus offset.
   */
  temperature?: Correction[];
  /**
   * Dated corrections: true value = slope times reading plus offset.
   */
  conductivity?: Correction[];
  /**
   * Dated corrections: true value = slope times reading plus offset.
   */
  pressure?: Correction[];
  /**
   * Added to a salinity that came without conductivity, by name; for legacy data only.
   */
  salinityOffset?: null | SalinityOffset;
}
export interface Correction {
  /**
   * Day of the calibration, as 2024-02-11.
   */
  date: string;
  /**
   * The reading is multiplied by it; 1 if not given.
   */
  slope?: number;
  /**
   * Added after that; 0 if not given.
   */
  offset?: number;
  /**
   * Made after the sensor was cleaned or repaired: it begins a new stretch and says nothing about earlier data.
   */
  afterCleaning?: boolean;
  /**
   * Where it is written down.
   */
  document?: string;
}
export interface SalinityOffset {
  /**
   * Added to Practical Salinity.
   */
  value: number;
  /**
   * Where it comes from, in words.
   */
  from: string;
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
   * Waves whose speed exceeds this part of the mean lowering speed are averaged out to find the start.
   */
  swellPart?: number;
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
 * Temperature and conductivity brought to the same response. Off for what is not given: nothing is sharpened on a guess.
 */
export interface ResponseMatching {
  temperature?: ResponseOfTemperature;
  conductivity?: ResponseOfConductivity;
  /**
   * Shift temperature by the delay behind conductivity that the downcast itself shows, where the estimate is sure.
   */
  delayFromData?: boolean;
  /**
   * Longest delay that is looked for.
   */
  largestDelay?: number;
  /**
   * Correlation of the changes of temperature and conductivity from which an estimate is sure.
   */
  fewestCorrelated?: number;
  /**
   * Spread of the estimates from parts of the cast up to which an estimate is sure.
   */
  largestSpread?: number;
}
/**
 * How the temperature sensor follows the water.
 */
export interface ResponseOfTemperature {
  /**
   * First-order response time; the column becomes x + time dx/dt after light smoothing.
   */
  time?: number | null;
  /**
   * Time by which the reading comes late; the column is shifted by it.
   */
  delay?: number | null;
}
/**
 * How the conductivity sensor follows the water.
 */
export interface ResponseOfConductivity {
  /**
   * First-order response time; the column becomes x + time dx/dt after light smoothing.
   */
  time?: number | null;
  /**
   * Time by which the reading comes late; the column is shifted by it.
   */
  delay?: number | null;
}
/**
 * Heat that the wall of a conductivity cell keeps. Off unless both numbers are given: they belong to the cell.
 */
export interface CellThermalInertia {
  /**
   * Initial size of the error, as a part of the change of temperature.
   */
  size?: number | null;
  /**
   * Time in which the error decays.
   */
  relaxationTime?: number | null;
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
 * One symmetric window for temperature and conductivity together, never for one alone.
 */
export interface Smoothing {
  /**
   * Length of the running mean; null: none.
   */
  window?: number | null;
}
/**
 * Layer means of both ways at equal pressure, and what their difference looks like. Tells, never flags.
 */
export interface ComparisonOfDowncastAndUpcast {
  /**
   * Thickness of the layers compared.
   */
  width?: number;
  /**
   * Rows in the medians in which a bubble or fouling is looked for.
   */
  runRows?: number;
  /**
   * Conductivity down over up is below one by more than this above the depth where a bubble left.
   */
  bubbleRatio?: number;
  /**
   * Up to this the conductivities of both ways agree.
   */
  agreement?: number;
}
/**
 * What a series at a fixed depth tells of itself.
 */
export interface SignsOfASeries {
  /**
   * Out of water: conductivity below this part of its median during the stay.
   */
  waterPart?: number;
  /**
   * Trend of pressure over the stay, tides averaged out, that is worth a warning.
   */
  largestDrift?: number;
}
/**
 * Means of the bursts of a fixed-depth series, runs of rows that a pause parts, in a file beside that of the rows.
 */
export interface BurstMeans {
  /**
   * Write the means of bursts of every fixed-depth series as a further file.
   */
  mean?: boolean;
  /**
   * Time without rows that parts two bursts; null: found from the intervals between rows. Give it where the clock of the export is coarser than the rows.
   */
  pause?: number | null;
  /**
   * A pause found from the rows is longer than this many times their median interval.
   */
  pauseIntervals?: number;
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
  expectedRanges?: ExpectedRanges;
  spikeReturn?: SpikeHeights;
  /**
   * Density that may be lost from one layer to the next, instead of the preset's.
   */
  densityInversion?: number | null;
  /**
   * How far below the freezing point water may be, instead of the preset's.
   */
  freezingTolerance?: number | null;
  /**
   * Write the result of every quality test beside the rows of the full file and of series, as <quantity>_<test>_qc: which test decided a flag can then be seen row by row.
   */
  testFlags?: boolean;
  /**
   * Judge temperature and salinity also by what is known to occur in the region of the sea where the cast was made; elsewhere by the limits of the whole ocean. Outside is questionable. Not for river mouths: most regions begin at a salinity of 2.
   */
  regionalRange?: boolean;
  /**
   * Rows above this pressure are questionable: the hull stirs the water there, and sensors take in air. They stay out of the layers. null: not judged.
   */
  surfaceLayer?: number | null;
  tests?: PublishedTestsByChoice;
  neighbour?: NeighbourTest;
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
 * Lowest and highest value to be expected, instead of the preset's; outside is questionable.
 */
export interface ExpectedRanges {
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
   * 1.
   *
   * @minItems 2
   * @maxItems 2
   */
  salinity?: [number, number];
  /**
   * dbar.
   *
   * @minItems 2
   * @maxItems 2
   */
  pressure?: [number, number];
}
/**
 * Limits of the rule spike_return instead of the preset's.
 */
export interface SpikeHeights {
  temperature?: SpikeHeight;
  conductivity?: SpikeHeight1;
  salinity?: SpikeHeight2;
  pressure?: SpikeHeight3;
}
export interface SpikeHeight {
  /**
   * Height up to which nothing is a spike, degree_C.
   */
  floor: number;
  /**
   * The same as a part of the median of the quantity; the larger counts.
   */
  floorPart?: number;
  /**
   * Height above which a spike is bad; never if not given, degree_C.
   */
  badAbove?: number;
}
export interface SpikeHeight1 {
  /**
   * Height up to which nothing is a spike, mS cm-1.
   */
  floor: number;
  /**
   * The same as a part of the median of the quantity; the larger counts.
   */
  floorPart?: number;
  /**
   * Height above which a spike is bad; never if not given, mS cm-1.
   */
  badAbove?: number;
}
export interface SpikeHeight2 {
  /**
   * Height up to which nothing is a spike, 1.
   */
  floor: number;
  /**
   * The same as a part of the median of the quantity; the larger counts.
   */
  floorPart?: number;
  /**
   * Height above which a spike is bad; never if not given, 1.
   */
  badAbove?: number;
}
export interface SpikeHeight3 {
  /**
   * Height up to which nothing is a spike, dbar.
   */
  floor: number;
  /**
   * The same as a part of the median of the quantity; the larger counts.
   */
  floorPart?: number;
  /**
   * Height above which a spike is bad; never if not given, dbar.
   */
  badAbove?: number;
}
/**
 * Tests that no preset runs; each runs for the quantities that have limits here.
 */
export interface PublishedTestsByChoice {
  climatology?: Climatology;
  spike?: ThreePointSpike;
  gradientVertical?: GradientOverThreeLevels;
  endSpike?: SpikeAtTheEnds;
  digitRollover?: DigitRollover;
  attenuatedSignal?: AttenuatedSignal;
  multivariate?: Multivariate;
}
/**
 * What is usual in each layer; outside is questionable.
 */
export interface Climatology {
  /**
   * The first layer that holds a row counts.
   */
  temperature?: ClimatologyLayer[];
  /**
   * The first layer that holds a row counts.
   */
  conductivity?: ClimatologyLayer1[];
  /**
   * The first layer that holds a row counts.
   */
  salinity?: ClimatologyLayer2[];
  /**
   * The first layer that holds a row counts.
   */
  pressure?: ClimatologyLayer3[];
}
export interface ClimatologyLayer {
  /**
   * dbar; from the first to below the second.
   *
   * @minItems 2
   * @maxItems 2
   */
  pressureRange: [number, number];
  /**
   * degree_C; both included.
   *
   * @minItems 2
   * @maxItems 2
   */
  expectedRange: [number, number];
}
export interface ClimatologyLayer1 {
  /**
   * dbar; from the first to below the second.
   *
   * @minItems 2
   * @maxItems 2
   */
  pressureRange: [number, number];
  /**
   * mS cm-1; both included.
   *
   * @minItems 2
   * @maxItems 2
   */
  expectedRange: [number, number];
}
export interface ClimatologyLayer2 {
  /**
   * dbar; from the first to below the second.
   *
   * @minItems 2
   * @maxItems 2
   */
  pressureRange: [number, number];
  /**
   * 1; both included.
   *
   * @minItems 2
   * @maxItems 2
   */
  expectedRange: [number, number];
}
export interface ClimatologyLayer3 {
  /**
   * dbar; from the first to below the second.
   *
   * @minItems 2
   * @maxItems 2
   */
  pressureRange: [number, number];
  /**
   * dbar; both included.
   *
   * @minItems 2
   * @maxItems 2
   */
  expectedRange: [number, number];
}
/**
 * Distance from the mean of both neighbours.
 */
export interface ThreePointSpike {
  temperature?: ThreePointSpikeLimits;
  conductivity?: ThreePointSpikeLimits1;
  salinity?: ThreePointSpikeLimits2;
  pressure?: ThreePointSpikeLimits3;
}
export interface ThreePointSpikeLimits {
  /**
   * Questionable above, degree_C.
   */
  questionableAbove: number;
  /**
   * Bad above; never if not given, degree_C.
   */
  badAbove?: number;
}
export interface ThreePointSpikeLimits1 {
  /**
   * Questionable above, mS cm-1.
   */
  questionableAbove: number;
  /**
   * Bad above; never if not given, mS cm-1.
   */
  badAbove?: number;
}
export interface ThreePointSpikeLimits2 {
  /**
   * Questionable above, 1.
   */
  questionableAbove: number;
  /**
   * Bad above; never if not given, 1.
   */
  badAbove?: number;
}
export interface ThreePointSpikeLimits3 {
  /**
   * Questionable above, dbar.
   */
  questionableAbove: number;
  /**
   * Bad above; never if not given, dbar.
   */
  badAbove?: number;
}
/**
 * Distance from the mean of both neighbours, above and below 500 dbar.
 */
export interface GradientOverThreeLevels {
  temperature?: GradientLimits;
  conductivity?: GradientLimits1;
  salinity?: GradientLimits2;
  pressure?: GradientLimits3;
}
export interface GradientLimits {
  /**
   * Limit above 500 dbar, degree_C.
   */
  shallowLimit: number;
  /**
   * Limit from 500 dbar down, degree_C.
   */
  deepLimit: number;
}
export interface GradientLimits1 {
  /**
   * Limit above 500 dbar, mS cm-1.
   */
  shallowLimit: number;
  /**
   * Limit from 500 dbar down, mS cm-1.
   */
  deepLimit: number;
}
export interface GradientLimits2 {
  /**
   * Limit above 500 dbar, 1.
   */
  shallowLimit: number;
  /**
   * Limit from 500 dbar down, 1.
   */
  deepLimit: number;
}
export interface GradientLimits3 {
  /**
   * Limit above 500 dbar, dbar.
   */
  shallowLimit: number;
  /**
   * Limit from 500 dbar down, dbar.
   */
  deepLimit: number;
}
/**
 * First and last row against their neighbour.
 */
export interface SpikeAtTheEnds {
  temperature?: EndSpikeLimit;
  conductivity?: EndSpikeLimit1;
  salinity?: EndSpikeLimit2;
  pressure?: EndSpikeLimit3;
}
export interface EndSpikeLimit {
  /**
   * Largest step, degree_C.
   */
  limit: number;
}
export interface EndSpikeLimit1 {
  /**
   * Largest step, mS cm-1.
   */
  limit: number;
}
export interface EndSpikeLimit2 {
  /**
   * Largest step, 1.
   */
  limit: number;
}
export interface EndSpikeLimit3 {
  /**
   * Largest step, dbar.
   */
  limit: number;
}
/**
 * A step that only a counter that began again can make.
 */
export interface DigitRollover {
  temperature?: RolloverLimit;
  conductivity?: RolloverLimit1;
  salinity?: RolloverLimit2;
  pressure?: RolloverLimit3;
}
export interface RolloverLimit {
  /**
   * Largest step, degree_C.
   */
  limit: number;
}
export interface RolloverLimit1 {
  /**
   * Largest step, mS cm-1.
   */
  limit: number;
}
export interface RolloverLimit2 {
  /**
   * Largest step, 1.
   */
  limit: number;
}
export interface RolloverLimit3 {
  /**
   * Largest step, dbar.
   */
  limit: number;
}
/**
 * Largest less smallest value of a direction.
 */
export interface AttenuatedSignal {
  temperature?: AttenuatedSignalLimits;
  conductivity?: AttenuatedSignalLimits1;
  salinity?: AttenuatedSignalLimits2;
  pressure?: AttenuatedSignalLimits3;
}
export interface AttenuatedSignalLimits {
  /**
   * Bad below, degree_C.
   */
  badBelow: number;
  /**
   * Questionable below, degree_C.
   */
  questionableBelow: number;
}
export interface AttenuatedSignalLimits1 {
  /**
   * Bad below, mS cm-1.
   */
  badBelow: number;
  /**
   * Questionable below, mS cm-1.
   */
  questionableBelow: number;
}
export interface AttenuatedSignalLimits2 {
  /**
   * Bad below, 1.
   */
  badBelow: number;
  /**
   * Questionable below, 1.
   */
  questionableBelow: number;
}
export interface AttenuatedSignalLimits3 {
  /**
   * Bad below, dbar.
   */
  badBelow: number;
  /**
   * Questionable below, dbar.
   */
  questionableBelow: number;
}
/**
 * A step that another quantity, which should follow, does not share.
 */
export interface Multivariate {
  temperature?: MultivariateLimits;
  conductivity?: MultivariateLimits1;
  salinity?: MultivariateLimits2;
  pressure?: MultivariateLimits3;
}
export interface MultivariateLimits {
  /**
   * The quantity that should step with it.
   */
  other: "temperature" | "conductivity" | "salinity" | "pressure";
  /**
   * Multiple of its standard deviation by which the quantity steps.
   */
  deviations: number;
  /**
   * Multiple of its own that the other one does not reach.
   */
  otherDeviations: number;
  /**
   * Rows before, from which the deviations are taken.
   */
  windowRows: number;
}
export interface MultivariateLimits1 {
  /**
   * The quantity that should step with it.
   */
  other: "temperature" | "conductivity" | "salinity" | "pressure";
  /**
   * Multiple of its standard deviation by which the quantity steps.
   */
  deviations: number;
  /**
   * Multiple of its own that the other one does not reach.
   */
  otherDeviations: number;
  /**
   * Rows before, from which the deviations are taken.
   */
  windowRows: number;
}
export interface MultivariateLimits2 {
  /**
   * The quantity that should step with it.
   */
  other: "temperature" | "conductivity" | "salinity" | "pressure";
  /**
   * Multiple of its standard deviation by which the quantity steps.
   */
  deviations: number;
  /**
   * Multiple of its own that the other one does not reach.
   */
  otherDeviations: number;
  /**
   * Rows before, from which the deviations are taken.
   */
  windowRows: number;
}
export interface MultivariateLimits3 {
  /**
   * The quantity that should step with it.
   */
  other: "temperature" | "conductivity" | "salinity" | "pressure";
  /**
   * Multiple of its standard deviation by which the quantity steps.
   */
  deviations: number;
  /**
   * Multiple of its own that the other one does not reach.
   */
  otherDeviations: number;
  /**
   * Rows before, from which the deviations are taken.
   */
  windowRows: number;
}
/**
 * Comparison with the latest earlier profile of the place.
 */
export interface NeighbourTest {
  limits?: NeighbourLimits;
  /**
   * An earlier profile counts within this distance.
   */
  withinKm?: number;
  /**
   * An earlier profile counts within this time.
   */
  withinHours?: number;
}
/**
 * Largest differences by layer; a quantity without any is not compared.
 */
export interface NeighbourLimits {
  /**
   * The first layer that holds a row counts.
   */
  temperature?: NeighbourLayer[];
  /**
   * The first layer that holds a row counts.
   */
  conductivity?: NeighbourLayer1[];
  /**
   * The first layer that holds a row counts.
   */
  salinity?: NeighbourLayer2[];
}
export interface NeighbourLayer {
  /**
   * dbar; from the first to below the second.
   *
   * @minItems 2
   * @maxItems 2
   */
  pressureRange: [number, number];
  /**
   * degree_C.
   */
  largestDifference: number;
}
export interface NeighbourLayer1 {
  /**
   * dbar; from the first to below the second.
   *
   * @minItems 2
   * @maxItems 2
   */
  pressureRange: [number, number];
  /**
   * mS cm-1.
   */
  largestDifference: number;
}
export interface NeighbourLayer2 {
  /**
   * dbar; from the first to below the second.
   *
   * @minItems 2
   * @maxItems 2
   */
  pressureRange: [number, number];
  /**
   * 1.
   */
  largestDifference: number;
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
  /**
   * Why the upcast is averaged; told with the layers.
   */
  reason?: string | null;
}
/**
 * The product soundspeed: sound speed against depth from the layer means. Not for navigation or diving.
 */
export interface SoundSpeedProfile {
  /**
   * Layers are left out that linear interpolation between their neighbours gives within this; 0 keeps all.
   */
  tolerance?: number;
  /**
   * Carry the value of the shallowest layer to the surface; the point is marked.
   */
  toSurface?: boolean;
  /**
   * Carry the profile below its deepest layer down to this depth, with the temperature and salinity of that layer; the point is marked. null: not at all.
   */
  toDepth?: number | null;
}
