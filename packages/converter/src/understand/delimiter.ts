import { type Delimiter, isRowLike, kindOfCell, splitCells } from "./cells.ts";

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
export function findLayout(lines: readonly string[]): RowLayout | null {
  const sample = sampleOf(lines);
  let best: { layout: RowLayout; score: number } | null = null;
  for (const delimiter of CANDIDATES) {
    const widths = new Map<number, number>();
    for (const line of sample) {
      if (delimiter !== "whitespace" && !line.includes(delimiter)) continue;
      const cells = splitCells(line, delimiter);
      if (cells.length < 2 || !isRowLike(cells)) continue;
      widths.set(cells.length, (widths.get(cells.length) ?? 0) + 1);
    }
    for (const [width, rows] of widths) {
      // an earlier delimiter wins a tie: blanks also part what tabs or semicolons part
      if (best && rows <= best.score * 1.1) continue;
      best = {
        layout: { delimiter, width, edges: [], because: `${NAMES[delimiter]} part ${width} cells` },
        score: rows,
      };
    }
  }
  if (!best) return findSingleColumn(sample);
  return best.layout.delimiter === "whitespace"
    ? fixedIfNeeded(sample, best.layout, best.score)
    : best.layout;
}

function sampleOf(lines: readonly string[]): readonly string[] {
  const filled =
    lines.length <= SAMPLE ? lines : [...lines.slice(0, SAMPLE / 2), ...every(lines, SAMPLE / 2)];
  return filled.filter((line) => line.length <= 4000 && /\d/.test(line));
}

function every(lines: readonly string[], count: number): string[] {
  const step = lines.length / count;
  return Array.from({ length: count }, (_, i) => lines[Math.floor(i * step)] ?? "");
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
