import type { Cast } from "@wherry/core";
import type { MemoryVariable } from "@wherry/netcdf";
import type { ColumnGroup, RowPlaces } from "./column-groups.ts";
import { longNameOf, type RowLayout, temperatureKind } from "./data-variables.ts";
import type { RowsOf } from "./derived-uncertainty.ts";
import { propagatedUncertainty, sensorUncertainty } from "./sensor-uncertainty.ts";
import { attributes, fillAttribute, rangeAttribute, store } from "./storage.ts";
import type { WritingContext } from "./writing-context.ts";

/**
 * Standard uncertainty of a quantity, from what the sheet says of the sensors: of a measured one as stated there, of a
 * computed one propagated; null where the sheet says nothing. It is missing where the value is missing.
 *
 * @param values values of the variable beside which it stands, NaN where missing
 * @param rowsOf the columns that the quantity may be computed from, on the rows of the product
 */
export function uncertaintyVariable(
  group: ColumnGroup,
  values: Float64Array,
  casts: readonly Cast[],
  places: RowPlaces,
  layout: RowLayout,
  context: WritingContext,
  rowsOf: RowsOf,
): MemoryVariable | null {
  const words = new Set<string>();
  const all = new Float64Array(places.total).fill(Number.NaN);
  for (const [index, cast] of casts.entries()) {
    const kept = cast.finished?.uncertainties.get(group.column);
    // layer means made from the rows of a product have uncertainties of their own
    if (kept && kept.values.length === places.counts[index]) {
      all.set(kept.values, places.offsets[index]!);
      words.add(kept.comment);
      continue;
    }
    const own = (column: string) => rowsOf(index, column);
    const column = group.columns[index];
    const found =
      column?.source != null
        ? sensorUncertainty(group.column, group.quantity.units, cast, context, own)
        : column?.method != null
          ? propagatedUncertainty(group.column, cast, context, own)
          : null;
    if (found === null) continue;
    for (const each of found.words) words.add(each);
    const offset = places.offsets[index]!;
    for (let k = 0; k < places.counts[index]!; k++)
      if (!Number.isNaN(values[offset + k]!)) all[offset + k] = found.values[k]! / group.quantity.divisor;
  }
  if (words.size === 0) return null;
  const stored = store(all, "float");
  return {
    name: `${group.name}_uncertainty`,
    type: stored.type,
    dimensions: [layout.dimension],
    data: stored.data,
    attributes: attributes(
      ["long_name", `standard uncertainty of ${longNameOf(group)}`],
      ["standard_name", group.quantity.standardName && `${group.quantity.standardName} standard_error`],
      ["units", group.quantity.units],
      ["units_metadata", temperatureKind(group, "difference")],
      fillAttribute(stored),
      rangeAttribute(stored),
      ["comment", [...words].join("; ")],
      ["coverage_content_type", "auxiliaryInformation"],
      ["coordinates", layout.coordinates],
    ),
  };
}
