import { isAllMissing, isRowLike, kindOfCell, splitCells } from "./cells.ts";
import type { RowLayout } from "./delimiter.ts";
import { GrowingIndex } from "./growing-index.ts";
import type { TextLines } from "./lines.ts";
import { findNames, type NamedHead } from "./names.ts";
import { isPlain, TableColumns } from "./table-columns.ts";
import { headerTopics } from "./vocabulary/header-words.ts";
import { wordsOf } from "./words.ts";

/** A line that is no row of data. */
export interface OtherLine {
  /** From 1. */
  readonly number: number;
  readonly text: string;
}

/** Rows of data that follow each other, with the lines above them. */
export interface Block {
  /** Lines above the rows that are not column heads. */
  readonly above: readonly OtherLine[];
  readonly head: NamedHead | null;
  /** Index of the line of each row. */
  readonly rowLines: Uint32Array;
  /** The rows as they were read, where that can be used as it is. */
  readonly columns: TableColumns | null;
  /** Rows behind a blank line, a remark or a repeated head. */
  readonly gaps: readonly number[];
  /** Lines from 1 of rows with too few or too many cells. */
  readonly shortRows: readonly number[];
  /** Line from 1 of a last row that was cut off; null if none. */
  readonly cutRow: number | null;
}

export interface BlockedText {
  readonly blocks: readonly Block[];
  /** Lines below the last rows. */
  readonly below: readonly OtherLine[];
}

interface Draft {
  above: OtherLine[];
  rowLines: GrowingIndex;
  gaps: number[];
  shortRows: number[];
  columns: TableColumns | null;
}

/**
 * Divides a text into blocks of rows and the lines between them, and reads the rows on the way.
 *
 * @param lines   none of them taken yet
 * @param decimal sign by which numbers are read
 */
export function findBlocks(lines: TextLines, layout: RowLayout, decimal: "." | ","): BlockedText {
  const drafts: Draft[] = [];
  const empty = () => new TableColumns(layout, { decimal, markers: [] });
  let above: OtherLine[] = [];
  let open: Draft | null = null;
  let columns = empty();
  let afterBlank = false;
  const opened = (): Draft => {
    open ??= { above, rowLines: new GrowingIndex(), gaps: [], shortRows: [], columns };
    above = [];
    if (afterBlank && open.rowLines.length > 0) open.gaps.push(open.rowLines.length);
    afterBlank = false;
    return open;
  };
  const close = () => {
    if (open) {
      drafts.push(open);
      columns = empty();
    }
    open = null;
  };
  for (;;) {
    const before = lines.count;
    const read = columns.readPlain(lines);
    if (read > 0) opened().rowLines.pushRun(before, read);
    const i = lines.count;
    if (!lines.add()) break;
    const line = lines.text(i);
    const kind = line.trim() === "" ? "blank" : classify(line, layout, open !== null);
    if (kind === "row") {
      opened().rowLines.push(i);
      columns.addCells(splitCells(line, layout.delimiter, layout.edges), isPlain(line));
      continue;
    }
    columns.passOver();
    if (kind === "blank") {
      afterBlank = true;
      continue;
    }
    if (kind === "damaged") opened().shortRows.push(i + 1);
    else {
      close();
      if (columns.tainted) columns = empty();
      above.push({ number: i + 1, text: line });
    }
  }
  close();
  const joined = joinBlocks(lines, layout, withoutStrays(drafts, lines));
  const blocks = joined.drafts.map((draft, i) => finish(draft, i === joined.drafts.length - 1));
  return { blocks, below: [...joined.below, ...above].sort((a, b) => a.number - b.number) };

  function finish(draft: Draft, last: boolean): Block {
    const { above: aboveLines, head } = findNames(draft.above, layout);
    const cut = last && !lines.lastLineEnded ? cutRow(lines, layout, draft) : null;
    const { columns, shortRows, gaps } = draft;
    const rowLines = draft.rowLines.view();
    const block = { above: aboveLines, head, gaps, cutRow: cut };
    if (cut === null) return { ...block, rowLines, shortRows, columns: columns?.tainted ? null : columns };
    return {
      ...block,
      rowLines: rowLines.filter((i) => i + 1 !== cut),
      gaps: gaps.filter((row) => row < rowLines.length - 1),
      shortRows: shortRows.filter((number) => number !== cut),
      columns: null,
    };
  }
}

function classify(line: string, layout: RowLayout, inTable: boolean): "row" | "damaged" | "other" {
  if (line.length > 20_000) return "other";
  const cells = splitCells(line, layout.delimiter, layout.edges);
  if (inTable && isBroken(line, cells)) return "damaged";
  if (inTable && isStatistic(cells)) return "other";
  const right = cells.length === layout.width || (cells.length === layout.width + 1 && cells.at(-1) === "");
  if (right && (isRowLike(cells, inTable) || (inTable && isAllMissing(cells)))) return "row";
  if (!inTable) return "other";
  // cells of the table, only fewer or more of them
  const numbers = cells.filter((cell) => ["number", "comma number"].includes(kindOfCell(cell))).length;
  const texts = cells.filter((cell) => kindOfCell(cell) === "text").length;
  return cells.length !== layout.width && numbers > 0 && texts <= (cells.length > 2 ? 1 : 0)
    ? "damaged"
    : "other";
}

const STATISTICS = new Set(
  "mean means average avg median max maximum min minimum sd std stdev total sum range moyenne mittel mittelwert summe media promedio promedio maximo minimo massimo gemiddelde gemiddeld medel medelvarde gjennomsnitt middel keskiarvo medaltal ecart type desviacion".split(
    " ",
  ),
);

/** "Mean,5.0,13.4": a line that sums up the rows above it. */
const isStatistic = (cells: readonly string[]): boolean =>
  kindOfCell(cells[0] ?? "") === "text" && STATISTICS.has(wordsOf(cells[0]!)[0] ?? "");

