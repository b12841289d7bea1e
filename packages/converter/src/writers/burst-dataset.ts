import type { BurstMeans, Cast } from "@wherry/core";
import { type Dataset, memoryDataset } from "@wherry/netcdf";
import { arrangeSeries } from "./arrange-series.ts";
import { groupColumns, rowPlaces } from "./column-groups.ts";
import { coverageAttributes } from "./coverage.ts";
import { referencesOf } from "./data-variables.ts";
import { containerVariables, equipmentOf } from "./equipment.ts";
import { featureVariables } from "./feature-variables.ts";
import { flagVariable } from "./flag-variables.ts";
import { keywordNames } from "./full-dataset.ts";
import { globalAttributes } from "./global-attributes.ts";
import { historyText } from "./history.ts";
import { meanVariables } from "./mean-variables.ts";
import { regularInterval, seriesLayout, seriesTimes, timeVariable, verticalReach } from "./series-dataset.ts";
import { attributes, fillAttribute, store } from "./storage.ts";
import { generalTarget } from "./target.ts";
import type { WritingContext } from "./writing-context.ts";
import { DATUM_ASSUMED, seriesSource } from "./writing-words.ts";

/**
 * Means of the bursts of a series at one fixed depth, arranged like the series itself, with the times of the first and
 * the last row of each burst as bounds.
 *
 * @returns null if no bursts were found
 */
export function burstDataset(cast: Cast, bursts: BurstMeans, context: WritingContext): Dataset | null {
  const count = bursts.times.length;
  if (count === 0) return null;
  const casts = [cast];
  const groups = groupColumns(casts);
  const equipment = equipmentOf(casts, context);
  const feature = featureVariables(casts, [], equipment, context);
  const times = seriesTimes(cast, bursts.times);
  const { dimension, isOrdered, nominal, layout, atDepth } = seriesLayout(cast, times, groups, equipment);
  const rows = "rows at the fixed depth flagged 1 or 2";
  const bounds = store(seriesTimes(cast, bursts.bounds), "double");
  const depth = groups.find(({ name }) => name === layout.vertical);
  const depths = depth && bursts.columns.get(depth.column)?.mean;
  const vertical = verticalReach(
    depth && depths ? { stored: store(depths, depth.type), units: depth.quantity.units } : null,
    nominal,
  );
  const means = meanVariables(
    groups,
    casts,
    () => bursts.columns,
    rowPlaces([count]),
    {
      ...layout,
      cellMethods: `time: mean (${rows}) latitude: longitude: ${atDepth}point`,
      prefix: "burst mean of ",
      verticalName: "depth of the sensor below the water surface, mean of the burst",
    },
    {
      of: "the burst mean of",
      within: "in the burst",
      methods: `time: standard_deviation (${rows}) latitude: longitude: ${atDepth}point`,
    },
    context,
    (_, column) => bursts.columns.get(column)?.mean ?? null,
  );
  const content = {
    dimensions: [{ name: dimension, length: count }, { name: "bound", length: 2 }, ...feature.dimensions],
    attributes: globalAttributes(
      casts,
      {
        featureType: "timeSeries",
        suffix: `series-${cast.id}-bursts`,
        title: `burst means of series ${cast.id}`,
        summary:
          "Means of the bursts of a series at one fixed position, with the number of rows and the standard deviation in each burst and a quality flag.",
        processingLevel: "burst means",
        history: historyText(casts, context.created, context.software, [bursts.step.words]),
        source: seriesSource(equipment),
      },
      keywordNames(groups),
      equipment,
      context,
      coverageAttributes(casts, vertical, null, isOrdered ? regularInterval(times) : null, bounds.range),
      [...new Set(groups.flatMap((group) => referencesOf(group)?.split("; ") ?? []))],
    ),
    variables: [
      feature.identity,
      timeVariable(times, dimension, {
        longName: "mean time of the rows of the burst",
        bounds: "time_bounds",
        comment: "bounds: times of the first and the last row of the burst",
      }),
      {
        name: "time_bounds",
        type: "double" as const,
        dimensions: [dimension, "bound"],
        data: bounds.data,
        attributes: attributes(bounds.missing > 0 ? fillAttribute(bounds) : null),
      },
      ...feature.coordinates,
      ...(nominal === null ? [] : [nominal]),
      ...feature.facts,
      flagVariable("time_qc", "the time of the burst", [dimension], bursts.timeFlags, layout.coordinates),
      ...means,
      ...containerVariables(equipment, DATUM_ASSUMED),
    ],
  };
  return memoryDataset(arrangeSeries(content, context.target ?? generalTarget));
}
