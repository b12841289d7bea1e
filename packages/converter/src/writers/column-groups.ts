import { type Cast, type Column, printedResolution } from "@wherry/core";
import { orderOf, type Quantity, quantityOf } from "./quantities.ts";
import { fitsFloat, type Real } from "./storage.ts";

/** The columns of several casts that become one variable. */
export interface ColumnGroup {
  /** Name of the variable. */
  readonly name: string;
  /** Name of the column in the casts. */
  readonly column: string;
  readonly quantity: ReturnType<typeof quantityOf>;
  /** One per cast, null where a cast has no such column. */
  readonly columns: readonly (Column | null)[];
  /** Narrowest type that keeps every printed value. */
  readonly type: Real;
}

/** Names that the layout itself uses; a column of such a name is written under another. */
const RESERVED = new Set([
  "profile",
  "obs",
  "bound",
  "profile_id",
  "cast_id",
  "z",
  "timeseries",
  "station_name",
  "layer_thickness",
  "station_id",
  "row_size",
  "time",
  "latitude",
  "longitude",
  "end_time",
  "end_latitude",
  "end_longitude",
  "start_satellites",
  "end_satellites",
  "pressure_offset",
  "source_file",
  "station",
  "remarks",
  "sounding",
  "wind",
  "sea",
  "observer",
  "position_qc",
  "time_qc",
  "rows_above_layers",
  "rows_flagged",
  "depth_bounds",
  "pressure_bounds",
  "time_bounds",
  "nominal_depth",
  "segment",
  "elapsed",
  "source_line",
  "crs",
]);

/**
 * The variables that the columns of the casts become: columns of one name, standard name and unit together, in
 * the order of the products, others as they first appear.
 */
export function groupColumns(casts: readonly Cast[]): ColumnGroup[] {
  const groups = new Map<string, { quantity: ColumnGroup["quantity"]; columns: (Column | null)[] }>();
  for (const [index, cast] of casts.entries()) {
    for (const column of cast.columns.values()) {
      const quantity = quantityOf(column);
      const key = JSON.stringify([column.name, quantity.standardName, quantity.units, quantity.unitsTold]);
      let group = groups.get(key);
      if (!group) {
        group = { quantity, columns: casts.map(() => null) };
        groups.set(key, group);
      }
      group.columns[index] = column;
    }
  }
  const ordered = [...groups.values()].sort((a, b) => orderOf(a.quantity.name) - orderOf(b.quantity.name));
  const taken = new Set<string>();
  return ordered.map(({ quantity, columns }) => {
    const name = freeName(quantity, taken);
    return { name, column: quantity.name, quantity, columns, type: typeOf(quantity, columns) };
  });
}

/** A name by the recommendation of CF section 2.3, unlike every other but for case. */
function freeName({ name }: Quantity, taken: Set<string>): string {
  let plain = name.replaceAll(/[^A-Za-z0-9_]+/g, "_").replace(/^[^A-Za-z]+/, "");
  if (plain === "") plain = "column";
  if (RESERVED.has(plain.toLowerCase()) || /^(platform|instrument)\d*$/i.test(plain)) plain += "_column";
  let free = plain;
  for (let n = 2; taken.has(free.toLowerCase()); n++) free = `${plain}_${n}`;
  taken.add(free.toLowerCase());
  return free;
}

function typeOf({ divisor }: Quantity, columns: readonly (Column | null)[]): Real {
  const fits = columns.every((column) => {
    if (column === null) return true;
    const values = inProductUnits(column.values, divisor);
    if (column.source?.single && values.every((value) => Object.is(Math.fround(value), value))) return true;
    return fitsFloat(values, printedResolution(column) / divisor);
  });
  return fits ? "float" : "double";
}

/** Values in the unit of the products. */
export const inProductUnits = (values: Float64Array, divisor: number): Float64Array =>
  divisor === 1 ? values : values.map((value) => value / divisor);

/** Where the rows of each cast stand in the arrays of the data set. */
export interface RowPlaces {
  readonly counts: readonly number[];
  readonly offsets: readonly number[];
  readonly total: number;
}

export function rowPlaces(counts: readonly number[]): RowPlaces {
  let total = 0;
  const offsets = counts.map((count) => {
    const offset = total;
    total += count;
    return offset;
  });
  return { counts, offsets, total };
}

/** One array out of one per cast; a cast without is `missing` all through. */
export function joined(
  places: RowPlaces,
  part: (cast: number) => ArrayLike<number> | null,
  missing = Number.NaN,
): Float64Array {
  const all = new Float64Array(places.total).fill(missing);
  for (const [cast, offset] of places.offsets.entries()) {
    const values = part(cast);
    if (values !== null) all.set(values, offset);
  }
  return all;
}
