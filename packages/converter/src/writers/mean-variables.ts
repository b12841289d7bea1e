import type { Cast, MeanColumn } from "@wherry/core";
import { type MemoryVariable, numberAttribute } from "@wherry/netcdf";
import { type ColumnGroup, joined, type RowPlaces } from "./column-groups.ts";
import {
  dataVariable,
  depthComment,
  longNameOf,
  type RowLayout,
  rowAttributes,
  temperatureKind,
  verticalVariable,
} from "./data-variables.ts";
import type { RowsOf } from "./derived-uncertainty.ts";
import { asWords, flagVariable, joinedFlags } from "./flag-variables.ts";
import { attributes, fillAttribute, INT_FILL, rangeAttribute, type Stored, store } from "./storage.ts";
import { uncertaintyVariable } from "./uncertainty-variables.ts";
import type { WritingContext } from "./writing-context.ts";

/** How means are told. */
export interface MeanWords {
  /** Before the name of a quantity, as "the layer mean of". */
  readonly of: string;
  /** Where the rows of a mean lie, as "in the layer". */
  readonly within: string;
  /** `cell_methods` of the standard deviations. */
  readonly methods: string;
}

/**
 * Means of quantities over layers or bursts, each with its flags, number of rows, standard deviation and uncertainty.
 * A quantity that is the layout's vertical coordinate is written as one.
 *
 * @param means  by column name, for each cast; null for a cast without
 * @param words  null for values that came as they are: no number of rows, no deviation
 * @param rowsOf the columns that a quantity may be computed from, on the rows of the product
 */
export function meanVariables(
  groups: readonly ColumnGroup[],
  casts: readonly Cast[],
  means: (cast: number) => ReadonlyMap<string, MeanColumn> | null,
  places: RowPlaces,
  layout: RowLayout,
  words: MeanWords | null,
  context: WritingContext,
  rowsOf: RowsOf,
): MemoryVariable[] {
  const quantities: MemoryVariable[] = [];
  const flags: MemoryVariable[] = [];
  const counts: MemoryVariable[] = [];
  const spreads: MemoryVariable[] = [];
  const uncertainties: MemoryVariable[] = [];
  for (const group of groups) {
    // a counter or a code has no mean that means anything
    if (!group.quantity.unitsTold) continue;
    const own = (cast: number) => (group.columns[cast] ? means(cast)?.get(group.column) : undefined);
    if (places.counts.every((_, cast) => own(cast) === undefined)) continue;
    const { divisor } = group.quantity;
    const values = joined(places, (cast) => own(cast)?.mean.map((value) => value / divisor) ?? null);
    const ancillary = [`${group.name}_qc`];
    flags.push(
      flagVariable(
        `${group.name}_qc`,
        `${words === null ? "" : `${words.of} `}${asWords(group.name)}`,
        [layout.dimension],
        joinedFlags(places, (cast) => own(cast)?.flags ?? null),
        layout.coordinates,
      ),
    );
    if (words !== null) {
      const count = countVariable(group, places, layout, words, (cast) => own(cast)?.count ?? null);
      counts.push(count);
      ancillary.push(count.name);
      if (group.quantity.spread) {
        const sd = joined(places, (cast) => own(cast)?.sd.map((value) => value / divisor) ?? null);
        const spread = spreadVariable(group, store(sd, "float"), layout, words);
        spreads.push(spread);
        ancillary.push(spread.name);
      }
    }
    const uncertainty = uncertaintyVariable(group, values, casts, places, layout, context, rowsOf);
    if (uncertainty) {
      uncertainties.push(uncertainty);
      ancillary.push(uncertainty.name);
    }
    const stored = store(values, group.type);
    quantities.push(
      group.name === layout.vertical
        ? verticalVariable(group, stored, layout, { comment: depthComment(group), ancillary })
        : dataVariable(group, stored, casts, layout, ancillary),
    );
  }
  return [...quantities, ...flags, ...counts, ...spreads, ...uncertainties];
}

function countVariable(
  group: ColumnGroup,
  places: RowPlaces,
  layout: RowLayout,
  { of }: MeanWords,
  counts: (cast: number) => Int32Array | null,
): MemoryVariable {
  return {
    name: `${group.name}_count`,
    type: "int",
    dimensions: [layout.dimension],
    data: Int32Array.from(joined(places, counts, 0)),
    attributes: attributes(
      ["long_name", `number of rows in ${of} ${asWords(group.name)}`],
      ["standard_name", "number_of_observations"],
      ["units", "1"],
      numberAttribute("_FillValue", "int", INT_FILL),
      ...rowAttributes(layout, "auxiliaryInformation"),
    ),
  };
}

function spreadVariable(
  group: ColumnGroup,
  stored: Stored,
  layout: RowLayout,
  { within, methods }: MeanWords,
): MemoryVariable {
  return {
    name: `${group.name}_sd`,
    type: stored.type,
    dimensions: [layout.dimension],
    data: stored.data,
    attributes: attributes(
      ["long_name", `sample standard deviation ${within} (n - 1) of ${longNameOf(group)}`],
      ["standard_name", group.quantity.standardName],
      ["units", group.quantity.units],
      ["units_metadata", temperatureKind(group, "difference")],
      fillAttribute(stored),
      rangeAttribute(stored),
      ["cell_methods", methods],
      ...rowAttributes(layout, "auxiliaryInformation"),
    ),
  };
}
