import { parseCellLine, parseDecimal, parseNumber, printedPrecision } from "@wherry/core";

export type Delimiter = "\t" | ";" | "|" | "," | "whitespace" | "fixed";

/** Splits one line. Edges are the starts of fixed columns after the first. */
export function splitCells(
  line: string,
  delimiter: Delimiter,
  edges: readonly number[] = [],
): readonly string[] {
  if (delimiter === "whitespace") {
    const bare = line.trim();
    return bare.includes('"') ? quotedByBlanks(bare) : bare.split(/\s+/);
  }
  if (delimiter === "fixed") {
    const cells: string[] = [];
    let from = 0;
    for (const edge of edges) {
      cells.push(line.slice(from, edge).trim());
      from = edge;
    }
    cells.push(line.slice(from).trim());
    return cells;
  }
  if (line.includes('"')) {
    // a quote that never closes would swallow the rest: then the line is taken as it stands
    const cells = parseCellLine(line, delimiter);
    if ((line.split('"').length - 1) % 2 === 0) return cells.map((cell) => cell.trim());
  }
  return line.split(delimiter).map((cell) => cell.trim());
}

function quotedByBlanks(line: string): readonly string[] {
  return [...line.matchAll(/"([^"]*)"|\S+/g)].map((match) => match[1] ?? match[0]);
}

const POINT = /^[+-]?(?:\d+\.?\d*|\.\d+|\d{1,3}(?:,\d{3})+\.\d+)(?:[eEdD][+-]?\d+)?$/;
const COMMA = /^[+-]?(?:\d+,\d+|\d{1,3}(?:\.\d{3})+(?:,\d+)?)(?:[eEdD][+-]?\d+)?$/;
const MISSING =
  /^(?:|-+|\*+|\.|\/+|#+N\/A|[nN][aA][nN]|[nN]\/?[aA]|[nN]ull|NULL|[nN]one|missing|--?--?|\?+|x{1,3}|inf)$/;
const CLOCKISH =
  /^(?:\d{1,4}[-/.]\d{1,2}[-/.]\d{1,4}|\d{1,4}[- ./][A-Za-zÀ-ÿ]{3,10}\.?[- ./]\d{2,4}|\d{8}(?=T))?[T ]{0,2}(?:\d{1,2}:\d{2}(?::\d{2}(?:[.,]\d+)?)?|(?<=T)\d{4,6})?\s?(?:[AaPp]\.?[Mm]\.?)?\s?(?:Z|UTC|[+-]\d{2}:?\d{2})?$/;

/** Number of a cell, NaN if it is none. "1,497.3" is clear, "1,497" is not; an exponent may be written with D. */
export const readCell = (cell: string, decimal: "." | ","): number => {
  const value = decimal === "." ? parseNumber(cell) : NaN;
  if (!Number.isNaN(value) || (decimal === "." && !/,.*\.|[dD]/.test(cell))) return value;
  return parseDecimal(withE(cell), { decimal, thousands: decimal === "." ? "," : "." });
};

/** How finely the number of a cell is printed. */
export const precisionOfCell = (cell: string, decimal: "." | ",") =>
  printedPrecision(withE(cell), { decimal, thousands: decimal === "." ? "," : "." });

const withE = (cell: string) => cell.replace(/[dD](?=[+-]?\d+$)/, "e");

export type CellKind = "number" | "comma number" | "missing" | "clock" | "text";

/** What a trimmed cell looks like. A cell of digits with one comma is a "comma number" only. */
export function kindOfCell(cell: string): CellKind {
  if (cell.length > 60) return "text";
  if (POINT.test(cell)) return "number";
  if (COMMA.test(cell)) return "comma number";
  if (MISSING.test(cell)) return "missing";
  if (/\d/.test(cell) && CLOCKISH.test(cell)) return "clock";
  return "text";
}

/** Whether cells look like a row of data: at least one number, and words in fewer than half. */
export function isRowLike(cells: readonly string[], lenient = false): boolean {
  let numbers = 0;
  let texts = 0;
  for (const cell of cells) {
    const kind = kindOfCell(cell);
    if (kind === "number" || kind === "comma number") numbers++;
    else if (kind === "text") texts++;
  }
  return numbers > 0 ? texts * 2 < cells.length || (lenient && numbers >= 2) : false;
}

/** Whether a row holds nothing but missing markers and times: a record in which every sensor failed. */
export function isAllMissing(cells: readonly string[]): boolean {
  let missing = 0;
  for (const cell of cells) {
    const kind = kindOfCell(cell);
    if (kind === "text" || kind === "number" || kind === "comma number") return false;
    if (kind === "missing") missing++;
  }
  return missing > 0;
}
