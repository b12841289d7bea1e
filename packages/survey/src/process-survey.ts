import type { SurveySheet } from "@wherry/contracts";
import { instrumentOf, type RecipeSettings, settingsFromSheet, sheetOfCast } from "@wherry/converter";
import {
  type BorrowedOffset,
  type BurstMeans,
  borrowedOffset,
  burstMeans,
  type Cast,
  formerProfile,
  judgeNeighbour,
  type LayerMeans,
  layerMeans,
  layerWidthFor,
  type ManualFlag,
} from "@wherry/core";
import { sharingResults } from "./share-results.ts";
import type { RunOptions } from "./understand-files.ts";
import { inOrder, type Workers } from "./workers.ts";

export interface ProcessedSurvey {
  readonly casts: readonly Cast[];
  /** Layer means of the profiles, by cast id. */
  readonly layers: ReadonlyMap<string, LayerMeans>;
  /** Means of the bursts of series, by cast id; empty unless the recipe asks for them. */
  readonly bursts: ReadonlyMap<string, BurstMeans>;
  /** Settings of the survey as used, for the processing record. */
  readonly recipe: RecipeSettings;
}

export interface ProcessOptions extends RunOptions {
  /** What persons judged, by cast id. */
  readonly manual?: ReadonlyMap<string, readonly ManualFlag[]>;
}

/** Cleans, computes, judges and averages every cast. One width of layers serves the whole survey. */
export async function processSurvey(
  sheet: SurveySheet,
  casts: readonly Cast[],
  workers: Workers,
  { signal, onProgress, manual }: ProcessOptions,
): Promise<ProcessedSurvey> {
  const settings = settingsFromSheet(sheet, null);
  const cleaned = await inOrder(casts, workers.jobs, async (cast, index) => {
    // An interruption is heard only between turns of the event loop.
    if (index % 16 === 0) await new Promise(setImmediate);
    signal?.throwIfAborted();
    onProgress?.(index, casts.length, cast.id);
    const own = sheetOfCast(sheet, cast.id);
    const borrowed = borrowing(own, cast, casts);
    const processed = await workers.process({
      cast,
      settings: settingsFromSheet(own, instrumentOf(cast, { sheet }), borrowed),
      manual: manual?.get(cast.id) ?? [],
    });
    return sharingResults(processed);
  });
  const { neighbour } = settings.quality;
  const compares = Object.keys(neighbour.limits).length > 0;
  const processed = cleaned.map((cast) => {
    const former = cast.finished || !compares ? null : formerProfile(cast, cleaned, neighbour);
    return former === null ? cast : judgeNeighbour(cast, former, neighbour);
  });
  const profiles = processed.filter(({ kind, rows }) => kind === "profile" && rows > 0);
  const raw = profiles.filter(({ state }) => state.processing !== "averaged");
  const width = settings.layers.width ?? (raw.length > 0 ? layerWidthFor(raw, settings.layers) : null);
  const layers = new Map(
    profiles.map((cast) => [
      cast.id,
      // Levels that came averaged stay the source's own unless the sheet asks for a width.
      cast.finished?.layers ??
        layerMeans(cast, {
          ...settings.layers,
          width: cast.state.processing === "averaged" ? settings.layers.width : width,
        }),
    ]),
  );
  const series = processed.filter(({ kind, rows }) => kind === "fixed-depth" && rows > 0);
  const bursts = new Map(
    settings.bursts.mean ? series.map((cast) => [cast.id, burstMeans(cast, settings.bursts)]) : [],
  );
  return { casts: processed, layers, bursts, recipe: { ...settings, layers: { ...settings.layers, width } } };
}

/** The offset that a cast borrows from those of the same instrument on the same day, where the sheet says so. */
function borrowing(sheet: SurveySheet, cast: Cast, casts: readonly Cast[]): BorrowedOffset | null {
  if (sheet.processing?.offset_without_air !== "borrowed" || Number.isNaN(cast.time)) return null;
  const instrument = JSON.stringify(instrumentOf(cast, { sheet }));
  const day = Math.floor(cast.time / 86400);
  const others = casts.filter(
    (other) =>
      Math.floor(other.time / 86400) === day && JSON.stringify(instrumentOf(other, { sheet })) === instrument,
  );
  return borrowedOffset(
    cast,
    others,
    settingsFromSheet(sheet, instrumentOf(cast, { sheet })).atmosphericOffset,
  );
}
