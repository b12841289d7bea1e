import type { Cast, StepRecord } from "../cast/cast.ts";
import { chosenRecord } from "./chosen-tests.ts";
import type { JudgeParameters } from "./judge-cast.ts";
import { judgedRegion } from "./place-tests.ts";
import { type JudgedQuantity, spikeReturnShared, type Threshold } from "./presets.ts";

type Value = StepRecord["parameters"][string];

/** Every threshold that judged a cast, with its status, as the processing record and the metadata show them. */
export function thresholdsUsed(
  cast: Cast,
  { preset, sensorRanges, ratedPressure, layerWidth, reversalTolerance, chosen, place }: JudgeParameters,
): Record<string, Value> {
  const used: Record<string, Value> = { preset: preset.name, ...chosenRecord(chosen, cast.columns) };
  const note = (name: string, threshold: Threshold<number | readonly number[]> | null | undefined) => {
    if (threshold == null) return;
    used[name] = plain(threshold.value);
    used[`${name}.status`] = threshold.status;
  };
  for (const [name, range] of Object.entries(preset.ranges)) {
    if (!cast.columns.has(name)) continue;
    const sheet = sensorRanges[name as JudgedQuantity];
    if (sheet === undefined) note(`gross_range.${name}.sensorRange`, range.sensor);
    else {
      used[`gross_range.${name}.sensorRange`] = plain(sheet);
      used[`gross_range.${name}.sensorRange.status`] = "data sheet";
    }
    note(`gross_range.${name}.expectedRange`, range.expected);
  }
  for (const [name, spike] of Object.entries(preset.spikeReturn)) {
    if (!cast.columns.has(name)) continue;
    note(`spike_return.${name}.floor`, spike.floor);
    if (spike.floorPart.value > 0) note(`spike_return.${name}.floorPart`, spike.floorPart);
    note(`spike_return.${name}.badAbove`, spike.badAbove);
  }
  if (Object.keys(preset.spikeReturn).length > 0)
    for (const [name, threshold] of Object.entries(spikeReturnShared))
      note(`spike_return.${name}`, threshold);
  for (const [name, limits] of Object.entries(preset.spikeVertical)) {
    note(`spike_vertical.${name}.shallow`, limits.shallow);
    note(`spike_vertical.${name}.deep`, limits.deep);
  }
  const region = judgedRegion(cast, place);
  if (region !== null) {
    used["regional_range.region"] = region.name;
    for (const name of ["temperature", "salinity"] as const)
      if (cast.columns.has(name)) note(`regional_range.${name}`, region[name]);
  }
  if (place.surfaceLayer !== null && cast.kind === "profile") {
    used["surface_layer.limit"] = place.surfaceLayer;
    used["surface_layer.limit.status"] = "user";
  }
  note("freezing_point.tolerance", preset.freezingTolerance);
  if (ratedPressure !== null) used["rated_pressure.ratedPressure"] = ratedPressure;
  if (cast.kind === "fixed-depth") {
    note("flat_line.questionableAfter", preset.flatLineAfter);
    note("rate_of_change.deviations", preset.rateDeviations);
    note("rate_of_change.windowHours", preset.rateWindow);
    for (const [name, spike] of Object.entries(preset.spikeReturn))
      if (name !== "pressure" && cast.columns.has(name)) note(`rate_of_change.${name}.floor`, spike.floor);
    note("gap.intervals", preset.longestGap);
    return used;
  }
  note("density_inversion.tolerance", preset.densityInversion.tolerance);
  if (preset.densityInversion.form === "layers") {
    used["density_inversion.layerWidth"] = layerWidth;
    used["density_inversion.reversalTolerance"] = reversalTolerance;
  }
  if (preset.stuck.form === "travel") {
    note("stuck.fewestRows", preset.stuck.fewestRows);
    note("stuck.leastTravel", preset.stuck.leastTravel);
    note("stuck.leastPart", preset.stuck.leastPart);
    note("stuck.finePrint.temperature", preset.stuck.finePrint?.temperature);
    note("stuck.finePrint.conductivityPart", preset.stuck.finePrint?.conductivityPart);
  }
  return used;
}

/** Open ends of a range are a word: JSON has no infinity. */
function plain(value: number | readonly number[]): Value {
  if (typeof value === "number") return value;
  return value.map((each) => (Number.isFinite(each) ? each : "open"));
}