/** NUL bytes among numbers, or a quote that opens a cell and never closes. */
function isBroken(line: string, cells: readonly string[]): boolean {
  if (line.includes("\0")) return /\d/.test(line);
  if (!line.includes('"')) return false;
  return line.split('"').length % 2 === 0 && cells.some((cell) => /^"[^"]*$/.test(cell) && /\d/.test(cell));
}

/** Single lines of numbers among the header are no table when a longer one exists. */
function withoutStrays(drafts: readonly Draft[], lines: TextLines): Draft[] {
  const longest = Math.max(0, ...drafts.map((draft) => draft.rowLines.length));
  const kept: Draft[] = [];
  let carried: OtherLine[] = [];
  for (const draft of drafts) {
    if (longest >= 3 && draft.rowLines.length === 1 && !hasHeadAbove(draft.above)) {
      carried.push(...draft.above);
      for (const number of [draft.rowLines.at(0) + 1, ...draft.shortRows])
        carried.push({ number, text: lines.text(number - 1) });
    } else {
      kept.push({ ...draft, above: carried.length > 0 ? [...carried, ...draft.above] : draft.above });
      carried = [];
    }
  }
  const last = kept.at(-1);
  if (carried.length > 0 && last) {
    // strays below the last table: rows that were torn off; they stay visible as damaged rows
    for (const { number, text } of carried) if (/\d/.test(text)) last.shortRows.push(number);
  }
  return kept;
}

const hasHeadAbove = (above: readonly OtherLine[]): boolean => {
  const last = above.at(-1);
  return last !== undefined && wordsOf(last.text).length > 1 && above.length > 1;
};

/** Lines between blocks that open no new cast: remarks, and a repeated column head. */
function joinBlocks(
  lines: TextLines,
  layout: RowLayout,
  drafts: readonly Draft[],
): { drafts: Draft[]; below: OtherLine[] } {
  const joined: Draft[] = [];
  const below: OtherLine[] = [];
  const heads = new Set<string>();
  const first = drafts[0];
  if (first) {
    const { headLines } = findNames(first.above, layout);
    for (const number of headLines) heads.add(lines.text(number - 1).trim());
  }
  for (const draft of drafts) {
    const previous = joined.at(-1);
    if (!previous) {
      joined.push(draft);
      continue;
    }
    const said = draft.above.filter(
      ({ text }) => !heads.has(text.trim()) && !isRuler(text) && !isPageLine(text),
    );
    const opens = said.some(({ text }) => opensCast(text)) || hasNewHead(draft, layout, heads, said);
    if (opens) joined.push(draft);
    else {
      const before = previous.rowLines.length;
      previous.gaps.push(before, ...draft.gaps.map((row) => row + before));
      for (const i of draft.rowLines.view()) previous.rowLines.push(i);
      for (const number of draft.shortRows) previous.shortRows.push(number);
      previous.columns = null;
      below.push(...draft.above.filter(({ text }) => !heads.has(text.trim()) && !isRuler(text)));
    }
  }
  return { drafts: joined, below };
}

/** A head that is not the first one's, or the first one's again below lines that say something. */
function hasNewHead(
  draft: Draft,
  layout: RowLayout,
  heads: ReadonlySet<string>,
  said: readonly OtherLine[],
): boolean {
  const { head, headLines } = findNames(draft.above, layout);
  if (!head) return false;
  const repeated = draft.above.some(({ text }) => heads.has(text.trim()));
  if (repeated)
    return said.length > 0 && said.some(({ text }) => /[:=;\t]/.test(text) || wordsOf(text).length > 1);
  return headLines.length > 0 && head.names.filter((name) => name !== "").length >= 2;
}

/** A line that names a cast or a station, or gives a time or place. */
function opensCast(text: string): boolean {
  const tokens = wordsOf(text);
  if (tokens.length > 12) return false;
  const topics = headerTopics(tokens);
  return topics.has("cast") && /\d/.test(text) && tokens.length <= 6;
}

/** "Print of the recorder, page 2 of 3". */
const isPageLine = (text: string): boolean =>
  /(?<![A-Za-zÀ-ÿ])(?:page|seite|p[aá]gina|p[aà]gina|pagina|side|sida|sivu|blad|blatt|sheet|hoja|foglio|folha|bls)\.?\s*(?:no\.?|nr\.?)?\s*[:#]?\s*\d+/i.test(
    text,
  );

export const isRuler = (text: string): boolean =>
  /^[\s#*%;,|+\-=_~.:<>]*$/.test(text) && text.trim().length >= 3;

/** A last line without line end whose last cell is shorter than in all other rows, or that has too few cells. */
function cutRow(lines: TextLines, layout: RowLayout, draft: Draft): number | null {
  const last = lines.count;
  if (draft.shortRows.includes(last)) return last;
  const rows = draft.rowLines.view();
  if (rows.at(-1) !== last - 1 || rows.length < 3) return null;
  const lastCell = (i: number) => splitCells(lines.text(i), layout.delimiter, layout.edges).at(-1) ?? "";
  const own = lastCell(last - 1);
  const decimals = (cell: string) => /[.,](\d*)$/.exec(cell)?.[1]?.length ?? 0;
  const others = Array.from(rows.subarray(Math.max(0, rows.length - 200), -1), lastCell);
  const fewest = Math.min(...others.filter((cell) => /\d/.test(cell)).map(decimals));
  const shortest = Math.min(...others.map((cell) => cell.length));
  const whole =
    Number.isFinite(fewest) && fewest > 0
      ? decimals(own) >= fewest || !/\d/.test(own)
      : own.length >= shortest;
  return whole ? null : last;
}
