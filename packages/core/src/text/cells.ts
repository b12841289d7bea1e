import type { Problem } from "../problem.ts";

/** One row of a table as text. */
export interface CellRow {
  readonly cells: readonly string[];
  /** Line on which the row begins, from 1. */
  readonly line: number;
  /** False if the text ended inside a quoted cell. */
  readonly whole: boolean;
}

/** Rows of a text, with what was irregular in them. Nothing is dropped: irregular cells are kept as they stand. */
export interface CellTable {
  readonly rows: readonly CellRow[];
  /** Codes cells/quote-inside, cells/text-after-quote, cells/quote-open; places are line and column. */
  readonly warnings: readonly Problem[];
}

/**
 * Cells of a delimited text: quoted cells may hold delimiters, line ends and doubled quotes. Lines end with LF,
 * CRLF or CR. An empty line is a row of one empty cell; a line end at the end of the text begins no row.
 *
 * @param delimiter one character, not a quote or line end
 * @source RFC 4180, section 2 (a lone CR or LF as line end, and another delimiter, are wider than the RFC)
 */
export function parseCells(text: string, delimiter = ","): CellTable {
  checkDelimiter(delimiter);
  const rows: CellRow[] = [];
  const warnings: Problem[] = [];
  let line = 1;
  let lineStart = 0;
  let at = 0;
  const warn = (code: string, message: string, byLine: number, column: number, remedy: string) =>
    warnings.push({ code: `cells/${code}`, message, where: { line: byLine, column }, remedy });

  /** Reads a quoted cell whose opening quote is at `at`; leaves `at` behind it. */
  const quotedCell = (): { cell: string; closed: boolean } => {
    let cell = "";
    let from = ++at;
    for (;;) {
      const quote = text.indexOf('"', from);
      const end = quote < 0 ? text.length : quote;
      for (const ending of text.slice(from, end).matchAll(/\r\n?|\n/g)) {
        line++;
        lineStart = from + ending.index + ending[0].length;
      }
      cell += text.slice(from, end);
      if (quote < 0) {
        at = text.length;
        return { cell, closed: false };
      }
      if (text[quote + 1] !== '"') {
        at = quote + 1;
        return { cell, closed: true };
      }
      cell += '"';
      from = quote + 2;
    }
  };

  while (at < text.length) {
    const rowLine = line;
    const cells: string[] = [];
    let whole = true;
    for (;;) {
      let cell = "";
      const [cellLine, cellColumn] = [line, at - lineStart + 1];
      const quoted = text[at] === '"';
      if (quoted) {
        const inside = quotedCell();
        if (!inside.closed) {
          warn("quote-open", "a quoted cell never ends", cellLine, cellColumn, "Look for a missing quote.");
          whole = false;
        }
        cell = inside.cell;
      }
      let end = at;
      while (end < text.length && text[end] !== delimiter && text[end] !== "\n" && text[end] !== "\r") end++;
      const plain = text.slice(at, end);
      if (quoted && plain !== "") {
        const message = `"${plain}" follows the closing quote of a cell`;
        warn("text-after-quote", message, line, at - lineStart + 1, "Double the quotes inside a cell.");
      } else if (plain.includes('"')) {
        const column = at - lineStart + plain.indexOf('"') + 1;
        warn("quote-inside", "a quote inside a cell without quotes", line, column, "Quote the whole cell.");
      }
      cells.push(cell + plain);
      at = end;
      if (at >= text.length || text[at] !== delimiter) break;
      at++;
    }
    rows.push({ cells, line: rowLine, whole });
    if (at < text.length) {
      at += text.startsWith("\r\n", at) ? 2 : 1;
      line++;
      lineStart = at;
    }
  }
  return { rows, warnings };
}

/** Cells of one line (without its line end). See `parseCells`. */
export function parseCellLine(line: string, delimiter = ","): readonly string[] {
  return parseCells(line, delimiter).rows[0]?.cells ?? [""];
}

/**
 * Text as one cell: quoted where it holds the delimiter, a quote, a line end, or blanks at its ends.
 *
 * @source RFC 4180, section 2
 */
export function writeCell(text: string, delimiter = ","): string {
  checkDelimiter(delimiter);
  const plain = !/["\r\n]|^\s|\s$/.test(text) && !text.includes(delimiter);
  return plain ? text : `"${text.replaceAll('"', '""')}"`;
}

/** Texts as one row without its line end. A row of one empty cell is written `""`, since an empty line is no row to many readers. */
export function writeCellLine(texts: readonly string[], delimiter = ","): string {
  if (texts.length === 1 && texts[0] === "") return '""';
  return texts.map((text) => writeCell(text, delimiter)).join(delimiter);
}

function checkDelimiter(delimiter: string): void {
  if (delimiter.length !== 1 || /["\r\n]/.test(delimiter))
    throw new RangeError(`delimiter must be one character, not ${JSON.stringify(delimiter)}`);
}
