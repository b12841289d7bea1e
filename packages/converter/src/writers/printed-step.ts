import { type Column, convertUnits, printedResolution } from "@wherry/core";

/**
 * Smallest step of the printed values in the house unit, to judge by what may be lost in storing; NaN for a
 * computed column.
 *
 * By the source's unit where it is known; else by the first and last value, if these differ; else the smallest
 * that the digits printed allow.
 */
export function printedStep(column: Column): number {
  const { source, units, values } = column;
  if (source === null) return Number.NaN;
  const factor = unitFactor(source.units, units);
  if (factor > 0) return factor * 10 ** -source.decimals;
  if (source.first !== source.last) return printedResolution(column);
  let largest = 0;
  for (let k = 0; k < values.length; k++) if (Math.abs(values[k]!) > largest) largest = Math.abs(values[k]!);
  return largest * 10 ** -source.significantDigits;
}

/** How many house units one unit of the source is; NaN if that cannot be told. */
function unitFactor(from: string | null, to: string | null): number {
  if (from === null || to === null) return Number.NaN;
  return convertUnits(1, from, to) - convertUnits(0, from, to);
}
