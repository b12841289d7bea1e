import {
  BLANK,
  CR,
  isNumberByte,
  LF,
  plainByte,
  QUOTE,
  shapeOf,
  TAB,
  wholeLines,
  wholeNumber,
  ZERO,
} from "./cell-bytes.ts";
import { kindOfCell, precisionOfCell, readCell, splitCells } from "./cells.ts";
import type { RowLayout } from "./delimiter.ts";
import type { TextLines } from "./lines.ts";

/** How numbers are written, as far as reading them needs it. */
export interface NumberForm {
  readonly decimal: "." | ",";
  /** Numbers that mark a missing value. */
  readonly markers: readonly number[];
}

/** What a column's cells were, beside their numbers. */
export interface ColumnRecord {
  /** Most significant digits of numbers that are written in an unusual way. */
  digits: number;
  /** Cells that hold no number. */
  gaps: number;
  /** Those of them that are no missing markers either, and the rows of the first of them. */
  odd: number;
  readonly oddRows: number[];
  /** Missing markers met, as they stand. */
  readonly markers: Set<string>;
  /** The latest cell that was no number, its digits as 0: another of this shape is of the same kind. */
  shape: Uint8Array | null;
  shapeIs: "missing" | "clock" | "text";
}

/** A longer line is no row. */
const LONGEST_LINE = 20_000;
const LONGEST_NUMBER = 60;
const ODD_ROWS_KEPT = 10_000;
/** So many digits make a whole number that is a double. */
const EXACT_DIGITS = 15;
/** So many digits make a whole number of 32 bits. */
const SMALL_DIGITS = 9;
/** Powers of ten that are doubles. */
const POWERS = Float64Array.from({ length: 23 }, (_, i) => 10 ** i);

/**
 * Rows of a table read straight from bytes into columns, with the results of splitting each line into cells and
 * reading each cell. Lines that are plainly rows are taken here; what is in any way unusual is left to the caller,
 * which hands its cells to `addCells`.
 */
export class TableColumns {
  readonly values: Float64Array[];
  /** Decimal places of the number of each column that has most of them. */
  readonly decimals: Int32Array;
  /** Largest number of each column, its decimal sign left away: it has the most significant digits. */
  readonly mantissas: Float64Array;
  readonly records: readonly ColumnRecord[];
  rows = 0;
  /** Whether a line that was no row left its numbers in the records, so that they have to be made again. */
  tainted = false;
  readonly #layout: RowLayout;
  readonly #form: NumberForm;
  readonly #parse: (cell: string) => number;
  readonly #part: number;
  readonly #tab: number;
  /** Cells of the row at hand that hold no number: column, and its marker or null. */
  readonly #gaps: { column: number; marker: string | null }[] = [];
  #words = 0;
  #begun = false;
  #endings = 0;

  /** Whether any cell was neither a number nor a missing marker. */
  get hasOddCells(): boolean {
    return this.records.some(({ odd }) => odd > 0);
  }

  get decimal(): "." | "," {
    return this.#form.decimal;
  }

  constructor(layout: RowLayout, form: NumberForm) {
    this.#layout = layout;
    this.#form = form;
    this.#parse = (cell) => readCell(cell, form.decimal);
    const { delimiter } = layout;
    this.#part = delimiter === "whitespace" || delimiter === "fixed" ? BLANK : delimiter.charCodeAt(0);
    this.#tab = this.#part === TAB ? BLANK : TAB;
    this.values = Array.from({ length: layout.width }, () => new Float64Array(0));
    this.decimals = new Int32Array(layout.width);
    this.mantissas = new Float64Array(layout.width);
    this.records = this.values.map(() => ({
      digits: 0,
      gaps: 0,
      odd: 0,
      oddRows: [],
      markers: new Set(),
      shape: null,
      shapeIs: "text",
    }));
  }

  /**
   * Takes the lines from `lines.next` on that are plainly rows, and returns their number. A line without its end in
   * the window is never among them.
   */
  readPlain(lines: TextLines): number {
    const before = this.rows;
    const read = this.#readRun(lines, lines.next, lines.count, Number.POSITIVE_INFINITY);
    lines.starts.length += this.rows - before;
    lines.endings |= read.endings;
    lines.next = read.next;
    return this.rows - before;
  }

  /** Takes rows by the indexes of their lines, which `lines` has met before. */
  readLines(lines: TextLines, at: Uint32Array): void {
    const { delimiter, edges } = this.#layout;
    for (let done = 0; done < at.length; ) {
      let run = 1;
      while (at[done + run] === at[done]! + run) run++;
      const from = lines.starts.at(at[done]!);
      lines.bytes.seek(from);
      const before = this.rows;
      this.#readRun(lines, from, at[done]!, run);
      done += this.rows - before;
      if (this.rows - before === run) continue;
      const line = lines.text(at[done++]!);
      this.addCells(splitCells(line, delimiter, edges), isPlain(line));
    }
  }

