import type { Place } from "@wherry/core";

/** Characters of a line; the format cuts its stream into lines of this length. */
export const LINE = 80;

/**
 * The characters of a file without its line ends. Lines that lost blanks at their end get them back; the last line
 * stays as it is, so that a file that was cut off is noticed.
 */
export class WodText {
  readonly #all: string;
  readonly #short: readonly number[];
  readonly #long: readonly number[];
  readonly #file: string;
  /** Number of lines. */
  readonly lines: number;

  constructor(text: string, file: string) {
    const lines = text.split(/\r\n|\n/);
    while (lines.length > 0 && lines.at(-1)!.trim() === "") lines.pop();
    const at = (test: (line: string, index: number) => boolean) =>
      lines.flatMap((line, index) => (test(line, index) ? [index] : []));
    this.#short = at((line, index) => line.length < LINE && index < lines.length - 1);
    this.#long = at((line) => line.trimEnd().length > LINE);
    this.#all = lines
      .map((line, index) =>
        index < lines.length - 1 ? line.slice(0, LINE).padEnd(LINE) : line.slice(0, LINE),
      )
      .join("");
    this.lines = lines.length;
    this.#file = file;
  }

  /** Characters that are there. */
  get length(): number {
    return this.#all.length;
  }

  slice(from: number, to: number): string {
    return this.#all.slice(from, to);
  }

  place(offset: number): Place {
    return { file: this.#file, line: Math.floor(offset / LINE) + 1, column: (offset % LINE) + 1 };
  }

  /** The first line between two offsets that has more characters than the format allows; null if none has. */
  longLine(from: number, to: number): Place | null {
    const found = this.#long.find((line) => line * LINE >= from && line * LINE < to);
    return found === undefined ? null : { file: this.#file, line: found + 1 };
  }

  /** Lines between two offsets, counted from 1, that lack characters at their end before the second offset. */
  shortLines(from: number, to: number): readonly number[] {
    const found: number[] = [];
    for (let i = this.#firstShort(Math.ceil(from / LINE)); i < this.#short.length; i++) {
      const line = this.#short[i]!;
      if ((line + 1) * LINE > to) break;
      found.push(line + 1);
    }
    return found;
  }

  /** Place of the first short line from a line on: files hold many profiles, and each ends in a short line. */
  #firstShort(line: number): number {
    let [low, high] = [0, this.#short.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.#short[middle]! < line) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

/** A printed number of the format, and how finely it was printed. */
export interface WodValue {
  readonly value: number;
  readonly significantDigits: number;
  readonly decimals: number;
  readonly offset: number;
}

const DIGIT = /^\d$/;
const INTEGER = /^ *-?\d+$/;

/**
 * Reads the notations of the format one after another. The first fault is kept, and everything read after it is
 * empty: callers look at `fault` where they loop.
 *
 * @source NODC Internal Report 14 (World Ocean Database 1998), table 12: notation of numbers
 */
export class WodCursor {
  readonly text: WodText;
  offset: number;
  /** What broke the format, and where; `cut` if the text simply ends. */
  fault: { readonly message: string; readonly offset: number; readonly cut: boolean } | null = null;

  constructor(text: WodText, offset: number) {
    this.text = text;
    this.offset = offset;
  }

  fail(message: string, offset = this.offset, cut = false): void {
    this.fault ??= { message, offset, cut };
  }

  /** The next characters; blank after a fault. */
  take(length: number, what: string): string {
    if (this.fault) return "";
    const end = this.offset + length;
    if (end > this.text.length) {
      this.fail(`the text ends inside ${what}`, this.offset, true);
      return "";
    }
    const taken = this.text.slice(this.offset, end);
    this.offset = end;
    return taken;
  }

  digit(what: string): number {
    const at = this.offset;
    const taken = this.take(1, what);
    if (!this.fault && !DIGIT.test(taken)) this.fail(`${what} should be a digit, it is "${taken}"`, at);
    return this.fault ? 0 : taken.charCodeAt(0) - 48;
  }

  /** An integer in a field of fixed width, right-justified. */
  field(width: number, what: string): number {
    const at = this.offset;
    const taken = this.take(width, what);
    if (!this.fault && !INTEGER.test(taken))
      this.fail(`${what} should be a whole number, it is "${taken}"`, at);
    return this.fault ? 0 : Number.parseInt(taken.trim(), 10);
  }

  /** An integer after the digit that counts its characters; null where that digit is 0. */
  counted(what: string): number | null {
    const width = this.digit(`the width of ${what}`);
    if (this.fault || width === 0) return null;
    return this.field(width, what);
  }

  /** A count, 0 where it is absent. */
  count(what: string): number {
    const at = this.offset;
    const found = this.counted(what) ?? 0;
    if (found < 0) this.fail(`${what} is ${found}`, at);
    return this.fault ? 0 : found;
  }

  /** A decimal number; null where it is missing. */
  value(what: string): WodValue | null {
    const offset = this.offset;
    const first = this.take(1, what);
    if (this.fault || first === "-") return null;
    if (!DIGIT.test(first)) {
      this.fail(`${what} should begin with a digit or "-", it begins with "${first}"`, offset);
      return null;
    }
    const significantDigits = first.charCodeAt(0) - 48;
    const width = this.digit(`the width of ${what}`);
    const decimals = this.digit(`the precision of ${what}`);
    if (this.fault) return null;
    if (width === 0 || significantDigits > width) {
      this.fail(`${what} has ${significantDigits} figures in ${width} characters`, offset);
      return null;
    }
    const whole = this.field(width, what);
    return this.fault ? null : { value: whole / 10 ** decimals, significantDigits, decimals, offset };
  }
}
