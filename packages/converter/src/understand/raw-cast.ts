import type { Block, OtherLine } from "./blocks.ts";
import { splitCells } from "./cells.ts";
import type { Moment } from "./clock.ts";
import { type ColumnHead, readHead } from "./column-head.ts";
import { type ColumnMeaning, meaningOf } from "./column-meaning.ts";
import type { RowLayout } from "./delimiter.ts";
import { type HeaderLine, readHeaderLine } from "./header-lines.ts";
import { type NumberColumn, type NumberStyleOfFile, readNumberColumn } from "./number-column.ts";
import { readMoments } from "./row-times.ts";

/** A column as it stands in one cast. */
export interface RawColumn {
  readonly index: number;
  readonly head: ColumnHead;
  readonly meaning: ColumnMeaning;
  readonly numbers: NumberColumn | null;
  /** For dates and times. */
  readonly moments: readonly (Moment | null)[] | null;
}

/** A cast before anything about it has been decided. */
export interface RawCast {
  /** Lines that belong to this cast alone. */
  readonly own: readonly HeaderLine[];
  /** Lines for all casts of the file. */
  readonly shared: readonly HeaderLine[];
  readonly notes: readonly string[];
  /** Name in a cast column; null if there is none. */
  readonly columnName: string | null;
  readonly rows: readonly (readonly string[])[];
  /** From 1. */
  readonly lines: Uint32Array;
  readonly columns: readonly RawColumn[];
  readonly headLine: number | null;
}

/** Divides the lines outside the tables into those for every cast and those for one. */
export function shareLines(blocks: readonly Block[], below: readonly OtherLine[]) {
  const [first, second] = blocks;
  const read = (lines: readonly OtherLine[]) => lines.map(readHeaderLine).filter((line) => line !== null);
  if (!first) return { shared: [], own: [], texts: [] };
  if (!second)
    return {
      shared: [] as HeaderLine[],
      own: [read([...first.above, ...below])],
      texts: [[...first.above, ...below].map(({ text }) => text)],
    };
  // the line that opens the second cast also opened the first; what stands above it is for all
  const shape = (text: string) =>
    text
      .replace(/\d+/g, "0")
      .replace(/[A-Za-z]$/, "A")
      .trim();
  const opening = second.above[0] ? shape(second.above[0].text) : null;
  const at = first.above.findIndex(({ text }) => shape(text) === opening);
  const sharedLines = at < 0 ? [] : first.above.slice(0, at);
  const own = blocks.map((block, i) => {
    const lines = i === 0 ? first.above.slice(Math.max(at, 0)) : block.above;
    return i === blocks.length - 1 ? [...lines, ...below] : lines;
  });
  return {
    shared: read(sharedLines),
    own: own.map(read),
    texts: own.map((lines) => [...sharedLines, ...lines].map(({ text }) => text)),
  };
}

/** Cells of a block's rows. */
export function cellsOfBlock(
  lines: readonly string[],
  block: Block,
  layout: RowLayout,
): (readonly string[])[] {
  const joinedAt = block.head?.joinedAt ?? null;
  return block.rowLines.map((i) => {
    const cells = splitCells(lines[i]!, layout.delimiter, layout.edges);
    if (joinedAt === null) return cells;
    return [
      ...cells.slice(0, joinedAt),
      `${cells[joinedAt]} ${cells[joinedAt + 1]}`,
      ...cells.slice(joinedAt + 2),
    ];
  });
}

export function headsOfBlock(block: Block, layout: RowLayout): readonly ColumnHead[] {
  const { head } = block;
  const width = layout.width;
  const names = head ? head.names.filter((_, i) => head.joinedAt === null || i !== head.joinedAt + 1) : [];
  const units = head ? head.units.filter((_, i) => head.joinedAt === null || i !== head.joinedAt + 1) : [];
  const count = head?.joinedAt == null ? width : width - 1;
  return Array.from({ length: count }, (_, i) => readHead(names[i] ?? "", units[i] ?? null));
}

/** Casts of a block: one, or one for each value of a cast column. */
export function rawCasts(
  block: Block,
  cells: readonly (readonly string[])[],
  heads: readonly ColumnHead[],
  lines: {
    readonly own: readonly HeaderLine[];
    readonly shared: readonly HeaderLine[];
    readonly texts: readonly string[];
  },
  style: NumberStyleOfFile,
): readonly RawCast[] {
  const numbers = block.rowLines.map((i) => i + 1);
  const groups = groupsByCast(cells, heads, style);
  return groups.map(({ name, rows }) => {
    const own = rows === null ? cells : rows.map((row) => cells[row]!);
    return {
      own: lines.own,
      shared: lines.shared,
      notes: lines.texts,
      columnName: name,
      rows: own,
      lines: Uint32Array.from(rows === null ? numbers : rows.map((row) => numbers[row]!)),
      columns: rawColumns(own, heads, style),
      headLine: block.head?.nameLine ?? null,
    };
  });
}

function rawColumns(
  rows: readonly (readonly string[])[],
  heads: readonly ColumnHead[],
  style: NumberStyleOfFile,
): readonly RawColumn[] {
  const columns: RawColumn[] = [];
  const used = new Map<string, number>();
  for (const [index, given] of heads.entries()) {
    if (given.header === "" && rows.every((row) => (row[index] ?? "") === "")) continue;
    const numbers = readNumberColumn(rows, index, style);
    const sample = rows.slice(0, 40).map((row) => row[index] ?? "");
    const meaning = meaningOf(given, sample, numbers);
    const bare = given.header === "" ? `column ${index + 1}` : given.header;
    // two columns of one name stay two columns
    const times = (used.get(bare) ?? 0) + 1;
    used.set(bare, times);
    const head = { ...given, header: times === 1 ? bare : `${bare} (${times})` };
    const moments =
      meaning.kind === "time" || (meaning.kind === "elapsed" && numbers === null)
        ? readMoments(rows.map((row) => row[index] ?? ""))
        : null;
    columns.push({ index, head, meaning, numbers, moments });
  }
  return columns;
}

/** Row groups by a column that names the cast, or else the station; one group of all rows if there is none. */
function groupsByCast(
  cells: readonly (readonly string[])[],
  heads: readonly ColumnHead[],
  style: NumberStyleOfFile,
): readonly { readonly name: string | null; readonly rows: readonly number[] | null }[] {
  const whole = [{ name: null, rows: null }];
  const byMeaning = (kind: "cast" | "station") =>
    heads.findIndex((head, i) => {
      const sample = cells.slice(0, 40).map((row) => row[i] ?? "");
      return meaningOf(head, sample, readNumberColumn(cells.slice(0, 40), i, style)).kind === kind;
    });
  const castColumn = byMeaning("cast");
  const column = castColumn >= 0 ? castColumn : byMeaning("station");
  if (column < 0) return whole;
  const groups = new Map<string, number[]>();
  for (const [row, rowCells] of cells.entries()) {
    const name = rowCells[column] ?? "";
    const group = groups.get(name);
    if (group) group.push(row);
    else groups.set(name, [row]);
  }
  // a name for nearly every row is a counter, not a cast
  if (groups.size > 1 && groups.size > cells.length / 2) return whole;
  if (castColumn < 0 && groups.size === 1) return whole;
  return [...groups].map(([name, rows]) => ({ name: castColumn < 0 ? null : name, rows }));
}