  #readRun(lines: TextLines, from: number, line: number, most: number): { next: number; endings: number } {
    const { bytes: window, base, size } = lines.bytes;
    const to = wholeLines(window, from - base, Math.min(window.length, size - base));
    const before = this.rows;
    let at = from - base;
    this.#endings = 0;
    while (at < to && this.rows - before < most) {
      const read = this.rows - before;
      this.#makeRoom(read > 0 ? (base + at - from) / read : 8 * this.#layout.width, size - base - at);
      const last = Math.min(this.values[0]!.length, before + most);
      lines.starts.reserve(line + last - before - lines.starts.length);
      at = this.#readRows(window, at, to, last, lines, line + read);
      if (this.rows < last) break;
    }
    return { next: base + at, endings: this.#endings };
  }

  /** Tells that the line at which `readPlain` stopped is no row. */
  passOver(): void {
    if (this.#begun) this.tainted = true;
  }

  /** Takes a row by its cells; `alike` if a later row of the same shape may be taken for the same. */
  addCells(cells: readonly string[], alike: boolean): void {
    this.#makeRoom(64, 0);
    for (const [c, record] of this.records.entries()) {
      const cell = cells[c] ?? "";
      this.values[c]![this.rows] = NaN;
      if (cell === "") {
        this.#gap(c, "");
        continue;
      }
      const value = this.#parse(cell);
      if (Number.isNaN(value)) {
        const kind = kindOfCell(cell);
        this.#gap(c, kind === "missing" ? cell : null);
        if (alike && (kind === "missing" || kind === "clock" || kind === "text")) {
          record.shape = shapeOf(cell);
          record.shapeIs = kind;
        }
      } else if (this.#form.markers.includes(value)) this.#gap(c, cell);
      else this.#number(c, value, cell);
    }
    this.rows++;
  }

  #number(c: number, value: number, cell: string): void {
    this.#begun = true;
    this.values[c]![this.rows] = value;
    const printed = precisionOfCell(cell, this.#form.decimal);
    const record = this.records[c]!;
    this.decimals[c] = Math.max(this.decimals[c]!, printed.decimals);
    record.digits = Math.max(record.digits, printed.significantDigits);
  }

  #gap(c: number, marker: string | null): void {
    const record = this.records[c]!;
    this.values[c]![this.rows] = NaN;
    record.gaps++;
    if (marker !== null) record.markers.add(marker);
    else {
      record.odd++;
      if (record.oddRows.length < ODD_ROWS_KEPT) record.oddRows.push(this.rows);
    }
  }

  #makeRoom(bytesPerRow: number, bytes: number): void {
    const capacity = this.values[0]!.length;
    if (capacity > this.rows) return;
    const expected = Math.ceil((bytes / bytesPerRow) * 1.02) + 16;
    // the first rows tell how long the others are
    const more = Math.max(64, capacity === 0 ? Math.min(expected, 2048) : expected, capacity >> 4);
    for (const [c, values] of this.values.entries()) {
      this.values[c] = new Float64Array(capacity + more);
      this.values[c].set(values);
    }
  }

