import { fail, type Problem, type Result, succeed } from "@wherry/core";

/** A member as the directory of the archive lists it. */
export interface ZipMember {
  readonly name: string;
  readonly method: "stored" | "deflated";
  readonly crc: number;
  readonly compressedSize: number;
  readonly size: number;
  /** Byte of the member's own header. */
  readonly offset: number;
  /** A symbolic link: its content is the name of another file. */
  readonly isLink: boolean;
}

/** Where the directory stands, as the record at the end of the archive says. */
export interface ZipEnd {
  readonly count: number;
  readonly start: number;
  readonly length: number;
}

const END = 0x06054b50;
const END_64 = 0x06064b50;
const LOCATOR_64 = 0x07064b50;
const ENTRY = 0x02014b50;
const LOCAL = 0x04034b50;
const END_LENGTH = 22;
const END_64_LENGTH = 56;
const LOCATOR_LENGTH = 20;
const ENTRY_LENGTH = 46;
const LONGEST_COMMENT = 0xffff;
const SIZES_64 = 0x0001;

/** Length of a member's own header, without its names. */
export const LOCAL_LENGTH = 30;

/** Bytes from the end of an archive in which the record of its end stands, with that of the 64-bit form. */
export const END_REACH = END_LENGTH + LONGEST_COMMENT + LOCATOR_LENGTH + END_64_LENGTH;

const viewOf = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

const broken = (file: string, message: string, byte: number): Problem => ({
  code: "zip/directory",
  message,
  where: { file, byte },
  remedy: "Get the archive again, or unpack it and name the files in it.",
});

/**
 * The members of a zip archive in memory, by its central directory; every offset and length is held against the
 * file's size.
 *
 * @returns problems for what plain archives don't have: a damaged directory, several disks, encryption, a method other
 *          than store and deflate
 * @source  PKWARE APPNOTE.TXT, sections 4.3.7, 4.3.12, 4.3.14 to 4.3.16, 4.4 and 4.5.3
 */
export function readZipDirectory(bytes: Uint8Array, file: string): Result<readonly ZipMember[]> {
  const from = Math.max(0, bytes.length - END_REACH);
  const end = readZipEnd(bytes.subarray(from), from, file);
  if (!end.ok) return end;
  const { start, length } = end.value;
  return readZipEntries(bytes.subarray(start, start + length), end.value, file);
}

/**
 * Finds the directory from the last bytes of an archive.
 *
 * @param tail  the last END_REACH bytes, or all if there are fewer
 * @param from  byte of the archive at which the tail begins
 */
export function readZipEnd(tail: Uint8Array, from: number, file: string): Result<ZipEnd> {
  const view = viewOf(tail);
  const at = findEnd(view);
  if (at < 0)
    return fail(broken(file, "the end of the archive is missing: it was cut off", from + tail.length));
  let count = view.getUint16(at + 10, true);
  let length = view.getUint32(at + 12, true);
  let start = view.getUint32(at + 16, true);
  if (view.getUint16(at + 4, true) !== 0 || view.getUint16(at + 8, true) !== count)
    return fail(broken(file, "the archive is one part of several", from + at));
  let behind = at;
  if (count === 0xffff || length === 0xffffffff || start === 0xffffffff) {
    behind = findEnd64(view, at, from);
    if (behind < 0)
      return fail(
        broken(file, "the record that an archive of the 64-bit form ends with is damaged", from + at),
      );
    count = Number(view.getBigUint64(behind + 32, true));
    length = Number(view.getBigUint64(behind + 40, true));
    start = Number(view.getBigUint64(behind + 48, true));
  }
  if (start + length > from + behind)
    return fail(
      broken(file, `the directory of ${length} bytes does not fit before the end of the archive`, from + at),
    );
  return succeed({ count, start, length });
}

