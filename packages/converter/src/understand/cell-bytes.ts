// What single bytes of a cell or line are, in ASCII.

export const LF = 10;
export const CR = 13;
export const TAB = 9;
export const BLANK = 32;
export const QUOTE = 34;
export const ZERO = 48;

/** The digits of some bytes as a number. */
export function wholeNumber(bytes: Uint8Array, from: number, to: number): number {
  let number = 0;
  for (let i = from; i < to; i++) {
    const digit = bytes[i]! - ZERO;
    if (digit >= 0 && digit <= 9) number = number * 10 + digit;
  }
  return number;
}

/** Behind the last line end before `to`. */
export function wholeLines(bytes: Uint8Array, from: number, to: number): number {
  let end = to;
  while (end > from && bytes[end - 1] !== LF && bytes[end - 1] !== CR) end--;
  // a CR as the last byte of the window may be half a line end
  return bytes[end - 1] === CR && end === bytes.length ? wholeLines(bytes, from, end - 1) : end;
}

/** Digits as 0. */
export const plainByte = (byte: number) => (byte >= ZERO && byte <= ZERO + 9 ? ZERO : byte);

/** Digits, signs, the decimal sign and the letter of an exponent. */
export const isNumberByte = (byte: number, decimal: string): boolean =>
  (byte >= ZERO && byte <= ZERO + 9) ||
  byte === 43 ||
  byte === 45 ||
  byte === 69 ||
  byte === 101 ||
  byte === decimal.charCodeAt(0) ||
  (decimal === "," && byte === 46);

/** Null where a cell holds other characters than those of ASCII. */
export function shapeOf(cell: string): Uint8Array | null {
  const shape = new Uint8Array(cell.length);
  for (let i = 0; i < cell.length; i++) {
    const code = cell.charCodeAt(i);
    if (code >= 0x80) return null;
    shape[i] = plainByte(code);
  }
  return shape;
}
