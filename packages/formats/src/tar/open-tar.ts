import { fail, type Problem, type Result, succeed } from "@wherry/core";
import type { Source } from "@wherry/netcdf";
import {
  type ContainedFile,
  type Container,
  done,
  eachPiece,
  partOf,
  shown,
  sift,
  tooMany,
  unsafe,
} from "../package/container.ts";

const BLOCK = 512;
/** Bytes of a long name or of extended fields that are taken; no path is longer. */
const LONGEST_FIELD = 2 ** 16;

interface Header {
  readonly name: string;
  readonly size: number;
  readonly kind: string;
}

/** By the word "ustar" in the first header. */
export const isTar = (head: Uint8Array): boolean =>
  head.length >= BLOCK && new TextDecoder("latin1").decode(head.subarray(257, 262)) === "ustar";

/**
 * A tar archive read in place: the headers are read one after the other, the content of files only when it is asked for.
 *
 * Read are the ustar and pax forms and the long names of the GNU form. Links, devices and sparse files are refused, one
 * by one.
 *
 * @returns problems tar/damaged (a header that does not agree with its checksum, an archive cut off), package/too-many
 * @source  POSIX.1-2017, pax, sections "ustar Interchange Format" and "pax Extended Header"; the long names of the GNU
 *          form: common practice, no source
 */
export async function openTar(archive: Source, path: string): Promise<Result<Container>> {
  const files: ContainedFile[] = [];
  const refused: Problem[] = [];
  const damaged = (message: string, byte: number) =>
    fail({ code: "tar/damaged", message, where: { file: path, byte }, remedy: "Get the archive again." });
  let given: { path?: string; size?: number } = {};
  let at = 0;
  let entries = 0;
  for (; at + BLOCK <= archive.size; ) {
    const block = await archive.read(at, BLOCK);
    if (block.every((byte) => byte === 0)) return succeed(withRefused(sift(path, "tar", files), refused));
    const header = readHeader(block);
    if (header === null) return damaged("the header of an entry does not agree with its checksum", at);
    entries += 1;
    const excess = tooMany(path, entries);
    if (excess) return fail(excess);
    const { kind } = header;
    const isField = "xgLK".includes(kind);
    const name = isField ? header.name : (given.path ?? header.name);
    const size = isField ? header.size : (given.size ?? header.size);
    const start = at + BLOCK;
    if (start + size > archive.size) return damaged(`the archive is cut off within ${shown(name)}`, at);
    if (isField) {
      if (size > LONGEST_FIELD) return damaged(`the fields of an entry take ${size} bytes`, at);
      const field = await archive.read(start, size);
      if (kind === "L") given = { ...given, path: textOf(field) };
      if (kind === "x") given = { ...given, ...readFields(field) };
    } else {
      given = {};
      if (kind === "0") files.push(memberFile(archive, name, start, size));
      // a folder is opened by nobody, but its path tells of the archive
      else if (kind === "5")
        refused.push(...sift(path, "tar", [memberFile(archive, name, start, 0)]).refused);
      else refused.push(unsafe(path, name, `it is no plain file (type "${shown(kind)}")`));
    }
    at = start + Math.ceil(size / BLOCK) * BLOCK;
  }
  return damaged("the end of the archive is missing: it was cut off", at);
}

const withRefused = (container: Container, more: readonly Problem[]): Container => ({
  ...container,
  refused: [...container.refused, ...more],
});

const memberFile = (archive: Source, path: string, start: number, size: number): ContainedFile => {
  const source = partOf(archive, start, size);
  return {
    path,
    size,
    use: async (work) => succeed(await work(source)),
    async each(take) {
      await eachPiece(source, take);
      return done;
    },
  };
};

/** The text of a field up to its NUL. */
const textOf = (bytes: Uint8Array): string => {
  const end = bytes.indexOf(0);
  return new TextDecoder().decode(end < 0 ? bytes : bytes.subarray(0, end));
};

function readHeader(block: Uint8Array): Header | null {
  const stated = octal(block.subarray(148, 156));
  // the sum is made with blanks in the place of the checksum itself
  const sum = block.reduce((all, byte, index) => all + (index >= 148 && index < 156 ? 32 : byte), 0);
  const size = octal(block.subarray(124, 136));
  if (stated !== sum || size === null || size > Number.MAX_SAFE_INTEGER) return null;
  const [letter = 0] = block.subarray(156, 157);
  const kind = letter === 0 ? "0" : String.fromCharCode(letter);
  const name = textOf(block.subarray(0, 100));
  const isUstar = textOf(block.subarray(257, 263)) === "ustar";
  const prefix = isUstar ? textOf(block.subarray(345, 500)) : "";
  // before ustar a name with a slash at its end was how a folder was told
  const isFolder = kind === "0" && name.endsWith("/");
  return { name: prefix === "" ? name : `${prefix}/${name}`, size, kind: isFolder ? "5" : kind };
}

/** A number in octal digits, or (first bit set) in binary; null if it is neither. */
function octal(bytes: Uint8Array): number | null {
  const [first = 0] = bytes;
  if (first === 0x80) return bytes.subarray(1).reduce((all, byte) => all * 256 + byte, 0);
  const text = textOf(bytes).trim();
  return /^[0-7]*$/.test(text)
    ? [...text].reduce((all, digit) => all * 8 + digit.charCodeAt(0) - 48, 0)
    : null;
}

/** Path and size of the extended fields: records "length key=value", each with a line end. */
function readFields(bytes: Uint8Array): { path?: string; size?: number } {
  const found: { path?: string; size?: number } = {};
  for (let at = 0; at < bytes.length; ) {
    const blank = bytes.indexOf(32, at);
    const digits = blank < 0 ? "" : textOf(bytes.subarray(at, blank));
    const length = /^[1-9]\d{0,6}$/.test(digits) ? Number.parseInt(digits, 10) : 0;
    if (length <= digits.length + 2 || at + length > bytes.length) return found;
    const record = new TextDecoder().decode(bytes.subarray(blank + 1, at + length - 1));
    const [key = ""] = record.split("=", 1);
    const value = record.slice(key.length + 1);
    if (key === "path") found.path = value;
    if (key === "size" && /^\d{1,15}$/.test(value)) found.size = Number.parseInt(value, 10);
    at += length;
  }
  return found;
}
