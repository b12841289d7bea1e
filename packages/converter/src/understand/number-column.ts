import type { TableColumns } from "./table-columns.ts";

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

/** At most one in ten of the cells that are not missing may be something else than a number. */
const isNumeric = (count: number, unread: number, rows: number): boolean =>
  count > 0 ? unread <= 0.1 * (count + unread) : unread === 0 && rows > 0;

/**
 * A column of a table that was read, as numbers; null if fewer than nine in ten of the cells that are not missing
 * are numbers, or none is.
 *
 * @param text the cell of a row
 */
export function numberColumnOf(
  columns: TableColumns,
  c: number,
  text: (row: number) => string,
  { named }: NumberStyleOfFile,
): NumberColumn | null {
  const record = columns.records[c]!;
  const words = new Set(named.map(({ text }) => text));
  const wordsMark = named.some(({ value }) => Number.isNaN(value));
  const count = columns.rows - record.gaps;
  const markers = new Set(record.markers);
  const unread: { row: number; text: string }[] = [];
  if (!wordsMark && !isNumeric(count, record.odd, columns.rows)) return null;
  // where very many cells are odd, the first of them stand for all
  for (const row of record.oddRows) {
    const cell = text(row);
    if (words.has(cell)) markers.add(cell);
    else unread.push({ row, text: cell });
  }
  const known = record.oddRows.length > 0 ? unread.length / record.oddRows.length : 0;
  if (!isNumeric(count, Math.ceil(known * record.odd), columns.rows)) return null;
  const values = columns.values[c]!.subarray(0, columns.rows);
  return { ...ends(values), values, unread, count, markers, ...precisionOf(columns, c, count) };
}

function precisionOf({ decimals, mantissas, records }: TableColumns, c: number, count: number) {
  const significantDigits = count === 0 ? 0 : Math.max(records[c]!.digits, String(mantissas[c]).length);
  return { decimals: decimals[c]!, significantDigits };
}

/** First and last value that is not missing. */
function ends(values: Float64Array): { readonly first: number; readonly last: number } {
  let from = 0;
  let to = values.length - 1;
  while (from < to && Number.isNaN(values[from]!)) from++;
  while (to > from && Number.isNaN(values[to]!)) to--;
  return { first: values[from] ?? NaN, last: values[to] ?? NaN };
}

/** The column with values that equal a marker made missing. */
export function withoutMarkers(
  column: NumberColumn,
  markers: readonly number[],
  texts: readonly string[],
): NumberColumn {
  const values = column.values.slice();
  let { count } = column;
  for (let row = 0; row < values.length; row++) {
    if (!markers.includes(values[row]!)) continue;
    values[row] = NaN;
    count--;
  }
  return { ...column, ...ends(values), values, count, markers: new Set([...column.markers, ...texts]) };
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
