import {
  type Cast,
  Flag,
  type LayerMeans,
  type SoundSpeedProfile,
  type SoundSpeedProfileParameters,
  soundSpeedAt,
  soundSpeedProfile,
} from "@wherry/core";
import { type Dataset, type MemoryVariable, memoryDataset, numberAttribute } from "@wherry/netcdf";
import { arrangeProfiles } from "./arrange-profiles.ts";
import { type ColumnGroup, groupColumns, joined, type RowPlaces, rowPlaces } from "./column-groups.ts";
import { coverageAttributes } from "./coverage.ts";
import {
  dataVariable,
  depthComment,
  type RowLayout,
  referencesOf,
  rowAttributes,
  verticalVariable,
} from "./data-variables.ts";
import { containerVariables, equipmentOf } from "./equipment.ts";
import { featureVariables } from "./feature-variables.ts";
import { flagVariable, joinedFlags } from "./flag-variables.ts";
import { keywordNames, rowSizeVariable } from "./full-dataset.ts";
import { CAUTION, globalAttributes } from "./global-attributes.ts";
import { historyText } from "./history.ts";
import { attributes, BYTE_FILL, fillAttribute, rangeAttribute, store } from "./storage.ts";
import { generalTarget } from "./target.ts";
import { uncertaintyVariable } from "./uncertainty-variables.ts";
import type { WritingContext } from "./writing-context.ts";
import { DATUM_ASSUMED, inTimeOrder, profileSource } from "./writing-words.ts";

/** Where a point comes from. */
const ORIGINS = ["layer_mean", "carried_to_the_surface", "carried_below_the_deepest_layer"] as const;

/**
 * Sound speed against depth for everybody who corrects acoustic measurements: one profile per cast out of its layer
 * means, thinned within a tolerance, with equation, uncertainty and the change since the cast before.
 *
 * @param casts full casts, none a fixed-depth series
 * @param means their layer means by cast id
 * @returns null if no cast has a sound speed with a depth
 */
export function soundSpeedDataset(
  casts: readonly Cast[],
  means: ReadonlyMap<string, LayerMeans>,
  context: WritingContext,
  parameters: SoundSpeedProfileParameters,
): Dataset | null {
  const withLayers = inTimeOrder(casts).flatMap((cast) => {
    const layers = means.get(cast.id);
    if (layers === undefined) return [];
    const latitude = cast.start?.latitude ?? cast.end?.latitude ?? Number.NaN;
    const profile = soundSpeedProfile(layers, latitude, parameters);
    return profile.depth.length === 0 ? [] : [{ cast, layers, profile }];
  });
  if (withLayers.length === 0) return null;
  const ordered = withLayers.map(({ cast }) => cast);
  const profiles = withLayers.map(({ profile }) => profile);
  const layers = withLayers.map((each) => each.layers);
  const places = rowPlaces(profiles.map(({ depth }) => depth.length));
  const equipment = equipmentOf(ordered, context);
  const feature = featureVariables(ordered, ["profile"], equipment, context);
  const groups = groupColumns(ordered);
  const [depth, sound] = ["depth", "sound_speed"].map((name) => groups.find((group) => group.name === name));
  if (depth === undefined || sound === undefined) return null;
  const layout: RowLayout = {
    dimension: "obs",
    coordinates: "time latitude longitude depth profile_id",
    vertical: "depth",
    cellMethods: null,
    prefix: "",
    verticalName: "depth below the instantaneous water surface",
    verticalAxis: true,
    equipment,
  };
  const depths = store(
    joined(places, (cast) => profiles[cast]!.depth),
    "float",
  );
  const words = summaryWords(layers, parameters);
  const content = {
    dimensions: [
      { name: "profile", length: ordered.length },
      { name: "obs", length: places.total },
      ...feature.dimensions,
    ],
    attributes: globalAttributes(
      ordered,
      {
        featureType: "profile",
        suffix: "soundspeed",
        title: "sound-speed profiles",
        summary: words,
        processingLevel: "sound-speed profiles from layer means",
        history: historyText(ordered, context.created, context.software, [words.replace(/\.$/, "")]),
        source: profileSource(equipment),
      },
      keywordNames([sound]),
      equipment,
      context,
      coverageAttributes(ordered, { stored: depths, units: "m" }, null, null),
      referencesOf(sound)?.split("; ") ?? [],
    ),
    variables: [
      feature.identity,
      rowSizeVariable(places, "number of points of the profile"),
      ...feature.coordinates,
      ...feature.facts,
      verticalVariable(depth, depths, layout, { comment: depthComment(depth) }),
      ...soundVariables(sound, ordered, layers, profiles, places, layout, context),
      ...containerVariables(equipment, DATUM_ASSUMED),
    ],
  };
  return memoryDataset(arrangeProfiles(content, context.target ?? generalTarget, false));
}

