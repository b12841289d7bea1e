import { type Delimiter, isRowLike, kindOfCell, splitCells } from "./cells.ts";
import { LineShapes } from "./line-shapes.ts";
import type { TextBytes } from "./text-bytes.ts";

/** How the rows of a file are divided. */
export interface RowLayout {
  readonly delimiter: Delimiter;
  /** Cells in a whole row. */
  readonly width: number;
  /** Starts of fixed columns after the first. */
  readonly edges: readonly number[];
  readonly because: string;
}

const CANDIDATES: readonly Delimiter[] = ["\t", ";", "|", ",", "whitespace"];
const SAMPLE = 600;
const NAMES: Readonly<Record<Delimiter, string>> = {
  "\t": "tabs",
  ";": "semicolons",
  "|": "bars",
  ",": "commas",
  whitespace: "blanks",
  fixed: "fixed columns",
};

/** The delimiter that makes rows of numbers out of the most lines; null if no line is a row of numbers. */
export function findLayout(bytes: TextBytes): RowLayout | null {
  const sample = sampleOf(bytes);
  const shapes = new LineShapes<{ readonly widths: readonly number[]; count: number }>();
  const found: { readonly widths: readonly number[]; count: number }[] = [];
  for (const { from, to } of sample) {
    const piece = bytes.piece(from, to);
    const shape = shapes.of(piece, 0, piece.length, () => {
      const line = bytes.decode(from, to).replaceAll("\f", "");
      found.push({ widths: CANDIDATES.map((delimiter) => widthOf(line, delimiter)), count: 0 });
      return found.at(-1)!;
    });
    shape.count++;
  }
  const rows = CANDIDATES.map((_, i) => {
    const counts = new Map<number, number>();
    for (const { widths, count } of found)
      if (widths[i]! > 0) counts.set(widths[i]!, (counts.get(widths[i]!) ?? 0) + count);
    return counts;
  });
  let best: { layout: RowLayout; score: number } | null = null;
  for (const [i, delimiter] of CANDIDATES.entries()) {
    for (const [width, count] of rows[i]!) {
      // an earlier delimiter wins a tie: blanks also part what tabs or semicolons part
      if (best && count <= best.score * 1.1) continue;
      best = {
        layout: { delimiter, width, edges: [], because: `${NAMES[delimiter]} part ${width} cells` },
        score: count,
      };
    }
  }
  if (best && best.layout.delimiter !== "whitespace") return best.layout;
  const lines = sample
    .map(({ from, to }) => bytes.decode(from, to).replaceAll("\f", ""))
    .filter((line) => line.length <= 4000 && /\d/.test(line));
  return best ? fixedIfNeeded(lines, best.layout, best.score) : findSingleColumn(lines);
}

/** Cells of a line that is a row of numbers under a delimiter; else 0. */
function widthOf(line: string, delimiter: Delimiter): number {
  if (line.length > 4000 || !/\d/.test(line)) return 0;
  if (delimiter !== "whitespace" && !line.includes(delimiter)) return 0;
  const cells = splitCells(line, delimiter);
  return cells.length >= 2 && isRowLike(cells) ? cells.length : 0;
}

interface Piece {
  readonly from: number;
  readonly to: number;
}

/** Lines of the text, or of a long one those at its begin and some at even distances. */
function sampleOf(bytes: TextBytes): readonly Piece[] {
  const begin = linesFrom(bytes, 0, SAMPLE);
  if ((begin.at(-1)?.to ?? 0) >= bytes.size - 2 || begin.length < SAMPLE) return begin;
  const step = bytes.size / (SAMPLE / 2);
  const spread = Array.from({ length: SAMPLE / 2 }, (_, i) =>
    linesFrom(bytes, Math.floor(i * step), 2).at(i === 0 ? 0 : 1),
  );
  return [...begin.slice(0, SAMPLE / 2), ...spread.filter((piece) => piece !== undefined)];
}

/** Whole lines behind an offset, without their ends. */
export function linesFrom(bytes: TextBytes, offset: number, most: number): Piece[] {
  const lines: Piece[] = [];
  const end = Math.min(bytes.size, offset + most * 4096);
  const piece = bytes.piece(offset, end);
  let from = 0;
  for (let i = 0; i < piece.length && lines.length < most; i++) {
    if (piece[i] !== 10 && piece[i] !== 13) continue;
    lines.push({ from: offset + from, to: offset + i });
    if (piece[i] === 13 && piece[i + 1] === 10) i++;
    from = i + 1;
  }
  if (lines.length < most && from < piece.length && end === bytes.size)
    lines.push({ from: offset + from, to: end });
  return lines;
}

/** One number a line, on at least three lines that follow each other. */
function findSingleColumn(sample: readonly string[]): RowLayout | null {
  const rows = sample.filter((line) => ["number", "comma number"].includes(kindOfCell(line.trim()))).length;
  return rows < 3 ? null : { delimiter: "whitespace", width: 1, edges: [], because: "one number a line" };
}

/**
 * Where blanks do not give every row the same number of cells, columns of fixed width may: places that are blank
 * in every row part them, and an empty cell keeps its place.
 */
function fixedIfNeeded(sample: readonly string[], layout: RowLayout, rows: number): RowLayout {
  const like = sample.filter((line) => isRowLike(splitCells(line, "whitespace")));
  if (like.length < 4 || like.length - rows < Math.max(1, 0.02 * like.length)) return layout;
  const widest = Math.max(...like.map((line) => splitCells(line, "whitespace").length));
  const ends = new Map<number, number>();
  for (const line of like) {
    for (const match of line.matchAll(/\S+/g)) {
      const end = match.index + match[0].length;
      ends.set(end, (ends.get(end) ?? 0) + 1);
    }
  }
  // columns are right-aligned: the ends that most rows share
  const shared = [...ends]
    .filter(([, count]) => count >= 0.5 * like.length)
    .map(([end]) => end)
    .sort((a, b) => a - b);
  const fits = like.every((line) =>
    [...line.matchAll(/\S+/g)].every((match) => shared.includes(match.index + match[0].length)),
  );
  if (!fits || shared.length !== widest || widest < 2) return layout;
  return {
    delimiter: "fixed",
    width: widest,
    edges: shared.slice(0, -1),
    because: `${widest} columns end at the same place in every row`,
  };
}
