/** A file's text and how its bytes were read. */
export interface DecodedText {
  readonly text: string;
  /** WHATWG label. */
  readonly encoding: "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";
  readonly because: string;
}

/**
 * Text of a file: by its byte-order mark, else UTF-8 if every byte fits, else windows-1252 (which contains the
 * printable part of Latin-1). Never throws; bytes that UTF-16 cannot hold become U+FFFD.
 */
export function decodeText(bytes: Uint8Array): DecodedText {
  if (bytes[0] === 0xff && bytes[1] === 0xfe)
    return utf16(bytes.subarray(2), "utf-16le", "it begins with the UTF-16 byte-order mark FF FE");
  if (bytes[0] === 0xfe && bytes[1] === 0xff)
    return utf16(bytes.subarray(2), "utf-16be", "it begins with the UTF-16 byte-order mark FE FF");
  const silent = utf16WithoutMark(bytes);
  if (silent) return utf16(bytes, silent, "every other byte is NUL");
  const mark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  const text = utf8(mark ? bytes.subarray(3) : bytes);
  if (text !== null)
    return {
      text,
      encoding: "utf-8",
      because: mark ? "it begins with the UTF-8 byte-order mark" : "all bytes are valid UTF-8",
    };
  return { text: windows1252(bytes), encoding: "windows-1252", because: "some bytes are not valid UTF-8" };
}

function utf8(bytes: Uint8Array): string | null {
  const decoder = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
  // a file cut off inside a character is still UTF-8
  for (let cut = 0; cut <= 3; cut++) {
    const last = bytes[bytes.length - cut];
    if (cut > 0 && (last === undefined || last < 0x80)) return null;
    try {
      return decoder.decode(bytes.subarray(0, bytes.length - cut)) + (cut > 0 ? "\uFFFD" : "");
    } catch {
      // next cut
    }
  }
  return null;
}

function utf16(bytes: Uint8Array, encoding: "utf-16le" | "utf-16be", because: string): DecodedText {
  return { text: new TextDecoder(encoding).decode(bytes), encoding, because };
}

/** Mostly-ASCII text in UTF-16 has a NUL in every other byte. */
function utf16WithoutMark(bytes: Uint8Array): "utf-16le" | "utf-16be" | null {
  const length = Math.min(bytes.length, 4096) & ~1;
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
