import type { Block } from "./blocks.ts";
import type { RowLayout } from "./delimiter.ts";
import type { TextLines } from "./lines.ts";
import { type NumberColumn, type NumberStyleOfFile, numberColumnOf } from "./number-column.ts";
import { TableColumns } from "./table-columns.ts";
import { TableRows } from "./table-rows.ts";

/** Rows of a table: their cells as text, and their numbers. */
export interface Table {
  readonly rows: TableRows;
  readonly columns: TableColumns;
  readonly layout: RowLayout;
  readonly lines: TextLines;
  /** A date and a time of day under one head: index of the first of the two cells. */
  readonly joinedAt: number | null;
}

/** The table of a block: its rows as they were read on the way, or read once more where the style asks for it. */
export function tableOf(block: Block, lines: TextLines, layout: RowLayout, style: NumberStyleOfFile): Table {
  const joinedAt = block.head?.joinedAt ?? null;
  const rows = new TableRows(lines, layout, block.rowLines, joinedAt);
  const isMarker = style.named.some(({ value }) =>
    block.columns?.values.some((values) => values.includes(value)),
  );
  const usable = block.columns?.decimal === style.decimal && !isMarker;
  const columns = usable ? block.columns! : readRows(rows.at, lines, layout, style);
  return { rows, columns, layout, lines, joinedAt };
}

/** Some rows of a table, read by themselves. */
export function partOf(
  { rows, layout, lines, joinedAt }: Table,
  some: readonly number[],
  style: NumberStyleOfFile,
): Table {
  const part = rows.some(some);
  return { rows: part, columns: readRows(part.at, lines, layout, style), layout, lines, joinedAt };
}

/** A column of the table as numbers; null where it holds none. */
export function numbersOf(
  { rows, columns, joinedAt }: Table,
  index: number,
  style: NumberStyleOfFile,
): NumberColumn | null {
  if (index === joinedAt) return null;
  const own = joinedAt !== null && index > joinedAt ? index + 1 : index;
  return numberColumnOf(columns, own, (row) => rows.cell(row, index), style);
}

/** Reads rows by the lines they stand on. */
function readRows(
  at: Uint32Array,
  lines: TextLines,
  layout: RowLayout,
  style: NumberStyleOfFile,
): TableColumns {
  const markers = style.named.map(({ value }) => value).filter((value) => !Number.isNaN(value));
  const columns = new TableColumns(layout, { decimal: style.decimal, markers });
  columns.readLines(lines, at);
  return columns;
}
