import {
  addComputed,
  addPressureFromDepth,
  type Cast,
  compareDirections,
  correctCellInertia,
  correctClock,
  correctSensors,
  type DespikeParameters,
  flagReversals,
  flagSpikes,
  judgeCast,
  layerWidthFor,
  type ManualFlag,
  matchResponse,
  type Preset,
  presets,
  presetWith,
  pressureNoise,
  type SpikeHeights,
  segment,
  seriesSigns,
  skipped,
  smoothColumns,
  spikeReturnShared,
  subtractAtmosphere,
  valuesOf,
  withStep,
} from "@wherry/core";
import { clockPairs, corrections } from "./dated-settings.ts";
import type { RecipeSettings } from "./settings.ts";

/**
 * Runs the one ordered list of steps on a cast: atmospheric offset, segmentation, despiking, pressure reversals,
 * computed quantities, quality tests. What was done to the data before they came, or cannot be done, is skipped
 * with its reason in the record of the step. A cast that came finished stays as it is.
 *
 * Never fails: a record that is empty, broken or no cast comes out with what could be done, and the steps say so.
 * Processing a cast that was processed before is refused with a RangeError: a step is never applied twice.
 *
 * @param manual what persons judged of this cast; it is set after the tests and wins over them
 */
export function processCast(cast: Cast, settings: RecipeSettings, manual: readonly ManualFlag[] = []): Cast {
  if (cast.steps.some(({ step }) => step === "quality tests"))
    throw new RangeError(`cast ${cast.id} has been processed already`);
  if (cast.finished)
    return withStep(cast, skipped("all steps", "the file is a product of this program, finished before"));
  const preset = presetWith(presets[settings.preset], settings.quality);
  const despiking = despikingOf(preset);
  const levels = cast.state.processing === "averaged" || cast.elapsed === null;

  let result = correctClock(cast, { ...settings.clock, pairs: clockPairs(settings.clock.pairs) });
  result = correctSensors(result, corrections(settings.calibration));
  result = subtractAtmosphere(result, settings.atmosphericOffset);
  result = addPressureFromDepth(result);
  // spikes of pressure along time must be known before the cast is cut: they would be its deepest row
  if (!levels) result = flagSpikes(result, ["pressure"], despiking);
  result = segment(result, settings.segmentation, settings.atmosphericOffset.air);
  result = levels
    ? withStep(result, skipped("despiking", "levels already averaged, or rows without times"))
    : flagSpikes(result, ["temperature", "conductivity"], despiking);
  result = seriesSigns(result, settings.series);
  result = matchResponse(result, settings.response);
  result = correctCellInertia(result, settings.cell);
  result =
    cast.kind === "fixed-depth"
      ? withStep(result, skipped("pressure reversals", "the cast stays at one depth"))
      : flagReversals(result, settings.reversals);
  result = smoothColumns(result, settings.smoothing);
  result = addComputed(result, settings.depth.method);
  // on levels the rule runs as a quality test only
  result = flagSpikes(result, levels ? ["temperature", "conductivity", "salinity"] : ["salinity"], despiking);

  const pressure = valuesOf(result, "pressure");
  const judged = judgeCast(result, {
    preset,
    sensorRanges: settings.quality.sensorRanges,
    ratedPressure: settings.quality.ratedPressure ?? cast.instrument.ratedPressure,
    layerWidth:
      settings.layers.width ?? layerWidthFor([result], { coordinate: "pressure", direction: "down" }),
    reversalTolerance: pressure === null ? 0 : settings.reversals.noiseFactor * pressureNoise(pressure),
    chosen: settings.quality.tests,
    manual,
    place: settings.quality,
  });
  return compareDirections(judged, settings.comparison);
}

/** The numbers of the rule spike_return that a preset stands for. */
function despikingOf(preset: Preset): DespikeParameters {
  const quantities: Record<string, SpikeHeights> = {};
  for (const [name, spike] of Object.entries(preset.spikeReturn))
    quantities[name] = {
      floor: spike.floor.value,
      floorPart: spike.floorPart.value,
      badAbove: spike.badAbove?.value ?? null,
    };
  const shared = spikeReturnShared;
  return {
    gradientFactor: shared.gradientFactor.value,
    windowRows: shared.windowRows.value,
    longest: shared.longest.value,
    spacingFloor: shared.spacingFloor.value,
    noiseFactor: shared.noiseFactor.value,
    quantities,
  };
}
