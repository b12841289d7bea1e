import { parseDecimal, parseNumber, printedPrecision } from "@wherry/core";
import { kindOfCell } from "./cells.ts";

/** A column's cells read as numbers. */
export interface NumberColumn {
  /** Missing is NaN. */
  readonly values: Float64Array;
  /** Cells that are neither a number nor a missing marker, with their row. */
  readonly unread: readonly { readonly row: number; readonly text: string }[];
  readonly decimals: number;
  readonly significantDigits: number;
  readonly first: number;
  readonly last: number;
  readonly count: number;
  /** Missing markers met, as they stand. */
  readonly markers: ReadonlySet<string>;
}

export interface NumberStyleOfFile {
  readonly decimal: "." | ",";
  /** Markers that the file names, with their number if they are one. */
  readonly named: readonly { readonly text: string; readonly value: number }[];
}

/**
 * Reads column `c` of rows as numbers; null if fewer than nine in ten of the cells that are not missing are
 * numbers, or none is.
 */
export function readNumberColumn(
  rows: readonly (readonly string[])[],
  c: number,
  style: NumberStyleOfFile,
): NumberColumn | null {
  const values = new Float64Array(rows.length).fill(NaN);
  const unread: { row: number; text: string }[] = [];
  const markers = new Set<string>();
  const number = numberReader(style.decimal);
  const namedTexts = new Set(style.named.map(({ text }) => text));
  const namedValues = style.named.map(({ value }) => value).filter((value) => !Number.isNaN(value));
  let count = 0;
  let decimals = 0;
  let significantDigits = 0;
  let longest = 0;
  let longestTail = 0;
  let first = NaN;
  let last = NaN;
  for (let row = 0; row < rows.length; row++) {
    const cell = rows[row]![c] ?? "";
    if (cell === "") {
      markers.add("");
      continue;
    }
    const value = number(cell);
    if (Number.isNaN(value)) {
      if (kindOfCell(cell) === "missing" || namedTexts.has(cell)) markers.add(cell);
      else unread.push({ row, text: cell });
      continue;
    }
    if (namedTexts.has(cell) || namedValues.includes(value)) {
      markers.add(cell);
      continue;
    }
    values[row] = value;
    if (count++ === 0) first = value;
    last = value;
    const sign = cell.indexOf(style.decimal);
    const tail = sign < 0 ? 0 : cell.length - sign;
    if (cell.length > longest || tail > longestTail) {
      longest = Math.max(longest, cell.length);
      longestTail = Math.max(longestTail, tail);
      const printed = printedPrecision(cell, {
        decimal: style.decimal,
        thousands: style.decimal === "," ? "." : null,
      });
      decimals = Math.max(decimals, printed.decimals);
      significantDigits = Math.max(significantDigits, printed.significantDigits);
    }
  }
  if (count === 0 || unread.length > Math.max(0, 0.1 * (count + unread.length))) {
    const onlyMissing = count === 0 && unread.length === 0 && rows.length > 0;
    if (!onlyMissing) return null;
  }
  return { values, unread, decimals, significantDigits, first, last, count, markers };
}

function numberReader(decimal: "." | ","): (cell: string) => number {
  if (decimal === ".") return parseNumber;
  return (cell) => parseDecimal(cell, { decimal: ",", thousands: "." });
}

/** The column with values that equal a marker made missing. */
export function withoutMarkers(
  column: NumberColumn,
  markers: readonly number[],
  texts: readonly string[],
): NumberColumn {
  const values = Float64Array.from(column.values, (value) => (markers.includes(value) ? NaN : value));
  let first = NaN;
  let last = NaN;
  let count = 0;
  for (const value of values) {
    if (Number.isNaN(value)) continue;
    if (count++ === 0) first = value;
    last = value;
  }
  return { ...column, values, first, last, count, markers: new Set([...column.markers, ...texts]) };
}

export function extentOf(values: Float64Array): { readonly min: number; readonly max: number } {
  let min = Number.POSITIVE_INFINITY;
  let max = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (value < min) min = value;
    if (value > max) max = value;
  }
  return { min, max };
}

/** Median of the values that are not missing; NaN if there is none. */
export function medianOf(values: Float64Array): number {
  const sorted = values.filter((value) => !Number.isNaN(value)).sort();
  const half = sorted.length >> 1;
  if (sorted.length === 0) return NaN;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}
