export { type AirParameters, airDefaults } from "./cast/air.ts";
export * from "./cast/atmospheric-offset.ts";
export { type BorrowedOffset, borrowedOffset } from "./cast/borrowed-offset.ts";
export * from "./cast/burst-means.ts";
export {
  type CalibrationParameters,
  type Correction,
  correctionAt,
  correctSensors,
  type DriftUncertainty,
  driftUncertainty,
} from "./cast/calibration.ts";
export * from "./cast/cast.ts";
export * from "./cast/cell-inertia.ts";
export { skipped, valuesOf, withColumns, withStep, withTest } from "./cast/change.ts";
export { type ClockPair, type ClockParameters, correctClock } from "./cast/clock-correction.ts";
export * from "./cast/compare-directions.ts";
export { computedColumn, putComputed } from "./cast/computed-column.ts";
export { addComputed } from "./cast/computed-columns.ts";
export { type DelayEstimate, estimateDelay } from "./cast/delay-estimate.ts";
export { brackishBelow, type DepthMethod } from "./cast/depth.ts";
export { type SegmentationParameters, segmentationDefaults } from "./cast/descent.ts";
export { type Dip, findDips } from "./cast/dips.ts";
export * from "./cast/layer-means.ts";
export { type LayerChoice, layerWidthFor } from "./cast/layer-width.ts";
export type { MeanColumn } from "./cast/mean-column.ts";
export * from "./cast/pressure-from-depth.ts";
export { flagReversals, type ReversalParameters, reversalDefaults } from "./cast/pressure-reversals.ts";
export { printedResolution } from "./cast/printed-resolution.ts";
export {
  matchResponse,
  type ResponseParameters,
  responseDefaults,
  type SensorResponse,
} from "./cast/response-matching.ts";
export { median, pressureNoise, quantile, robustSd } from "./cast/robust.ts";
export { type RowTimes, rowTimes } from "./cast/row-times.ts";
export { type CastStyle, deepestOf, segment, styleOf } from "./cast/segmentation.ts";
export * from "./cast/series-signs.ts";
export { type SmoothingParameters, smoothColumns } from "./cast/smooth-columns.ts";
export * from "./cast/sound-speed-profile.ts";
export { type DespikeParameters, flagSpikes, type SpikeHeights } from "./cast/spikes.ts";
export * from "./problem.ts";
export { aggregate } from "./quality/aggregate.ts";
export * from "./quality/attenuated-signal.ts";
export { type ChosenTests, noChosenTests } from "./quality/chosen-tests.ts";
export * from "./quality/climatology.ts";
export { decidedBy } from "./quality/decided-by.ts";
export { densityInversion, potentialDensity } from "./quality/density-inversion.ts";
export * from "./quality/density-inversion-layers.ts";
export * from "./quality/digit-rollover.ts";
export * from "./quality/end-spike.ts";
export { positionFlag, positionFlags, timeFlag } from "./quality/fix-flags.ts";
export * from "./quality/flag.ts";
export * from "./quality/flag-schemes.ts";
export type { Worst } from "./quality/flags-of-test.ts";
export * from "./quality/flat-line.ts";
export * from "./quality/freezing-point.ts";
export * from "./quality/gap.ts";
export * from "./quality/gradient-vertical.ts";
export * from "./quality/gross-range.ts";
export { layerTests } from "./quality/inherited-flags.ts";
export { type JudgeParameters, judgeCast } from "./quality/judge-cast.ts";
export * from "./quality/judge-neighbour.ts";
export * from "./quality/judged-rows.ts";
export * from "./quality/location.ts";
export { type ManualFlag, rowsInRange } from "./quality/manual-flags.ts";
export * from "./quality/multivariate.ts";
export * from "./quality/neighbour.ts";
export { noPlaceTests, type PlaceTests } from "./quality/place-tests.ts";
export { type OwnLimits, presetWith } from "./quality/preset-with.ts";
export * from "./quality/presets.ts";
export * from "./quality/pressure-increasing.ts";
export { type RateOfChangeLimits, rateOfChange } from "./quality/rate-of-change.ts";
export * from "./quality/rated-pressure.ts";
export { type SeaRegion, seaRegions } from "./quality/regional-range.ts";
export * from "./quality/row-time-flags.ts";
export * from "./quality/satellites.ts";
export { sourceFlagTest } from "./quality/source-flags.ts";
export * from "./quality/spike.ts";
export * from "./quality/spike-return.ts";
export * from "./quality/spike-vertical.ts";
export * from "./quality/stuck.ts";
export * from "./quality/stuck-value.ts";
export * from "./seawater/absolute-salinity.ts";
export { anomalyRatio, anomalyRatioRange, hasAnomalyRatio } from "./seawater/anomaly-ratio.ts";
export * from "./seawater/buoyancy-frequency.ts";
export * from "./seawater/composition-term.ts";
export * from "./seawater/conductivity-from-salinity.ts";
export * from "./seawater/conservative-temperature.ts";
export * from "./seawater/density.ts";
export * from "./seawater/density-eos80.ts";
export * from "./seawater/depth.ts";
export * from "./seawater/depth-from-density.ts";
export * from "./seawater/depth-uncertainty.ts";
export * from "./seawater/depth-unesco.ts";
export * from "./seawater/freezing-temperature.ts";
export * from "./seawater/freezing-temperature-eos80.ts";
export * from "./seawater/haline-contraction.ts";
export * from "./seawater/oxygen-solubility.ts";
export {
  potentialTemperature0,
  potentialTemperature0Column,
  potentialTemperature0Range,
} from "./seawater/potential-temperature.ts";
export * from "./seawater/potential-temperature-eos80.ts";
export * from "./seawater/practical-salinity.ts";
export * from "./seawater/pressure-saunders.ts";
export * from "./seawater/reference-salinity.ts";
export * from "./seawater/sound-speed.ts";
export * from "./seawater/sound-speed-chen-millero.ts";
export * from "./seawater/sound-speed-del-grosso.ts";
export * from "./seawater/specific-conductance.ts";
export * from "./seawater/spiciness.ts";
export * from "./seawater/standard-uncertainty.ts";
export * from "./seawater/temperature-scale.ts";
export * from "./seawater/thermal-expansion.ts";
export type { ValidityRange } from "./seawater/validity-range.ts";
export * from "./text/cells.ts";
export * from "./text/nearest.ts";
export * from "./text/number.ts";
export * from "./time/calendar.ts";
export * from "./time/cf-time.ts";
export * from "./time/iso-duration.ts";
export * from "./time/iso-time.ts";
export { convertUnits, convertUnitsColumn, sameDimension } from "./units/convert.ts";
export { involvesTemperature, isDimensionlessUnit, isTimeReference, parseUnits } from "./units/parse.ts";
export { suggestUnits, type UnitSuggestion } from "./units/suggest.ts";
export { unitTableVersion } from "./units/table.generated.ts";
export type { Timestamp } from "./units/timestamp.ts";
export type { Unit, UnitPart } from "./units/unit.ts";
export { parseStandardNameTable } from "./vocabulary/parse-standard-names.ts";
export type { StandardName, StandardNameTable } from "./vocabulary/standard-name-table.ts";
export * from "./vocabulary/standard-names.ts";
export * from "./vocabulary/word-lists.ts";
