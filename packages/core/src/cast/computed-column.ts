import { Flag } from "../quality/flag.ts";
import type { Cast, Column } from "./cast.ts";
import { withColumns } from "./change.ts";

/**
 * A computed column, flags 2 (9 where missing) until quality tests have run. A result that is not finite, from inputs
 * far outside of any water, is missing.
 */
export function computedColumn(
  fields: Pick<Column, "name" | "standardName" | "longName" | "units"> & {
    readonly values: Float64Array;
    readonly method: NonNullable<Column["method"]>;
  },
): Column {
  const { values } = fields;
  const flags = new Uint8Array(values.length).fill(Flag.notEvaluated);
  for (let k = 0; k < values.length; k++)
    if (!Number.isFinite(values[k]!)) {
      values[k] = Number.NaN;
      flags[k] = Flag.missing;
    }
  return {
    ...fields,
    flags,
    source: null,
    sourceFlags: null,
    tests: new Map(),
  };
}

/**
 * Keeps a column of the export under `<name>_received`, so that ours can take its name. A column that we computed
 * before is simply replaced.
 */
function setAside(cast: Cast, name: string): Cast {
  const received = cast.columns.get(name);
  if (received === undefined || received.source === null) return cast;
  const columns = new Map<string, Column>();
  for (const [key, column] of cast.columns) {
    if (key !== name) columns.set(key, column);
    else
      columns.set(`${name}_received`, {
        ...received,
        name: `${name}_received`,
        longName: `${received.longName}, as received from the source`,
      });
  }
  return { ...cast, columns };
}

/** Adds a computed column in place of a received one of the same name. */
export const putComputed = (cast: Cast, column: Column): Cast =>
  withColumns(setAside(cast, column.name), column);

/** Latitude for gravity; 45 degrees where no position is known, which changes depth by at most 0.27 %. */
export function latitudeOf(cast: Cast): { readonly value: number; readonly words: string } {
  const latitude = cast.start?.latitude ?? cast.end?.latitude ?? Number.NaN;
  return Number.isNaN(latitude)
    ? { value: 45, words: "; position not known, gravity of latitude 45 taken" }
    : { value: latitude, words: "" };
}
