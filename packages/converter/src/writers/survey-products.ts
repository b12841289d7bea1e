import {
  type BurstMeans,
  type Cast,
  type LayerMeans,
  type SoundSpeedProfileParameters,
  soundSpeedProfileDefaults,
} from "@wherry/core";
import type { Dataset } from "@wherry/netcdf";
import { binnedDataset } from "./binned-dataset.ts";
import { burstDataset } from "./burst-dataset.ts";
import { fullDataset } from "./full-dataset.ts";
import { seriesDataset } from "./series-dataset.ts";
import { soundSpeedDataset } from "./sound-speed-dataset.ts";
import type { WritingContext } from "./writing-context.ts";

export const PRODUCT_KINDS = ["full", "binned", "series", "soundspeed"] as const;
export type ProductKind = (typeof PRODUCT_KINDS)[number];

/** A survey ready to be written. */
export interface SurveyInput {
  /** Processed casts, profiles and series. */
  readonly casts: readonly Cast[];
  /** Layer means of the profiles, by cast id. */
  readonly layers: ReadonlyMap<string, LayerMeans>;
  /** Means of the bursts of series, by cast id, where they are asked for. */
  readonly bursts?: ReadonlyMap<string, BurstMeans>;
  readonly context: WritingContext;
  /** Which products to make; full, binned and series unless given. */
  readonly products?: ReadonlySet<ProductKind>;
  /** How sound-speed profiles are thinned and carried on; by the defaults unless given. */
  readonly soundSpeed?: SoundSpeedProfileParameters;
  /** One file for each cast instead of one for all. */
  readonly perCast?: boolean;
}

/** A product with the stem of its file names: `.nc`, `.csv` and `.csv-metadata.json` are added to it. */
export interface SurveyProduct {
  readonly kind: ProductKind | "bursts";
  readonly stem: string;
  readonly dataset: Dataset;
}

const DEFAULT: ReadonlySet<ProductKind> = new Set(["full", "binned", "series"]);

/**
 * The data sets of a survey, made one by one as they are asked for: `<id>_full`, `<id>_binned` and a
 * `<id>_series_<cast>` for each fixed-depth series, with a `<id>_series_<cast>_bursts` where means of bursts are asked
 * for; per cast `<id>_<cast>_full` and so on. Sound-speed profiles are
 * one `<id>_soundspeed` either way: each tells the change since the cast before.
 */
export function* surveyProducts(survey: SurveyInput): Generator<SurveyProduct> {
  const { casts, layers, context, products = DEFAULT, perCast = false } = survey;
  const id = context.sheet.survey.id;
  const profiles = casts.filter(({ kind, rows }) => kind === "profile" && rows > 0);
  const groups = perCast ? profiles.map((cast) => [cast]) : profiles.length > 0 ? [profiles] : [];
  for (const group of groups) {
    const own = perCast ? `${group[0]!.id}_` : "";
    // of layer means that came as such there are no rows
    const ofRows = group.filter(({ finished }) => !finished?.layers);
    if (products.has("full") && ofRows.length > 0)
      yield {
        kind: "full",
        stem: `${id}_${own}full`,
        dataset: fullDataset(ofRows, context, suffix(own, "full"), perCast),
      };
    if (!products.has("binned")) continue;
    const binned = binnedDataset(group, layers, context, suffix(own, "binned"), perCast);
    if (binned) yield { kind: "binned", stem: `${id}_${own}binned`, dataset: binned };
  }
  if (products.has("soundspeed")) {
    const { soundSpeed = soundSpeedProfileDefaults } = survey;
    const dataset = soundSpeedDataset(profiles, layers, context, soundSpeed);
    if (dataset) yield { kind: "soundspeed", stem: `${id}_soundspeed`, dataset };
  }
  if (!products.has("series")) return;
  for (const cast of casts) {
    if (cast.kind !== "fixed-depth" || cast.rows === 0) continue;
    const stem = perCast ? `${id}_${cast.id}_series` : `${id}_series_${cast.id}`;
    yield { kind: "series", stem, dataset: seriesDataset(cast, context) };
    const bursts = survey.bursts?.get(cast.id);
    const dataset = bursts ? burstDataset(cast, bursts, context) : null;
    if (dataset) yield { kind: "bursts", stem: `${stem}_bursts`, dataset };
  }
}

const suffix = (own: string, kind: string): string => `${own.replace(/_$/, own === "" ? "" : "-")}${kind}`;
