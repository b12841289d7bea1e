import type { SurveySheet } from "@wherry/contracts";
import { instrumentOf, processCast, settingsFromSheet } from "@wherry/converter";
import { type Cast, type LayerMeans, layerMeans, layerWidthFor } from "@wherry/core";
import type { RunOptions } from "./understand-files.ts";

export interface ProcessedSurvey {
  readonly casts: readonly Cast[];
  /** Layer means of the profiles, by cast id. */
  readonly layers: ReadonlyMap<string, LayerMeans>;
  /** Settings of the survey as used, for the processing record. */
  readonly recipe: Readonly<Record<string, unknown>>;
}

/** Cleans, computes, judges and averages every cast. One width of layers serves the whole survey. */
export async function processSurvey(
  sheet: SurveySheet,
  casts: readonly Cast[],
  { signal, onProgress }: RunOptions,
): Promise<ProcessedSurvey> {
  const processed: Cast[] = [];
  for (const [index, cast] of casts.entries()) {
    // An interruption is heard only between turns of the event loop.
    if (index % 16 === 0) await new Promise(setImmediate);
    signal?.throwIfAborted();
    onProgress?.(index, casts.length, cast.id);
    processed.push(processCast(cast, settingsFromSheet(sheet, instrumentOf(cast, { sheet }))));
  }
  const settings = settingsFromSheet(sheet, null);
  const profiles = processed.filter(({ kind, rows }) => kind === "profile" && rows > 0);
  const raw = profiles.filter(({ state }) => state.processing !== "averaged");
  const width = settings.layers.width ?? (raw.length > 0 ? layerWidthFor(raw, settings.layers) : null);
  const layers = new Map(
    profiles.map((cast) => [
      cast.id,
      // Levels that came averaged stay the source's own unless the sheet asks for a width.
      layerMeans(cast, {
        ...settings.layers,
        width: cast.state.processing === "averaged" ? settings.layers.width : width,
      }),
    ]),
  );
  return { casts: processed, layers, recipe: { ...settings, layers: { ...settings.layers, width } } };
}
