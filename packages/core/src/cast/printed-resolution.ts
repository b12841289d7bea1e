import { convertUnits } from "../units/convert.ts";
import type { Column } from "./cast.ts";

/**
 * Smallest step of the printed values, in the unit of `values`, to judge by what may be lost in storing and which
 * values are the same; NaN for a computed column.
 *
 * By the source's unit where it is known; else by the first and last value, if these differ; else the smallest that
 * the digits printed allow.
 */
export function printedResolution({ source, units, values }: Column): number {
  if (source === null) return Number.NaN;
  const factor = unitFactor(source.units, units);
  const step = 10 ** -source.decimals;
  if (factor > 0) return factor * step;
  const known = (value: number) => !Number.isNaN(value);
  // equal ends (conductivity in air) tell nothing about the unit
  const slope =
    ((values.findLast(known) ?? Number.NaN) - (values.find(known) ?? Number.NaN)) /
    (source.last - source.first);
  if (Number.isFinite(slope) && slope !== 0) return Math.abs(slope) * step;
  let largest = 0;
  for (let k = 0; k < values.length; k++) if (Math.abs(values[k]!) > largest) largest = Math.abs(values[k]!);
  return Math.min(step, largest * 10 ** -source.significantDigits);
}

/** How many house units one unit of the source is; NaN if that cannot be told. */
function unitFactor(from: string | null, to: string | null): number {
  if (from === null || to === null) return Number.NaN;
  return convertUnits(1, from, to) - convertUnits(0, from, to);
}
