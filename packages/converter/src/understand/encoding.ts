import { TextBytes } from "./text-bytes.ts";

/** Random access to a file that need not be held whole. */
export interface ByteSource {
  readonly size: number;
  /** All bytes, where they are in memory; else `read` is asked for some. */
  readonly held: Uint8Array | null;
  /** Fills `out` with the bytes from an offset on; there are as many. */
  read(offset: number, out: Uint8Array): void;
}

/** Some bytes of a source. */
export function bytesOf(source: ByteSource, offset: number, length: number): Uint8Array {
  if (source.held) return source.held.subarray(offset, offset + length);
  const bytes = new Uint8Array(length);
  source.read(offset, bytes);
  return bytes;
}

export type TextEncodingName = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

/** How the bytes of a file are text. */
export interface FileText {
  readonly bytes: TextBytes;
  /** WHATWG label. */
  readonly encoding: TextEncodingName;
  readonly because: string;
}

const STEP = 1 << 20;

/**
 * Text of a file: by its byte-order mark, else UTF-8 if every byte fits, else windows-1252 (which contains the
 * printable part of Latin-1). Never throws; bytes that UTF-16 cannot hold become U+FFFD. What is not UTF-16 is left
 * where it is.
 */
export function openText(file: Uint8Array | ByteSource): FileText {
  const source = file instanceof Uint8Array ? whole(file) : file;
  const head = bytesOf(source, 0, Math.min(source.size, 4096));
  if (head[0] === 0xff && head[1] === 0xfe)
    return utf16(source, 2, "utf-16le", "it begins with the UTF-16 byte-order mark FF FE");
  if (head[0] === 0xfe && head[1] === 0xff)
    return utf16(source, 2, "utf-16be", "it begins with the UTF-16 byte-order mark FE FF");
  const silent = utf16WithoutMark(head);
  if (silent) return utf16(source, 0, silent, "every other byte is NUL");
  const mark = head[0] === 0xef && head[1] === 0xbb && head[2] === 0xbf;
  if (isUtf8(source))
    return {
      bytes: new TextBytes(source, mark ? 3 : 0, "utf-8"),
      encoding: "utf-8",
      because: mark ? "it begins with the UTF-8 byte-order mark" : "all bytes are valid UTF-8",
    };
  return {
    bytes: new TextBytes(source, 0, "windows-1252"),
    encoding: "windows-1252",
    because: "some bytes are not valid UTF-8",
  };
}

/** Bytes in memory as a source. */
export const whole = (bytes: Uint8Array): ByteSource => ({
  size: bytes.length,
  held: bytes,
  read: (offset, out) => out.set(bytes.subarray(offset, offset + out.length)),
});

/** A file cut off inside a character is still UTF-8. */
function isUtf8(source: ByteSource): boolean {
  const decoder = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
  const buffer = new Uint8Array(source.held ? 0 : Math.min(STEP, source.size));
  let plain = true;
  for (let at = 0; at < source.size; at += STEP) {
    const length = Math.min(STEP, source.size - at);
    const piece = source.held ? bytesOf(source, at, length) : buffer.subarray(0, length);
    if (!source.held) source.read(at, piece);
    // what is before the first byte above 7F need not be decoded
    if (plain && isAscii(piece)) continue;
    plain = false;
    try {
      decoder.decode(piece, { stream: true });
    } catch {
      return false;
    }
  }
  return true;
}

function isAscii(bytes: Uint8Array): boolean {
  const lead = Math.min(bytes.length, (4 - (bytes.byteOffset % 4)) % 4);
  const words = (bytes.length - lead) >> 2;
  let high = 0;
  for (let i = 0; i < lead; i++) high |= bytes[i]!;
  const view = new Uint32Array(bytes.buffer, bytes.byteOffset + lead, words);
  for (let i = 0; i < words; i++) high |= view[i]! & 0x80808080;
  for (let i = lead + words * 4; i < bytes.length; i++) high |= bytes[i]!;
  return (high & 0x80808080) === 0;
}

function utf16(
  source: ByteSource,
  from: number,
  encoding: "utf-16le" | "utf-16be",
  because: string,
): FileText {
  const text = new TextDecoder(encoding).decode(bytesOf(source, from, source.size - from));
  return { bytes: new TextBytes(whole(new TextEncoder().encode(text)), 0, "utf-8"), encoding, because };
}

/** Mostly-ASCII text in UTF-16 has a NUL in every other byte. */
function utf16WithoutMark(bytes: Uint8Array): "utf-16le" | "utf-16be" | null {
  const length = bytes.length & ~1;
  if (length < 8) return null;
  let even = 0;
  let odd = 0;
  for (let i = 0; i < length; i += 2) {
    if (bytes[i] === 0) even++;
    if (bytes[i + 1] === 0) odd++;
  }
  const pairs = length / 2;
  if (odd > 0.9 * pairs && even < 0.05 * pairs) return "utf-16le";
  if (even > 0.9 * pairs && odd < 0.05 * pairs) return "utf-16be";
  return null;
}