function summaryWords(
  layers: readonly LayerMeans[],
  { tolerance, toSurface, toDepth }: SoundSpeedProfileParameters,
): string {
  const way = layers.every(({ direction }) => direction === "up") ? "upcast" : "downcast";
  const thinned =
    tolerance > 0
      ? `thinned to the points between which linear interpolation gives the others within ${tolerance} m s-1`
      : "none left out";
  const carried = [
    toSurface ? "carried to the surface with the value of the shallowest layer" : null,
    toDepth === null
      ? null
      : `carried down to ${toDepth} m with temperature and salinity of the deepest layer, where these are known`,
  ].filter((part) => part !== null);
  const ends = carried.length > 0 ? `; ${carried.join("; ")}` : "; nothing carried beyond the layers";
  return `Sound speed against depth from layer means of the ${way}, ${thinned}${ends}.`;
}

function soundVariables(
  group: ColumnGroup,
  casts: readonly Cast[],
  layers: readonly LayerMeans[],
  profiles: readonly SoundSpeedProfile[],
  places: RowPlaces,
  layout: RowLayout,
  context: WritingContext,
): MemoryVariable[] {
  const values = joined(places, (cast) => profiles[cast]!.soundSpeed);
  const rowsOf = (cast: number, column: string) => {
    const mean = layers[cast]!.columns.get(column)?.mean;
    return mean ? Float64Array.from(profiles[cast]!.layer, (k) => mean[k] ?? Number.NaN) : null;
  };
  const flags = joinedFlags(places, (cast) => {
    const own = layers[cast]!.columns.get("sound_speed")!.flags;
    return Uint8Array.from(profiles[cast]!.layer, (k) => own[k] ?? Flag.notEvaluated);
  });
  const uncertainty = uncertaintyVariable(group, values, casts, places, layout, context, rowsOf);
  const ancillary = [
    "sound_speed_qc",
    "sound_speed_origin",
    "sound_speed_change",
    ...(uncertainty ? [uncertainty.name] : []),
  ];
  const equations = group.columns.flatMap((column) => column?.method?.equation ?? []);
  const speed = dataVariable(group, store(values, "float"), casts, layout, ancillary);
  const comment = [...new Set(equations.map((each) => `equation: ${each}`)), CAUTION].join("; ");
  return [
    { ...speed, attributes: [...(speed.attributes ?? []), ...attributes(["comment", comment])] },
    flagVariable("sound_speed_qc", "sound speed", ["obs"], flags, layout.coordinates),
    originVariable(profiles, places, layout),
    changeVariable(profiles, casts, places, layout),
    ...(uncertainty ? [uncertainty] : []),
  ];
}

function originVariable(
  profiles: readonly SoundSpeedProfile[],
  places: RowPlaces,
  layout: RowLayout,
): MemoryVariable {
  const codes = joined(places, (cast) =>
    Array.from(profiles[cast]!.layer, (layer, point) => (layer >= 0 ? 0 : point === 0 ? 1 : 2)),
  );
  return {
    name: "sound_speed_origin",
    type: "byte",
    dimensions: [layout.dimension],
    data: Int8Array.from(codes),
    attributes: attributes(
      ["long_name", "where the point comes from"],
      ["standard_name", "status_flag"],
      numberAttribute("_FillValue", "byte", BYTE_FILL),
      numberAttribute("flag_values", "byte", [0, 1, 2]),
      ["flag_meanings", ORIGINS.join(" ")],
      ...rowAttributes(layout, "qualityInformation"),
    ),
  };
}

/** Against the profile before, at the same depth. */
function changeVariable(
  profiles: readonly SoundSpeedProfile[],
  casts: readonly Cast[],
  places: RowPlaces,
  layout: RowLayout,
): MemoryVariable {
  const change = joined(places, (cast) => {
    const { depth, soundSpeed } = profiles[cast]!;
    const before = profiles[cast - 1];
    const isLater = before !== undefined && casts[cast]!.time > casts[cast - 1]!.time;
    return soundSpeed.map((value, k) => (isLater ? value - soundSpeedAt(before, depth[k]!) : Number.NaN));
  });
  const stored = store(change, "float");
  return {
    name: "sound_speed_change",
    type: stored.type,
    dimensions: [layout.dimension],
    data: stored.data,
    attributes: attributes(
      ["long_name", "sound speed less that of the cast before at the same depth"],
      ["units", "m s-1"],
      fillAttribute(stored),
      rangeAttribute(stored),
      ["comment", "missing in the first cast, and where the cast before does not reach"],
      ...rowAttributes(layout, "auxiliaryInformation"),
    ),
  };
}
