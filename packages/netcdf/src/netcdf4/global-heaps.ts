const SIGNATURE = 0x4c4f4347; // "GCOL", read as a little-endian number
const FIRST_LETTER = SIGNATURE & 0xff;
const VERSION_1 = 1;
const HEADER = 16;

/**
 * Makes global heap collections that don't add up unreadable, by striking out their signature in the given
 * bytes: HDF5 2.0.0 walks through such a collection for ever, but says what is wrong where the signature is.
 *
 * @param bytes  a whole file, changed in place; 8-byte lengths are assumed, which nearly all files have
 * @source HDF5 File Format Specification, section III.E, "Disk Format: Level 1E - Global Heap"
 */
export function strikeOutBrokenHeaps(bytes: Uint8Array): void {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  // collections stand at any address
  for (let at = bytes.indexOf(FIRST_LETTER); at >= 0; at = bytes.indexOf(FIRST_LETTER, at + 1))
    if (at + HEADER <= bytes.length && view.getUint32(at, true) === SIGNATURE && !addsUp(view, at))
      view.setUint32(at, 0, true);
}

function addsUp(view: DataView, at: number): boolean {
  const end = at + Number(view.getBigUint64(at + 8, true));
  if (view.getUint8(at + 4) !== VERSION_1 || end > view.byteLength) return false;
  let next = at + HEADER;
  // what is left at the end may be too short for an object
  while (next + HEADER <= end) {
    const index = view.getUint16(next, true);
    const size = Number(view.getBigUint64(next + 8, true));
    // index 0 is free space, whose size counts its header
    const step = index === 0 ? size : HEADER + Math.ceil(size / 8) * 8;
    if (step < HEADER || next + step > end) return false;
    next += step;
  }
  return true;
}
