import type { Cast, LayerMeans } from "@wherry/core";
import { type Dataset, type MemoryVariable, memoryDataset } from "@wherry/netcdf";
import { arrangeProfiles } from "./arrange-profiles.ts";
import { type ColumnGroup, groupColumns, joined, type RowPlaces, rowPlaces } from "./column-groups.ts";
import { coverageAttributes } from "./coverage.ts";
import { depthComment, type RowLayout, referencesOf, verticalVariable } from "./data-variables.ts";
import { containerVariables, equipmentOf } from "./equipment.ts";
import { featureVariables } from "./feature-variables.ts";
import { keywordNames, rowSizeVariable } from "./full-dataset.ts";
import { globalAttributes } from "./global-attributes.ts";
import { historyText } from "./history.ts";
import { layerCounts } from "./layer-counts.ts";
import { type LayerWords, layerWordsOf } from "./layer-words.ts";
import { meanVariables } from "./mean-variables.ts";
import { type Stored, store } from "./storage.ts";
import { generalTarget } from "./target.ts";
import type { WritingContext } from "./writing-context.ts";
import { DATUM_ASSUMED, inTimeOrder, profileSource } from "./writing-words.ts";

/**
 * Layer means of every cast: profiles arranged as the target of the context takes them, with the layers as bounds of
 * the vertical coordinate where the arrangement can tell them.
 *
 * @param casts  full casts, none a fixed-depth series; they are written in time order
 * @param means  their layer means by cast id, all in the same coordinate and direction; a cast without any has
 *               no layers
 * @param suffix added to the survey's id
 * @param isAlone whether the file is one of a cast by design
 * @returns null if there is no layer in any cast
 */
export function binnedDataset(
  casts: readonly Cast[],
  means: ReadonlyMap<string, LayerMeans>,
  context: WritingContext,
  suffix = "binned",
  isAlone = false,
): Dataset | null {
  const ordered = inTimeOrder(casts);
  const layers = ordered.map(({ id }) => means.get(id) ?? null);
  const places = rowPlaces(layers.map((own) => own?.centres.length ?? 0));
  const words = layerWordsOf(layers);
  if (places.total === 0 || words === null) return null;
  const equipment = equipmentOf(ordered, context);
  const feature = featureVariables(ordered, ["profile"], equipment, context);
  const groups = groupColumns(ordered);
  const layout: RowLayout = {
    dimension: "obs",
    coordinates: `time latitude longitude ${words.coordinate} profile_id`,
    vertical: words.coordinate,
    cellMethods: words.width === null ? null : `${words.coordinate}: mean (${words.rows})`,
    prefix: words.width === null ? "" : "layer mean of ",
    verticalName: words.centreName,
    verticalAxis: true,
    equipment,
  };
  const parts = layerVariables(groups, ordered, layers, places, layout, words, context);
  const content = {
    dimensions: [
      { name: "profile", length: ordered.length },
      { name: "obs", length: places.total },
      ...(words.width === null ? [] : [{ name: "bound", length: 2 }]),
      ...feature.dimensions,
    ],
    attributes: globalAttributes(
      ordered,
      {
        featureType: "profile",
        suffix,
        title: words.title,
        summary: words.summary,
        processingLevel: words.level,
        history: historyText(ordered, context.created, context.software, words.history),
        source: profileSource(equipment),
      },
      keywordNames(groups),
      equipment,
      context,
      coverageAttributes(ordered, parts.vertical, words.resolution, null),
      [...new Set(groups.flatMap((group) => referencesOf(group)?.split("; ") ?? []))],
    ),
    variables: [
      feature.identity,
      rowSizeVariable(places, "number of layers of the cast"),
      ...feature.coordinates,
      ...feature.facts,
      ...layerCounts(ordered, layers, words),
      ...parts.variables,
      ...containerVariables(equipment, DATUM_ASSUMED),
    ],
  };
  return memoryDataset(arrangeProfiles(content, context.target ?? generalTarget, isAlone));
}

function layerVariables(
  groups: readonly ColumnGroup[],
  casts: readonly Cast[],
  layers: readonly (LayerMeans | null)[],
  places: RowPlaces,
  layout: RowLayout,
  words: LayerWords,
  context: WritingContext,
): { variables: MemoryVariable[]; vertical: { stored: Stored; units: string } | null } {
  const centres = store(
    joined(places, (cast) => layers[cast]?.centres ?? null),
    "float",
  );
  const vertical = verticalGroup(groups, words);
  const rowsOf = (cast: number, column: string) =>
    layers[cast]?.columns.get(column)?.mean ??
    (column === words.coordinate ? layers[cast]?.centres : null) ??
    null;
  const quantities = meanVariables(
    groups.filter(({ name }) => name !== words.coordinate),
    casts,
    (cast) => layers[cast]?.columns ?? null,
    places,
    layout,
    words.width === null
      ? null
      : {
          of: "the layer mean of",
          within: "in the layer",
          methods: `${words.coordinate}: standard_deviation (${words.rows})`,
        },
    context,
    rowsOf,
  );
  return {
    vertical: { stored: centres, units: vertical.quantity.units },
    variables: [
      verticalVariable(vertical, centres, layout, {
        comment: words.coordinate === "depth" ? depthComment(vertical) : null,
        ...(words.width === null ? {} : { bounds: `${words.coordinate}_bounds` }),
      }),
      ...(words.width === null ? [] : [boundsVariable(layers, places, words)]),
      ...quantities,
    ],
  };
}

/** The group of the layers' coordinate; layers have centres even where no cast has such a column. */
function verticalGroup(groups: readonly ColumnGroup[], { coordinate }: LayerWords): ColumnGroup {
  const group = groups.find(({ name }) => name === coordinate);
  if (group) return group;
  throw new RangeError(`layers are counted in ${coordinate}, which no cast has`);
}

function boundsVariable(
  layers: readonly (LayerMeans | null)[],
  places: RowPlaces,
  { coordinate }: LayerWords,
): MemoryVariable {
  const data = new Float32Array(2 * places.total);
  for (const [cast, offset] of places.offsets.entries()) {
    const own = layers[cast];
    if (!own) continue;
    data.set(own.bounds, 2 * offset);
  }
  return {
    name: `${coordinate}_bounds`,
    type: "float",
    dimensions: ["obs", "bound"],
    data,
    attributes: [],
  };
}
