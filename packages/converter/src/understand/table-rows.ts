import { splitCells } from "./cells.ts";
import type { RowLayout } from "./delimiter.ts";
import type { TextLines } from "./lines.ts";

/** Cells of some rows of a table, taken from the text when they are asked for. */
export class TableRows {
  readonly #lines: TextLines;
  readonly #layout: RowLayout;
  /** Line index of each row. */
  readonly at: Uint32Array;
  readonly #joinedAt: number | null;

  /** @param joinedAt a date and a time of day under one head: index of the first of the two cells */
  constructor(lines: TextLines, layout: RowLayout, at: Uint32Array, joinedAt: number | null) {
    this.#lines = lines;
    this.#layout = layout;
    this.at = at;
    this.#joinedAt = joinedAt;
  }

  get length(): number {
    return this.at.length;
  }

  /** Cells of a row. */
  cells(row: number): readonly string[] {
    const { delimiter, edges } = this.#layout;
    const cells = splitCells(this.#lines.text(this.at[row]!), delimiter, edges);
    const first = this.#joinedAt;
    if (first === null) return cells;
    return [...cells.slice(0, first), `${cells[first]} ${cells[first + 1]}`, ...cells.slice(first + 2)];
  }

  /** A cell of a row; "" where it has none. */
  cell(row: number, index: number): string {
    const { delimiter } = this.#layout;
    if (delimiter === "whitespace" || delimiter === "fixed" || this.#joinedAt !== null)
      return this.cells(row)[index] ?? "";
    const line = this.#lines.text(this.at[row]!);
    if (line.includes('"')) return this.cells(row)[index] ?? "";
    let from = 0;
    for (let i = 0; i < index; i++) {
      from = line.indexOf(delimiter, from) + 1;
      if (from === 0) return "";
    }
    const to = line.indexOf(delimiter, from);
    return line.slice(from, to < 0 ? line.length : to).trim();
  }

  /** All cells of a column. */
  column(index: number): string[] {
    return Array.from({ length: this.length }, (_, row) => this.cell(row, index));
  }

  /** The first rows. */
  head(count: number): readonly (readonly string[])[] {
    return Array.from({ length: Math.min(count, this.length) }, (_, row) => this.cells(row));
  }

  /** Some of the rows. */
  some(rows: ArrayLike<number>): TableRows {
    const at = Uint32Array.from(rows, (row) => this.at[row]!);
    return new TableRows(this.#lines, this.#layout, at, this.#joinedAt);
  }
}
