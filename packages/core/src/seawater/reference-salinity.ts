import { requireRows } from "./column.ts";
import type { ValidityRange } from "./validity-range.ts";

/** Absolute Salinity of the standard ocean, g kg-1. */
export const STANDARD_OCEAN_SALINITY = 35.16504;

/** g kg-1 of Reference Salinity per unit of Practical Salinity. */
export const SALINITY_UNIT = STANDARD_OCEAN_SALINITY / 35;

export const referenceSalinityRange: ValidityRange = { SP: [2, 42] };

/**
 * Reference-Composition Salinity from Practical Salinity.
 *
 * @param SP Practical Salinity, unit 1, 2 to 42
 * @returns  Reference Salinity, g kg-1; computed beyond the range; NaN if the input is NaN
 * @source   Millero, Feistel, Wright and McDougall (2008), Deep-Sea Res. I 55, 50-72; TEOS-10 manual (2010),
 *           section 2.4. Check value: SP 35 gives 35.16504 by definition
 */
export function referenceSalinity(SP: number): number {
  return SALINITY_UNIT * SP;
}

/** Column twin of {@link referenceSalinity}: fills `out`. */
export function referenceSalinityColumn(SP: Float64Array, out: Float64Array): void {
  requireRows(out, SP);
  for (let i = 0; i < out.length; i++) out[i] = referenceSalinity(SP[i]!);
}
