import { kindOfCell } from "./cells.ts";
import type { RowLayout } from "./delimiter.ts";
import { type NumberColumn, type NumberStyleOfFile, numberColumnOf } from "./number-column.ts";
import { TableColumns } from "./table-columns.ts";

/** How surely the cells of a column have the other decimal sign than the rest of the file. */
export type OtherSign = "sure" | "doubtful";

/** Groups of three digits behind a first one that does not begin with 0: it may count thousands. */
const GROUPED = { ".": /^[+-]?[1-9]\d{0,2}(?:,\d{3})+$/, ",": /^[+-]?[1-9]\d{0,2}(?:\.\d{3})+$/ };
const OTHER = { ".": /^[+-]?\d+,\d+$/, ",": /^[+-]?\d+\.\d+$/ };

/** Whether a column holds numbers with the sign that is not the file's and none with the file's; null if not. */
export function otherSign(cells: readonly string[], decimal: "." | ","): OtherSign | null {
  let found: OtherSign | null = null;
  for (const cell of cells) {
    if (OTHER[decimal].test(cell))
      found = found === "sure" || !GROUPED[decimal].test(cell) ? "sure" : "doubtful";
    else if (cell.includes(decimal) && kindOfCell(cell) !== "missing") return null;
  }
  return found;
}

/** The cells read with the other sign. */
export function withOtherSign(cells: readonly string[], style: NumberStyleOfFile): NumberColumn | null {
  const decimal = style.decimal === "." ? "," : ".";
  const layout: RowLayout = { delimiter: ";", width: 1, edges: [], because: "one column" };
  const columns = new TableColumns(layout, { decimal, markers: [] });
  for (const cell of cells) columns.addCells([cell], false);
  return numberColumnOf(columns, 0, (row) => cells[row]!, { ...style, decimal });
}
