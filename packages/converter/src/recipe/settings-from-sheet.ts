import type { Instrument, SurveySheet } from "@wherry/contracts";
import { defaultSettings, type RecipeSettings } from "./settings.ts";

/** Sea pressure of a metre of water, near enough for a rated depth: common practice, no source. */
const DBAR_PER_METRE = 1;

/**
 * The settings that a sheet asks for; what it leaves open keeps its default.
 *
 * @param instrument of the cast, for its rated pressure; null for the settings of the survey as a whole
 */
export function settingsFromSheet(sheet: SurveySheet, instrument: Instrument | null): RecipeSettings {
  const { preset, bin_width, bin_coordinate, direction } = sheet.processing ?? {};
  const { layers, quality } = defaultSettings;
  const ratedDepth = instrument?.rated_depth;
  return {
    ...defaultSettings,
    preset: preset ?? defaultSettings.preset,
    quality: {
      ...quality,
      ratedPressure:
        instrument?.rated_pressure ?? (ratedDepth === undefined ? null : ratedDepth * DBAR_PER_METRE),
    },
    layers: {
      width: typeof bin_width === "number" ? bin_width : layers.width,
      coordinate: bin_coordinate ?? layers.coordinate,
      direction: direction ?? layers.direction,
    },
  };
}
