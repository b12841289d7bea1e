import { GrowingIndex } from "./growing-index.ts";
import type { TextBytes } from "./text-bytes.ts";

/** Longest stretch of a line that is searched for words; a longer line is no header line. */
export const HEADER_LINE_LIMIT = 2000;

const LF = 10;
const CR = 13;
const ENDINGS = { LF: 1, CRLF: 2, CR: 4 } as const;

/** Lines of a text as they are met: where each begins. Line numbers for people are index + 1. */
export class TextLines {
  readonly starts = new GrowingIndex();
  /** Kinds of line ends met: 1 LF, 2 CRLF, 4 CR. */
  endings = 0;
  /** Where the next line begins. */
  next = 0;

  constructor(readonly bytes: TextBytes) {}

  get count(): number {
    return this.starts.length;
  }

  get ending(): "LF" | "CRLF" | "CR" | "mixed" {
    if (this.endings === 0) return "LF";
    const names = ["CRLF", "CR", "LF"] as const;
    return names.find((name) => this.endings === ENDINGS[name]) ?? "mixed";
  }

  /** False where the text stops without a line end: its last line may have been cut. */
  get lastLineEnded(): boolean {
    const { size } = this.bytes;
    const [last] = size > 0 ? this.bytes.piece(size - 1, size) : [];
    return last === LF || last === CR;
  }

  /** Takes one more line, whatever it is; false at the end of the text. */
  add(): boolean {
    const { bytes } = this;
    if (this.next >= bytes.size) return false;
    const from = this.next;
    this.starts.push(from);
    let at = from;
    for (;;) {
      const { bytes: window, base } = bytes;
      const end = Math.min(window.length, bytes.size - base);
      let i = at - base;
      while (i < end && window[i] !== LF && window[i] !== CR) i++;
      at = base + i;
      // a CR at the end of the window may be half a line end
      if (i < end && (window[i] === LF || i + 1 < end || base + end >= bytes.size)) {
        const pair = window[i] === CR && window[i + 1] === LF && i + 1 < end;
        this.endings |= pair ? ENDINGS.CRLF : window[i] === CR ? ENDINGS.CR : ENDINGS.LF;
        this.next = at + (pair ? 2 : 1);
        return true;
      }
      if (!bytes.slideTo(at)) break;
    }
    this.next = bytes.size;
    return true;
  }

  /** Text of a line without its end and without form feeds. */
  text(index: number): string {
    const from = this.starts.at(index);
    const text = this.bytes.decode(from, index + 1 < this.count ? this.starts.at(index + 1) : this.next);
    const line = text.endsWith("\n") || text.endsWith("\r") ? text.replace(/\r\n$|[\r\n]$/, "") : text;
    return line.includes("\f") ? line.replaceAll("\f", "") : line;
  }
}
