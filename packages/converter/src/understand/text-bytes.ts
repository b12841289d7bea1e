import { type ByteSource, bytesOf } from "./encoding.ts";

/** Bytes held at a time where a file is not held whole. */
const WINDOW = 1 << 20;

/**
 * The bytes of a text, agreeing with ASCII below 80, of which a window is at hand. Offsets count from its first
 * character; NUL and Ctrl-Z characters at its end are left away.
 */
export class TextBytes {
  readonly size: number;
  readonly trailingControls: number;
  /** The window, and the offset of its first byte. */
  bytes: Uint8Array;
  base = 0;
  readonly #source: ByteSource;
  readonly #from: number;
  readonly #decoder: InstanceType<typeof TextDecoder> | null;

  constructor(source: ByteSource, from: number, encoding: "utf-8" | "windows-1252") {
    this.#source = source;
    this.#from = from;
    this.#decoder = encoding === "utf-8" ? new TextDecoder("utf-8", { ignoreBOM: true }) : null;
    const all = source.size - from;
    this.bytes = bytesOf(source, from, source.held ? all : Math.min(all, WINDOW));
    this.size = this.#withoutControls(all);
    this.trailingControls = all - this.size;
  }

  #withoutControls(all: number): number {
    let end = all;
    while (end > 0) {
      const from = Math.max(0, end - 4096);
      const piece = this.piece(from, end);
      let i = piece.length;
      while (i > 0 && (piece[i - 1] === 0 || piece[i - 1] === 0x1a)) i--;
      end = from + i;
      if (i > 0) break;
    }
    return end;
  }

  /** Moves the window so that it begins at `at`; false if it reached to the end of the text before. */
  slideTo(at: number): boolean {
    if (this.base + this.bytes.length >= this.size) return false;
    this.#load(at);
    return true;
  }

  /** Moves the window where `at` is not in it. */
  seek(at: number): void {
    if (at < this.base || at >= this.base + this.bytes.length) this.#load(at);
  }

  #load(at: number): void {
    const length = Math.min(WINDOW, this.size - at);
    // the buffer of the window before is filled again: nothing else refers to it
    this.bytes = new Uint8Array(this.bytes.buffer, 0, length);
    this.#source.read(this.#from + at, this.bytes);
    this.base = at;
  }

  piece(from: number, to: number): Uint8Array {
    if (from >= this.base && to <= this.base + this.bytes.length)
      return this.bytes.subarray(from - this.base, to - this.base);
    return bytesOf(this.#source, this.#from + from, to - from);
  }

  /** Text of a piece that begins and ends between characters. */
  decode(from: number, to: number): string {
    const piece = this.piece(from, to);
    let high = 0;
    for (let i = 0; i < piece.length; i++) high |= piece[i]!;
    if (high < 0x80 && piece.length < 4096) return String.fromCharCode.apply(null, piece as never);
    return this.#decoder?.decode(piece) ?? windows1252(piece);
  }
}

// bytes 80 to 9F; five of them are control characters (WHATWG Encoding Standard, index windows-1252)
const HIGH = "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ";

function windows1252(bytes: Uint8Array): string {
  const parts: string[] = [];
  const codes = new Uint16Array(8192);
  for (let at = 0; at < bytes.length; at += codes.length) {
    const length = Math.min(codes.length, bytes.length - at);
    for (let i = 0; i < length; i++) {
      const byte = bytes[at + i]!;
      codes[i] = byte >= 0x80 && byte < 0xa0 ? HIGH.charCodeAt(byte - 0x80) : byte;
    }
    parts.push(String.fromCharCode(...codes.subarray(0, length)));
  }
  return parts.join("");
}
