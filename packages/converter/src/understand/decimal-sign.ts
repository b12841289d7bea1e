import type { Block } from "./blocks.ts";
import { kindOfCell, splitCells } from "./cells.ts";
import { linesFrom, type RowLayout } from "./delimiter.ts";
import type { TextLines } from "./lines.ts";
import type { TextBytes } from "./text-bytes.ts";

/** Rows of a block that are looked at. */
const SAMPLE = 500;

/** How numbers are written in the rows. */
export interface DecimalReading {
  readonly decimal: "." | ",";
  /** Every number with a comma has three digits behind it and none begins with 0: it may group thousands. */
  readonly doubtful: boolean;
}

/** The decimal sign of rows, from cells that hold one. */
export function findDecimal(rows: Iterable<readonly string[]>): DecimalReading {
  let points = 0;
  let commas = 0;
  let surelyDecimal = 0;
  for (const cells of rows) {
    for (const cell of cells) {
      if (/^[+-]?\d*\.\d/.test(cell) && kindOfCell(cell) === "number") points++;
      else if (kindOfCell(cell) === "comma number") {
        commas++;
        if (/^[+-]?0\d*,|,\d{1,2}$|,\d{4,}|^[+-]?\d{4,},/.test(cell)) surelyDecimal++;
      }
    }
  }
  const decimal = commas > points ? "," : ".";
  return { decimal, doubtful: decimal === "," && surelyDecimal === 0 };
}

/** The decimal sign by which rows are read for now, from the begin of a text. */
export function guessDecimal(bytes: TextBytes, { delimiter, edges }: RowLayout): "." | "," {
  if (delimiter === ",") return ".";
  const rows = linesFrom(bytes, Math.floor(bytes.size / 2), 20).slice(1);
  const text = ({ from, to }: { from: number; to: number }) => bytes.decode(from, to);
  return findDecimal(rows.map((row) => splitCells(text(row), delimiter, edges))).decimal;
}

/** The decimal sign of a file by its rows. */
export function decimalOf(blocks: readonly Block[], lines: TextLines, layout: RowLayout): DecimalReading {
  // rows that were read with a point have no commas but in cells that are no numbers
  const noComma = blocks.every(({ columns }) => columns?.decimal === "." && !columns.hasOddCells);
  if (noComma) return { decimal: ".", doubtful: false };
  return findDecimal(firstRows(blocks, lines, layout));
}

function* firstRows(
  blocks: readonly Block[],
  lines: TextLines,
  layout: RowLayout,
): Generator<readonly string[]> {
  for (const { rowLines } of blocks)
    for (const i of rowLines.subarray(0, SAMPLE))
      yield splitCells(lines.text(i), layout.delimiter, layout.edges);
}
