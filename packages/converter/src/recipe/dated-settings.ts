import { type CalibrationParameters, type ClockPair, type Correction, parseIsoTime } from "@wherry/core";
import type { ClockReading, DatedCorrection, RecipeSettings } from "./settings.ts";

/** Epoch seconds of a date or a time in UTC; NaN if it is neither. */
export function epochOf(text: string): number {
  const read = parseIsoTime(text);
  return read.ok ? read.value.epochSeconds : Number.NaN;
}

/** Pairs with readable times; `readRecipe` and the sheet refuse others. */
export const clockPairs = (readings: readonly ClockReading[]): readonly ClockPair[] =>
  readings
    .map((reading) => ({ instrument: epochOf(reading.instrument), true: epochOf(reading.true) }))
    .filter((pair) => !Number.isNaN(pair.instrument + pair.true));

/** Corrections with readable dates, with what they leave out. */
export function corrections(calibration: RecipeSettings["calibration"]): CalibrationParameters {
  const dated = (entries: readonly DatedCorrection[]): readonly Correction[] =>
    entries
      .map((entry) => ({
        date: epochOf(entry.date),
        slope: entry.slope ?? 1,
        offset: entry.offset ?? 0,
        afterCleaning: entry.afterCleaning ?? false,
      }))
      .filter(({ date }) => !Number.isNaN(date));
  return {
    temperature: dated(calibration.temperature),
    conductivity: dated(calibration.conductivity),
    pressure: dated(calibration.pressure),
    salinityOffset: calibration.salinityOffset,
  };
}
