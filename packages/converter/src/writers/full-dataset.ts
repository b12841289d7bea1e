import type { Cast } from "@wherry/core";
import { type Dataset, type MemoryDimension, type MemoryVariable, memoryDataset } from "@wherry/netcdf";
import { arrangeProfiles } from "./arrange-profiles.ts";
import {
  type ColumnGroup,
  groupColumns,
  inProductUnits,
  joined,
  type RowPlaces,
  rowPlaces,
} from "./column-groups.ts";
import { coverageAttributes } from "./coverage.ts";
import {
  dataVariable,
  depthComment,
  type RowLayout,
  referencesOf,
  sourceWords,
  verticalOf,
  verticalVariable,
} from "./data-variables.ts";
import { containerVariables, equipmentOf } from "./equipment.ts";
import { featureVariables } from "./feature-variables.ts";
import {
  asWords,
  flagVariable,
  joinedFlags,
  sourceFlagVariable,
  testFlagVariables,
} from "./flag-variables.ts";
import { globalAttributes } from "./global-attributes.ts";
import { historyText } from "./history.ts";
import { rowVariables } from "./row-variables.ts";
import { attributes, type Stored, store } from "./storage.ts";
import { generalTarget } from "./target.ts";
import { uncertaintyVariable } from "./uncertainty-variables.ts";
import type { WritingContext } from "./writing-context.ts";
import { DATUM_ASSUMED, inTimeOrder, profileSource } from "./writing-words.ts";

/**
 * Every row of every cast with its flags: profiles arranged as the target of the context takes them.
 *
 * @param casts  at least one, none a fixed-depth series, in any order; they are written in time order
 * @param suffix added to the survey's id
 * @param isAlone whether the file is one of a cast by design
 * @throws RangeError if there is no cast or no row
 */
export function fullDataset(
  casts: readonly Cast[],
  context: WritingContext,
  suffix = "full",
  isAlone = false,
): Dataset {
  const ordered = inTimeOrder(casts);
  const places = rowPlaces(ordered.map(({ rows }) => rows));
  if (places.total === 0) throw new RangeError("a product needs at least one cast with at least one row");
  const groups = groupColumns(ordered);
  const equipment = equipmentOf(ordered, context);
  const feature = featureVariables(ordered, ["profile"], equipment, context);
  const vertical = verticalOf(groups);
  const layout: RowLayout = {
    dimension: "obs",
    coordinates: ["time latitude longitude", vertical, "profile_id"].filter(Boolean).join(" "),
    vertical,
    cellMethods: null,
    prefix: "",
    verticalName: null,
    verticalAxis: true,
    equipment,
  };
  const rows = quantityVariables(groups, ordered, places, layout, context);
  const others = rowVariables(ordered, places, layout);
  const verticalStored = rows.vertical;
  const content = {
    dimensions: [
      { name: "profile", length: ordered.length },
      { name: "obs", length: places.total },
      ...feature.dimensions,
      ...rows.dimensions,
      ...others.dimensions,
    ],
    attributes: globalAttributes(
      ordered,
      {
        featureType: "profile",
        suffix,
        title: "full resolution",
        summary: "Every row of each record with its quality flags, start and end fixes.",
        processingLevel: "quality flagged, computed quantities added",
        history: historyText(ordered, context.created, context.software, ["every row written"]),
        source: profileSource(equipment),
      },
      rows.standardNames,
      equipment,
      context,
      coverageAttributes(ordered, verticalStored, null, null),
      rows.references,
    ),
    variables: [
      feature.identity,
      rowSizeVariable(places, "number of rows of the cast"),
      ...feature.coordinates,
      ...feature.facts,
      ...rows.variables,
      ...others.variables,
      ...containerVariables(equipment, DATUM_ASSUMED),
    ],
  };
  return memoryDataset(arrangeProfiles(content, context.target ?? generalTarget, isAlone));
}

export const rowSizeVariable = (places: RowPlaces, longName: string): MemoryVariable => ({
  name: "row_size",
  type: "int",
  dimensions: ["profile"],
  data: Int32Array.from(places.counts),
  attributes: attributes(["long_name", longName], ["sample_dimension", "obs"]),
});

