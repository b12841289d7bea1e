/** Lines of a tag file, with what its bytes tell. */
export interface TagText {
  /** Without line ends; the empty text behind the last line end is no line. */
  readonly lines: readonly string[];
  readonly hasBom: boolean;
  /** Whether the bytes are text in the encoding; else they are read as windows-1252. */
  readonly isText: boolean;
}

/** Reads a tag file: lines end with LF, CR or CRLF (RFC 8493, section 2.1.1). */
export function readTagText(bytes: Uint8Array, encoding = "utf-8"): TagText {
  const hasBom = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  const { text, isText } = decode(bytes, encoding);
  const lines = text.split(/\r\n|\r|\n/);
  if (lines.at(-1) === "") lines.pop();
  return { lines, hasBom, isText };
}

function decode(bytes: Uint8Array, encoding: string): { text: string; isText: boolean } {
  try {
    return { text: new TextDecoder(encoding, { fatal: true }).decode(bytes), isText: true };
  } catch {
    // bytes that are no text in it, or an encoding that is not known
    return { text: new TextDecoder("windows-1252").decode(bytes), isText: false };
  }
}