/** The members that the bytes of a directory list. */
export function readZipEntries(
  directory: Uint8Array,
  { count, start }: ZipEnd,
  file: string,
): Result<readonly ZipMember[]> {
  const view = viewOf(directory);
  const members: ZipMember[] = [];
  let at = 0;
  for (let i = 0; i < count; i++) {
    const damaged = () =>
      fail(broken(file, `entry ${i + 1} of ${count} of the directory is damaged`, start + at));
    if (at + ENTRY_LENGTH > directory.length || view.getUint32(at, true) !== ENTRY) return damaged();
    const names = at + ENTRY_LENGTH;
    const extra = names + view.getUint16(at + 28, true);
    const comment = extra + view.getUint16(at + 30, true);
    const next = comment + view.getUint16(at + 32, true);
    if (next > directory.length) return damaged();
    const name = decodeName(directory.subarray(names, extra));
    const method = view.getUint16(at + 10, true);
    if ((view.getUint16(at + 8, true) & 1) !== 0)
      return fail(broken(file, `${name} is encrypted`, start + at));
    if (method !== 0 && method !== 8)
      return fail(
        broken(file, `${name} is packed by method ${method}; store and deflate are read`, start + at),
      );
    const sizes = [
      view.getUint32(at + 24, true),
      view.getUint32(at + 20, true),
      view.getUint32(at + 42, true),
    ];
    if (sizes.includes(0xffffffff) && !fillFrom64(sizes, viewOf(directory.subarray(extra, comment))))
      return damaged();
    const [size = 0, compressedSize = 0, offset = 0] = sizes;
    members.push({
      name,
      method: method === 0 ? "stored" : "deflated",
      crc: view.getUint32(at + 16, true),
      compressedSize,
      size,
      offset,
      // the upper half of the external attributes is the mode of a file where Unix made the archive
      isLink: view.getUint8(at + 5) === 3 && (view.getUint16(at + 40, true) & 0xf000) === 0xa000,
    });
    at = next;
  }
  if (at !== directory.length)
    return fail(broken(file, `the directory states ${directory.length} bytes and holds ${at}`, start));
  return succeed(members);
}

/**
 * Byte at which the packed bytes of a member begin: behind its own header, whose names may differ in length.
 *
 * @param header  the LOCAL_LENGTH bytes at the member's offset; fewer if the archive ends there
 * @param size    bytes of the whole archive
 */
export function packedStart(
  header: Uint8Array,
  { offset, name, compressedSize }: ZipMember,
  size: number,
  file: string,
): Result<number> {
  const view = viewOf(header);
  if (header.length < LOCAL_LENGTH || view.getUint32(0, true) !== LOCAL)
    return fail(broken(file, `${name} does not begin where the directory says`, offset));
  const start = offset + LOCAL_LENGTH + view.getUint16(26, true) + view.getUint16(28, true);
  return start + compressedSize > size
    ? fail(broken(file, `${name} reaches beyond the end of the archive`, offset))
    : succeed(start);
}

/** The packed bytes of a member of an archive in memory. */
export function packedBytes(bytes: Uint8Array, member: ZipMember, file: string): Result<Uint8Array> {
  const { offset, compressedSize } = member;
  const start = packedStart(bytes.subarray(offset, offset + LOCAL_LENGTH), member, bytes.length, file);
  return start.ok ? succeed(bytes.subarray(start.value, start.value + compressedSize)) : start;
}

/** The record at the end, behind which only the archive's comment may stand; -1 if there is none. */
function findEnd(view: DataView): number {
  const last = view.byteLength - END_LENGTH;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at--)
    if (
      view.getUint32(at, true) === END &&
      at + END_LENGTH + view.getUint16(at + 20, true) === view.byteLength
    )
      return at;
  return -1;
}

/** The record of the 64-bit form, which a locator before the record at the end points at; -1 if damaged. */
function findEnd64(view: DataView, end: number, from: number): number {
  const locator = end - LOCATOR_LENGTH;
  if (locator < 0 || view.getUint32(locator, true) !== LOCATOR_64) return -1;
  const at = Number(view.getBigUint64(locator + 8, true)) - from;
  return at >= 0 && at + END_64_LENGTH <= locator && view.getUint32(at, true) === END_64 ? at : -1;
}

/** Puts the 64-bit values of the extra field in place of those that are all ones; false if they are not there. */
function fillFrom64(sizes: number[], extra: DataView): boolean {
  for (let at = 0; at + 4 <= extra.byteLength; ) {
    const length = extra.getUint16(at + 2, true);
    if (extra.getUint16(at, true) !== SIZES_64) {
      at += 4 + length;
      continue;
    }
    let value = at + 4;
    const end = Math.min(value + length, extra.byteLength);
    for (const [index, size] of sizes.entries()) {
      if (size !== 0xffffffff) continue;
      if (value + 8 > end) return false;
      sizes[index] = Number(extra.getBigUint64(value, true));
      value += 8;
    }
    return true;
  }
  return false;
}

function decodeName(bytes: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}
