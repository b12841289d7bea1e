import type { Calibration, Instrument, Sensor, SurveySheet } from "@wherry/contracts";
import { type BorrowedOffset, convertUnits } from "@wherry/core";
import { lineOfCast } from "../sheet/line-of-cast.ts";
import { readRecipe } from "./read-recipe.ts";
import { type DatedCorrection, defaultSettings, type RecipeSettings } from "./settings.ts";

/** Sea pressure of a metre of water, near enough for a rated depth: common practice, no source. */
const DBAR_PER_METRE = 1;

/**
 * The settings that a sheet asks for; what it leaves open keeps the sheet's recipe or else the default.
 *
 * @param instrument of the cast, for its rated pressure, its sensors and its clock; null for the settings of the
 *                   survey as a whole
 * @param borrowed   offset that the cast borrows, where the sheet asks for that and the cast needs one
 */
export function settingsFromSheet(
  sheet: SurveySheet,
  instrument: Instrument | null,
  borrowed: BorrowedOffset | null = null,
): RecipeSettings {
  const choices = sheet.processing ?? {};
  const base = recipeOf(sheet);
  const { layers, quality, response } = base;
  const { temperature, conductivity } = instrument?.sensors ?? {};
  const ratedDepth = instrument?.rated_depth;
  const slowest = Math.max(temperature?.response_time ?? 0, conductivity?.response_time ?? 0);
  return {
    ...base,
    preset: choices.preset ?? base.preset,
    clock: { ...base.clock, pairs: instrument?.clock ?? base.clock.pairs },
    calibration: {
      temperature: correctionsOf(temperature, "degree_C") ?? base.calibration.temperature,
      conductivity: correctionsOf(conductivity, "mS cm-1") ?? base.calibration.conductivity,
      pressure: correctionsOf(instrument?.sensors?.pressure, "dbar") ?? base.calibration.pressure,
      salinityOffset: choices.salinity_offset ?? base.calibration.salinityOffset,
    },
    atmosphericOffset: { ...base.atmosphericOffset, given: base.atmosphericOffset.given ?? borrowed },
    segmentation: {
      ...base.segmentation,
      responseTime: slowest > 0 ? slowest : base.segmentation.responseTime,
    },
    response: {
      ...response,
      temperature: responseOf(temperature, response.temperature),
      conductivity: responseOf(conductivity, response.conductivity),
      delayFromData: choices.delay_from_data ?? response.delayFromData,
    },
    cell: {
      size: conductivity?.cell_inertia?.size ?? base.cell.size,
      relaxationTime: conductivity?.cell_inertia?.relaxation_time ?? base.cell.relaxationTime,
    },
    smoothing: { window: choices.smoothing ?? base.smoothing.window },
    quality: {
      ...quality,
      ratedPressure:
        instrument?.rated_pressure ??
        (ratedDepth === undefined ? quality.ratedPressure : ratedDepth * DBAR_PER_METRE),
    },
    layers: {
      width: typeof choices.bin_width === "number" ? choices.bin_width : layers.width,
      coordinate: choices.bin_coordinate ?? layers.coordinate,
      direction: choices.direction ?? layers.direction,
      reason: choices.direction_reason ?? layers.reason,
    },
  };
}

/** The sheet with the processing choices of one of its casts, which go before those of the survey. */
export function sheetOfCast(sheet: SurveySheet, id: string): SurveySheet {
  const own = lineOfCast(sheet, id)?.processing;
  return own === undefined ? sheet : { ...sheet, processing: { ...sheet.processing, ...own } };
}

/** The recipe that stands in the sheet; a faulty one never gets here, reading the sheet refuses it. */
function recipeOf(sheet: SurveySheet): RecipeSettings {
  const recipe = sheet.processing?.recipe;
  if (recipe === undefined) return defaultSettings;
  const read = readRecipe({ version: 1, ...recipe }, { file: "sheet" });
  if (!read.ok) throw new TypeError(read.problems[0].message);
  return read.value;
}

const responseOf = (sensor: Sensor | undefined, base: RecipeSettings["response"]["temperature"]) => ({
  time: sensor?.response_time ?? base.time,
  delay: sensor?.delay ?? base.delay,
});

/** Corrections of a sensor in house units; null if the sheet gives none. */
function correctionsOf(sensor: Sensor | undefined, units: string): readonly DatedCorrection[] | null {
  const entries = (sensor?.calibrations ?? []).filter(
    ({ slope, offset }) => slope !== undefined || offset !== undefined,
  );
  if (sensor === undefined || entries.length === 0) return null;
  // x in the sensor's unit is a x + b in the house unit; a correction there is another one here
  const b = convertUnits(0, sensor.units, units);
  const a = convertUnits(1, sensor.units, units) - b;
  return entries.map(({ date, slope = 1, offset = 0, after_cleaning, document }: Calibration) => ({
    date,
    slope,
    offset: a * offset + b - slope * b,
    ...(after_cleaning === undefined ? {} : { afterCleaning: after_cleaning }),
    ...(document === undefined ? {} : { document }),
  }));
}
