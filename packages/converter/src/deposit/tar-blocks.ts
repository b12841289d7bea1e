const BLOCK = 512;
const encoder = new TextEncoder();

/** Largest size that the twelve octal digits of a header hold. */
const LARGEST = 8 ** 11 - 1;

/**
 * Header of a plain file, before it an extended header where the path or the size needs one.
 *
 * @param seconds time of the file, epoch seconds
 * @source POSIX.1-2017, pax, "ustar interchange format" and "pax extended header"
 */
export function tarHeader(path: string, size: number, seconds: number): Uint8Array {
  const name = encoder.encode(path);
  const records = [
    ...(name.length > 100 || /[^ -~]/.test(path) ? [record("path", path)] : []),
    ...(size > LARGEST ? [record("size", String(size))] : []),
  ];
  const plain = header(name.subarray(0, 100), size > LARGEST ? 0 : size, seconds, "0");
  if (records.length === 0) return plain;
  const more = encoder.encode(records.join(""));
  return joined([
    header(encoder.encode("pax_header"), more.length, seconds, "x"),
    more,
    tarPadding(more.length),
    plain,
  ]);
}

/** Zeros after a content, up to a whole number of blocks. */
export const tarPadding = (size: number): Uint8Array => new Uint8Array((BLOCK - (size % BLOCK)) % BLOCK);

/** Two blocks of zeros end an archive. */
export const tarEnd = (): Uint8Array => new Uint8Array(2 * BLOCK);

/** A record tells its own length in bytes, its digits counted. */
function record(key: string, value: string): string {
  const rest = encoder.encode(` ${key}=${value}\n`).length;
  let length = rest + String(rest).length;
  if (String(length).length > String(rest).length) length = rest + String(length).length;
  return `${length} ${key}=${value}\n`;
}

function header(name: Uint8Array, size: number, seconds: number, type: "0" | "x"): Uint8Array {
  const block = new Uint8Array(BLOCK);
  const text = (at: number, value: string) => block.set(encoder.encode(value), at);
  const octal = (at: number, digits: number, value: number) =>
    text(at, value.toString(8).padStart(digits, "0"));
  block.set(name, 0);
  octal(100, 7, 0o644);
  octal(108, 7, 0);
  octal(116, 7, 0);
  octal(124, 11, size);
  octal(136, 11, Math.max(0, seconds));
  text(148, " ".repeat(8));
  text(156, type);
  text(257, "ustar\u000000");
  const sum = block.reduce((total, byte) => total + byte, 0);
  text(148, `${sum.toString(8).padStart(6, "0")}\u0000 `);
  return block;
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