  /** Reads plain rows until there are `last` of them; where it stopped. */
  #readRows(
    bytes: Uint8Array,
    from: number,
    to: number,
    last: number,
    lines: TextLines,
    first: number,
  ): number {
    const { width, delimiter, edges } = this.#layout;
    const blanks = this.#part === BLANK;
    const part = this.#part;
    const tab = this.#tab;
    const sign = this.#form.decimal.charCodeAt(0);
    const bothSides = this.#form.decimal === ",";
    const hasMarkers = this.#form.markers.length > 0;
    const { values, decimals: most, mantissas } = this;
    const fixed = delimiter === "fixed";
    const starts = lines.starts.items;
    const { base } = lines.bytes;
    let line = first;
    let endings = 0;
    let row = this.rows;
    let at = from;
    let touched = false;
    let unusual = false;
    this.#begun = false;
    rows: while (row < last && at < to) {
      touched = false;
      unusual = false;
      let p = at;
      for (let c = 0; ; ) {
        let byte = bytes[p]!;
        while (byte === BLANK || byte === tab) byte = bytes[++p]!;
        const begin = p;
        const negative = byte === 45;
        if (negative || byte === 43) byte = bytes[++p]!;
        const digitsFrom = p;
        // whole numbers of 32 bits are much faster; where they overflow, the digits are gone through again
        let small = 0;
        let digit = (byte - ZERO) >>> 0;
        while (digit < 10) {
          small = (Math.imul(small, 10) + digit) | 0;
          digit = (bytes[++p]! - ZERO) >>> 0;
        }
        let digits = p - digitsFrom;
        let decimals = 0;
        if (bytes[p] === sign && (digits > 0 || !bothSides)) {
          const fraction = ++p;
          digit = (bytes[p]! - ZERO) >>> 0;
          while (digit < 10) {
            small = (Math.imul(small, 10) + digit) | 0;
            digit = (bytes[++p]! - ZERO) >>> 0;
          }
          decimals = p - fraction;
          digits = bothSides && decimals === 0 ? 0 : digits + decimals;
        }
        let stop = p;
        byte = bytes[p]!;
        while (byte === BLANK || byte === tab) byte = bytes[++p]!;
        let parted = blanks ? p > stop : byte === part;
        if (digits > 0 && digits <= EXACT_DIGITS && (parted || byte === LF || byte === CR)) {
          const mantissa = digits <= SMALL_DIGITS ? small : wholeNumber(bytes, digitsFrom, stop);
          // digits and power of ten are doubles, so the quotient is the double nearest to the printed number
          const value = decimals === 0 ? mantissa : mantissa / POWERS[decimals]!;
          values[c]![row] = negative ? -value : value;
          if (hasMarkers && this.#form.markers.includes(negative ? -value : value)) {
            this.#gaps.push({ column: c, marker: lines.bytes.decode(base + begin, base + stop) });
            unusual = true;
          } else {
            if (decimals > most[c]!) most[c] = decimals;
            if (mantissa > mantissas[c]!) mantissas[c] = mantissa;
            touched = true;
          }
        } else {
          this.rows = row;
          if (!unusual) this.#begun = false;
          unusual = true;
          stop = this.#unusual(bytes, begin, c);
          if (stop < 0) break rows;
          p = stop;
          byte = bytes[p]!;
          while (byte === BLANK || byte === tab) byte = bytes[++p]!;
          parted = blanks ? p > stop : byte === part;
        }
        const ended = byte === LF || byte === CR;
        if (fixed && !ended && stop !== at + edges[c]!) break rows;
        if (++c === width) {
          // one more delimiter may close the row
          if (parted && !blanks) {
            byte = bytes[++p]!;
            while (byte === BLANK || byte === tab) byte = bytes[++p]!;
          }
          if (byte !== LF && byte !== CR) break rows;
          break;
        }
        if (ended) break rows;
        if (!blanks) p++;
      }
      if (p - at > LONGEST_LINE) break;
      if (unusual && !this.#takeGaps(row)) break;
      const pair = bytes[p] === CR && bytes[p + 1] === LF;
      endings |= bytes[p] === LF ? 1 : pair ? 2 : 4;
      starts[line++] = base + at;
      row++;
      at = p + (pair ? 2 : 1);
    }
    this.#begun = ((unusual && this.#begun) || touched) && row < last && at < to;
    this.#gaps.length = 0;
    this.#words = 0;
    this.rows = row;
    this.#endings |= endings;
    return at;
  }

  /** Numbers make a row, and words in fewer than half of its cells. */
  #takeGaps(row: number): boolean {
    const { width } = this.#layout;
    if (this.#gaps.length === width || this.#words * 2 >= width) return false;
    this.rows = row;
    for (const { column, marker } of this.#gaps) this.#gap(column, marker);
    this.#gaps.length = 0;
    this.#words = 0;
    return true;
  }

  /** A cell that is no short plain number; where it stops, or -1 if this row has to be looked at as a whole. */
  #unusual(bytes: Uint8Array, begin: number, c: number): number {
    const { shape, shapeIs } = this.records[c]!;
    const first = bytes[begin]!;
    if (this.#part !== BLANK && (first === this.#part || first === LF || first === CR)) {
      this.#gaps.push({ column: c, marker: "" });
      return begin;
    }
    if (shape !== null) {
      let i = 0;
      while (i < shape.length && shape[i] === plainByte(bytes[begin + i]!)) i++;
      if (i === shape.length && this.#ends(bytes, begin + i)) {
        if (shapeIs === "text") this.#words++;
        // markers have no digits: the same shape is the same text, which is known
        this.#gaps.push({ column: c, marker: shapeIs === "missing" ? String.fromCharCode(...shape) : null });
        return begin + i;
      }
    }
    const quoted = first === QUOTE && this.#part !== BLANK;
    const inner = quoted ? begin + 1 : begin;
    let stop = inner;
    while (stop - inner < LONGEST_NUMBER && isNumberByte(bytes[stop]!, this.#form.decimal)) stop++;
    const behind = quoted ? stop + 1 : stop;
    if (stop === inner || (quoted && bytes[stop] !== QUOTE) || !this.#ends(bytes, behind)) return -1;
    const cell = String.fromCharCode(...bytes.subarray(inner, stop));
    const kind = kindOfCell(cell);
    const value = this.#parse(cell);
    if ((kind !== "number" && kind !== "comma number") || Number.isNaN(value)) return -1;
    if (this.#form.markers.includes(value)) this.#gaps.push({ column: c, marker: cell });
    else this.#number(c, value, cell);
    return behind;
  }

  /** Whether a cell ends here, blanks left away. */
  #ends(bytes: Uint8Array, at: number): boolean {
    let p = at;
    while (bytes[p] === BLANK || bytes[p] === this.#tab) p++;
    return bytes[p] === LF || bytes[p] === CR || (this.#part === BLANK ? p > at : bytes[p] === this.#part);
  }
}

/** Whether the cells of a line, split by themselves, are its cells: no quotes, and nothing that is left away. */
export const isPlain = (line: string): boolean => !/["\0]/.test(line);
