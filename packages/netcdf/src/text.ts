const strictUtf8 = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
const oldLatin = new TextDecoder("windows-1252");
const encoder = new TextEncoder();

/** Text of stored bytes: UTF-8, or windows-1252 where they are not valid UTF-8. */
export function decodeText(bytes: Uint8Array): { readonly text: string; readonly utf8: boolean } {
  try {
    return { text: strictUtf8.decode(bytes), utf8: true };
  } catch {
    return { text: oldLatin.decode(bytes), utf8: false };
  }
}

/** Text as UTF-8. A lone surrogate has no bytes in UTF-8: ask `isWellFormed` first. */
export const encodeText = (text: string): Uint8Array => encoder.encode(text);

/** Writes a text as UTF-8 into a buffer with room for three bytes a character; how many bytes it took. */
export function encodeInto(text: string, buffer: Uint8Array, at: number): number {
  if (text.length > 60) return encoder.encodeInto(text, buffer.subarray(at)).written;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code >= 0x80) return encoder.encodeInto(text, buffer.subarray(at)).written;
    buffer[at + i] = code;
  }
  return text.length;
}

/** Whether a text has no lone surrogate. */
export const isWellFormed = (text: string): boolean =>
  // most texts have no surrogates at all, and are gone through faster without looking for whole characters
  !/[\uD800-\uDFFF]/.test(text) || !/\p{Surrogate}/u.test(text);
