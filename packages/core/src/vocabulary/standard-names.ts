import { unpackNames } from "./packed-names.ts";
import type { StandardName, StandardNameTable } from "./standard-name-table.ts";
import { packedStandardNames } from "./standard-names.generated.ts";

let shipped: StandardNameTable | null = null;

/** The CF standard-name table that ships with this package; unpacked on the first call. */
export function shippedStandardNames(): StandardNameTable {
  shipped ??= unpackNames(packedStandardNames);
  return shipped;
}

/**
 * Facts of a standard name.
 *
 * @param name  without a modifier; case matters
 * @param table a newer table in place of the shipped one
 * @returns     null if the table has no such name
 */
export function standardName(
  name: string,
  table: StandardNameTable = shippedStandardNames(),
): StandardName | null {
  return table.names.get(name) ?? null;
}
