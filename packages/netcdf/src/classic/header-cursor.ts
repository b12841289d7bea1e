import type { DataArray } from "../dataset.ts";
import type { Place, Problem } from "../problem.ts";
import { decodeText } from "../text.ts";
import { bytesPerValue, newArray } from "../types.ts";
import { bytesOf, swapToBigEndian } from "./byte-order.ts";
import { type ClassicType, type ClassicVersion, countSize, offsetSize, padded } from "./format.ts";

/** Far more than any name takes; C programs read names of up to 256 bytes. */
const longestName = 65_536;
/** Most bytes of one attribute: texts of twice the length can't be held. */
const largestAttribute = 2 ** 28;

/** Ends the parsing of a header; caught by `readHeader` only. */
export class HeaderStop extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.message);
    this.problem = problem;
  }
}

/** Says that parsing needs the header's bytes up to `upTo`, which the file has; caught by `readHeader` only. */
export class MoreNeeded extends Error {
  readonly upTo: number;
  constructor(upTo: number) {
    super(`header bytes up to ${upTo} needed`);
    this.upTo = upTo;
  }
}

/**
 * Reads header fields one after another. Every length is compared with the file's size before anything is
 * taken, so that no claim of a damaged file is ever allocated.
 */
export class HeaderCursor {
  readonly version: ClassicVersion;
  #at = 4; // behind the magic
  #paddingWarnings = 0;
  #firstBadPadding = 0;
  #oldNames = 0;
  #firstOldName = 0;
  readonly #bytes: Uint8Array;
  readonly #view: DataView;
  readonly #fileSize: number;

  /**
   * @param bytes    the start of the file, as much as was read so far
   * @param fileSize bytes of the whole file
   */
  constructor(bytes: Uint8Array, fileSize: number, version: ClassicVersion) {
    this.version = version;
    this.#bytes = bytes;
    this.#view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    this.#fileSize = fileSize;
  }

  get at(): number {
    return this.#at;
  }

  stop(code: string, message: string, where: Place = {}, remedy?: string): never {
    throw new HeaderStop({
      code: `netcdf/${code}`,
      message,
      where: { byte: this.#at, ...where },
      ...(remedy === undefined ? {} : { remedy }),
    });
  }

  /** A 4-byte tag or type code. */
  word(what: string): number {
    return this.#view.getUint32(this.#take(4, what));
  }

  /** A count, length or dimension id: NON_NEG, which is 8 bytes wide in CDF-5. */
  count(what: string): number {
    return countSize(this.version) === 4 ? this.word(what) : this.#long(what);
  }

  /** A count of things that take at least `least` bytes each, all still to come. */
  countOf(what: string, least: number): number {
    const from = this.#at;
    const count = this.count(`the number of ${what}`);
    const room = this.#fileSize - this.#at;
    if (count * least > room) {
      this.#at = from;
      this.stop(
        "count",
        `the header claims ${count} ${what} at byte ${from}; they would take at least ${count * least} bytes, the file has ${room} left`,
        {},
        "The file is damaged or cut short: fetch it again from its source.",
      );
    }
    return count;
  }

  /** numrecs; null for a streaming file. */
  recordCount(): number | null {
    const at = this.#at;
    const wide = countSize(this.version) === 8;
    this.#take(wide ? 8 : 4, "the number of records");
    const streaming =
      this.#view.getUint32(at) === 0xffffffff && (!wide || this.#view.getUint32(at + 4) === 0xffffffff);
    if (streaming) return null;
    this.#at = at;
    return this.count("the number of records");
  }

  /** A begin: OFFSET, which is 4 bytes wide in CDF-1. */
  offset(what: string): number {
    return offsetSize(this.version) === 4 ? this.word(what) : this.#long(what);
  }

  /** A field whose value is not used. */
  skip(size: number, what: string): void {
    this.#take(size, what);
  }

  /** A name: UTF-8, or windows-1252 in old files. Some old files count NULs at its end. */
  name(what: string): string {
    const from = this.#at;
    const length = this.countOf(`bytes in the name of ${what}`, 1);
    if (length > longestName)
      this.stop(
        "name",
        `the name of ${what} at byte ${from} takes ${length} bytes, expected at most ${longestName}`,
        { byte: from },
        "The header is damaged: fetch the file again from its source.",
      );
    const { text, utf8 } = decodeText(this.#padded(length, `the name of ${what}`));
    if (!utf8) {
      if (this.#oldNames === 0) this.#firstOldName = from;
      this.#oldNames += 1;
    }
    return text.replace(/\0+$/, "");
  }

  /** Values of an attribute, stored from here on. */
  values(type: ClassicType, count: number, what: string): { bytes: Uint8Array; data: DataArray } {
    const size = count * bytesPerValue(type);
    if (size > largestAttribute)
      this.stop("too-large", `${what} takes ${size} bytes, more than the ${largestAttribute} that are read`);
    const bytes = this.#padded(size, what);
    const data = newArray(type, count) as Exclude<DataArray, string[]>;
    bytesOf(data).set(bytes);
    swapToBigEndian(data);
    return { bytes, data };
  }

  warnings(): Problem[] {
    const warnings: Problem[] = [];
    if (this.#paddingWarnings > 0)
      warnings.push({
        code: "netcdf/padding",
        message: `${this.#paddingWarnings} paddings of the header hold other bytes than zeros, the first at byte ${this.#firstBadPadding}`,
        where: { byte: this.#firstBadPadding },
        remedy: "Nothing is lost; write the file again with a current library to be rid of it.",
      });
    if (this.#oldNames > 0)
      warnings.push({
        code: "netcdf/name-encoding",
        message: `${this.#oldNames} names are not UTF-8 and were read as windows-1252, the first at byte ${this.#firstOldName}`,
        where: { byte: this.#firstOldName },
        remedy: "Rename what is misspelt.",
      });
    return warnings;
  }

  #long(what: string): number {
    const at = this.#take(8, what);
    const value = this.#view.getUint32(at) * 2 ** 32 + this.#view.getUint32(at + 4);
    if (!Number.isSafeInteger(value)) {
      this.#at = at;
      this.stop("count", `${what} at byte ${at} is ${value}, more than any file holds`);
    }
    return value;
  }

  #padded(length: number, what: string): Uint8Array {
    const end = padded(length) - length;
    const at = this.#take(length + end, what);
    for (let i = at + length; i < at + length + end; i++) {
      if (this.#bytes[i] !== 0) {
        if (this.#paddingWarnings === 0) this.#firstBadPadding = i;
        this.#paddingWarnings += 1;
        break;
      }
    }
    return this.#bytes.subarray(at, at + length);
  }

  /** Moves over `size` bytes and gives where they start. */
  #take(size: number, what: string): number {
    const at = this.#at;
    if (size > this.#fileSize - at)
      this.stop(
        "truncated-header",
        `the file ends at byte ${this.#fileSize} inside ${what}, which starts at byte ${at} and takes ${size} bytes`,
        {},
        "The file is damaged or cut short: fetch it again from its source.",
      );
    if (at + size > this.#bytes.length) throw new MoreNeeded(at + size);
    this.#at = at + size;
    return at;
  }
}