/** Quantities of full rows, each with its flags, and what the rest of the file says of them. */
export function quantityVariables(
  groups: readonly ColumnGroup[],
  casts: readonly Cast[],
  places: RowPlaces,
  layout: RowLayout,
  context: WritingContext,
): {
  readonly variables: readonly MemoryVariable[];
  readonly dimensions: readonly MemoryDimension[];
  readonly vertical: { readonly stored: Stored; readonly units: string } | null;
  readonly standardNames: readonly string[];
  readonly references: readonly string[];
} {
  const quantities: MemoryVariable[] = [];
  const flags: MemoryVariable[] = [];
  const sourceFlags: MemoryVariable[] = [];
  const uncertainties: MemoryVariable[] = [];
  const dimensions: MemoryDimension[] = [];
  let vertical: { stored: Stored; units: string } | null = null;
  const rowsOf = (cast: number, column: string) => casts[cast]?.columns.get(column)?.values ?? null;
  for (const group of groups) {
    const values = joined(places, (cast) => {
      const column = group.columns[cast];
      return column ? inProductUnits(column.values, group.quantity.divisor) : null;
    });
    const stored = store(values, group.type);
    const ancillary = [`${group.name}_qc`];
    flags.push(
      flagVariable(
        `${group.name}_qc`,
        asWords(group.name),
        [layout.dimension],
        joinedFlags(places, (cast) => group.columns[cast]?.flags ?? null),
        layout.coordinates,
      ),
    );
    if (context.testFlags === true) {
      const single = testFlagVariables(group, places, layout.dimension, layout.coordinates);
      flags.push(...single);
      ancillary.push(...single.map(({ name }) => name));
    }
    const received = sourceFlagVariable(group, places, layout.dimension, layout.coordinates);
    if (received) {
      sourceFlags.push(received.variable);
      if (received.length) dimensions.push(received.length);
      ancillary.push(received.variable.name);
    }
    const uncertainty = uncertaintyVariable(group, values, casts, places, layout, context, rowsOf);
    if (uncertainty) {
      uncertainties.push(uncertainty);
      ancillary.push(uncertainty.name);
    }
    if (group.name !== layout.vertical) {
      quantities.push(dataVariable(group, stored, casts, layout, ancillary));
      continue;
    }
    vertical = { stored, units: group.quantity.units };
    quantities.push(
      verticalVariable(group, stored, layout, {
        comment: group.name === "depth" ? fullDepthComment(group, casts, stored) : sourceWords(group, casts),
        ancillary,
      }),
    );
  }
  return {
    variables: [...quantities, ...flags, ...sourceFlags, ...uncertainties],
    dimensions,
    vertical,
    standardNames: keywordNames(groups),
    references: [...new Set(groups.flatMap((group) => referencesOf(group)?.split("; ") ?? []))],
  };
}

/** Standard names that serve as key words: those of the quantities, the vertical ones left out. */
export const keywordNames = (groups: readonly ColumnGroup[]): string[] => [
  ...new Set(
    groups
      .filter(({ column }) => column !== "depth" && column !== "pressure")
      .map(({ quantity }) => quantity.standardName)
      .filter((name) => name !== ""),
  ),
];

/** How depth was found, and what is particular in these rows. */
function fullDepthComment(group: ColumnGroup, casts: readonly Cast[], stored: Stored): string {
  const interpolated = casts.some((cast, index) => {
    const pressure = cast.columns.get("pressure");
    const depth = group.columns[index];
    return (
      depth?.source === null &&
      pressure?.values.some((value, row) => Number.isNaN(value) && !Number.isNaN(depth.values[row]!))
    );
  });
  return [
    depthComment(group),
    stored.range !== null && stored.range[0] < 0 ? "negative in air" : null,
    interpolated ? "where pressure is missing, interpolated in elapsed time and flagged 3" : null,
  ]
    .filter((part) => part !== null)
    .join("; ");
}
