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
}

const END = 0x06054b50;
const ENTRY = 0x02014b50;
const LOCAL = 0x04034b50;
const END_LENGTH = 22;
const ENTRY_LENGTH = 46;
const LOCAL_LENGTH = 30;
const LONGEST_COMMENT = 0xffff;

const viewOf = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

const broken = (file: string, message: string, byte: number): Problem => ({
  code: "zip/directory",
  message,
  where: { file, byte },
  remedy: "Get the archive again, or unpack it and name the files in it.",
});

/**
 * The members of a zip archive, by its central directory; every offset and length is held against the file's size.
 *
 * @returns problems for what plain archives don't have: a damaged directory, several disks, the 64-bit form,
 *          encryption, a method other than store and deflate
 * @source  PKWARE APPNOTE.TXT, sections 4.3.7, 4.3.12, 4.3.16 and 4.4
 */
export function readZipDirectory(bytes: Uint8Array, file: string): Result<readonly ZipMember[]> {
  const view = viewOf(bytes);
  const end = findEnd(view);
  if (end < 0) return fail(broken(file, "the end of the archive is missing: it was cut off", bytes.length));
  const count = view.getUint16(end + 10, true);
  const length = view.getUint32(end + 12, true);
  const start = view.getUint32(end + 16, true);
  if (count === 0xffff || start === 0xffffffff)
    return fail(broken(file, "the archive is of the 64-bit form, which is not read", end));
  if (view.getUint16(end + 4, true) !== 0 || view.getUint16(end + 8, true) !== count)
    return fail(broken(file, "the archive is one part of several", end));
  if (start + length > end)
    return fail(
      broken(file, `the directory of ${length} bytes does not fit before the end of the archive`, end),
    );
  const members: ZipMember[] = [];
  let at = start;
  for (let i = 0; i < count; i++) {
    if (at + ENTRY_LENGTH > end || view.getUint32(at, true) !== ENTRY)
      return fail(broken(file, `entry ${i + 1} of ${count} of the directory is damaged`, at));
    const nameLength = view.getUint16(at + 28, true);
    const next =
      at + ENTRY_LENGTH + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (next > end) return fail(broken(file, `entry ${i + 1} of ${count} of the directory is damaged`, at));
    const name = decodeName(bytes.subarray(at + ENTRY_LENGTH, at + ENTRY_LENGTH + nameLength));
    const method = view.getUint16(at + 10, true);
    if ((view.getUint16(at + 8, true) & 1) !== 0) return fail(broken(file, `${name} is encrypted`, at));
    if (method !== 0 && method !== 8)
      return fail(broken(file, `${name} is packed by method ${method}; store and deflate are read`, at));
    members.push({
      name,
      method: method === 0 ? "stored" : "deflated",
      crc: view.getUint32(at + 16, true),
      compressedSize: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      offset: view.getUint32(at + 42, true),
    });
    at = next;
  }
  if (at !== start + length)
    return fail(broken(file, `the directory states ${length} bytes and holds ${at - start}`, start));
  return succeed(members);
}

/** The packed bytes of a member: they follow its own header, whose names may differ in length. */
export function packedBytes(bytes: Uint8Array, member: ZipMember, file: string): Result<Uint8Array> {
  const view = viewOf(bytes);
  const { offset, name, compressedSize } = member;
  if (offset + LOCAL_LENGTH > bytes.length || view.getUint32(offset, true) !== LOCAL)
    return fail(broken(file, `${name} does not begin where the directory says`, offset));
  const start = offset + LOCAL_LENGTH + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  if (start + compressedSize > bytes.length)
    return fail(broken(file, `${name} reaches beyond the end of the archive`, offset));
  return succeed(bytes.subarray(start, start + compressedSize));
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

function decodeName(bytes: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}
