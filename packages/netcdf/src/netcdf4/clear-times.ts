const SIGNATURE = 0x5244484f; // "OHDR", read as a little-endian number
const FIRST_LETTER = SIGNATURE & 0xff;
const VERSION_2 = 2;
const HAS_TIMES = 0x20;
const HAS_PHASE_CHANGE = 0x10;
const TIMES = { at: 6, length: 16 } as const;

/**
 * Sets the times of access, change and birth of all objects to 0 in the given bytes, so that a file depends on
 * what it holds alone: the HDF5 library takes them from the clock, and its bindings can't tell it not to.
 *
 * @param bytes a whole file whose object headers are of version 2, changed in place
 * @source HDF5 File Format Specification, section IV.A.1.b, "Version 2 Data Object Header Prefix"
 */
export function clearTimes(bytes: Uint8Array): void {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = bytes.indexOf(FIRST_LETTER); at >= 0; at = bytes.indexOf(FIRST_LETTER, at + 1)) {
    const checksumAt = checksumPlace(view, at);
    // only a header has the right checksum; a text in the data that says OHDR has not
    if (checksumAt === null || view.getUint32(checksumAt, true) !== lookup3(view, at, checksumAt)) continue;
    bytes.fill(0, at + TIMES.at, at + TIMES.at + TIMES.length);
    view.setUint32(checksumAt, lookup3(view, at, checksumAt), true);
  }
}

/** Where the checksum of a header with times stands; null if there is no such header. */
function checksumPlace(view: DataView, at: number): number | null {
  const room = view.byteLength - at;
  if (room < 40 || view.getUint32(at, true) !== SIGNATURE || view.getUint8(at + 4) !== VERSION_2) return null;
  const flags = view.getUint8(at + 5);
  if ((flags & HAS_TIMES) === 0) return null;
  let next = at + TIMES.at + TIMES.length;
  if ((flags & HAS_PHASE_CHANGE) !== 0) next += 4;
  const width = 1 << (flags & 3);
  const size =
    width === 1
      ? view.getUint8(next)
      : width === 2
        ? view.getUint16(next, true)
        : width === 4
          ? view.getUint32(next, true)
          : Number(view.getBigUint64(next, true));
  const end = next + width + size;
  return end + 4 <= view.byteLength ? end : null;
}

const rotate = (x: number, by: number): number => (x << by) | (x >>> (32 - by));

/**
 * Checksum of the metadata of HDF5 over bytes from..to: "lookup3" of Bob Jenkins with the start value 0.
 *
 * @source HDF5 File Format Specification, "Jenkins' lookup3 algorithm"; B. Jenkins, lookup3.c (2006, public
 *         domain), hashlittle
 */
export function lookup3(view: DataView, from: number, to: number): number {
  let left = to - from;
  let at = from;
  let a = (0xdeadbeef + left) | 0;
  let b = a;
  let c = a;
  for (; left > 12; left -= 12, at += 12) {
    a = (a + view.getUint32(at, true)) | 0;
    b = (b + view.getUint32(at + 4, true)) | 0;
    c = (c + view.getUint32(at + 8, true)) | 0;
    a = (a - c) ^ rotate(c, 4);
    c = (c + b) | 0;
    b = (b - a) ^ rotate(a, 6);
    a = (a + c) | 0;
    c = (c - b) ^ rotate(b, 8);
    b = (b + a) | 0;
    a = (a - c) ^ rotate(c, 16);
    c = (c + b) | 0;
    b = (b - a) ^ rotate(a, 19);
    a = (a + c) | 0;
    c = (c - b) ^ rotate(b, 4);
    b = (b + a) | 0;
  }
  if (left === 0) return c >>> 0;
  const last = [0, 0, 0];
  for (let i = 0; i < left; i++) last[i >> 2]! |= view.getUint8(at + i) << (8 * (i & 3));
  a = (a + last[0]!) | 0;
  b = (b + last[1]!) | 0;
  c = (c + last[2]!) | 0;
  c = (c ^ b) - rotate(b, 14);
  a = (a ^ c) - rotate(c, 11);
  b = (b ^ a) - rotate(a, 25);
  c = (c ^ b) - rotate(b, 16);
  a = (a ^ c) - rotate(c, 4);
  b = (b ^ a) - rotate(a, 14);
  c = (c ^ b) - rotate(b, 24);
  return c >>> 0;
}
