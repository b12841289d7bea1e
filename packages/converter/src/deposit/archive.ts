import { Zip, ZipDeflate } from "fflate";
import { tarEnd, tarHeader, tarPadding } from "./tar-blocks.ts";

/** Files one after the other as one archive; bytes are handed to `write` as they come. */
export interface Archive {
  begin(path: string, size: number): void;
  push(bytes: Uint8Array): void;
  end(): void;
  finish(): void;
}

export type ArchiveForm = "zip" | "tar";

/**
 * An archive whose bytes depend on nothing but names and contents: no owner, no clock, no zone.
 *
 * @param write is called while the other functions run
 * @param seconds moment that a tar archive gives its files, epoch seconds
 */
export const archive = (form: ArchiveForm, write: (bytes: Uint8Array) => void, seconds: number): Archive =>
  form === "zip" ? zipArchive(write) : tarArchive(write, seconds);

/**
 * The moment that files have in a zip archive: zip knows local time only, so a moment of the data set would be written
 * differently from zone to zone. Its first year is the usual word for "no moment" (common practice, no source).
 */
const noMoment = () => new Date(1980, 0, 1, 12);

/** Regular file that its owner may write and all may read, in the upper half of the attributes (common practice). */
const PLAIN_FILE = 0o100644 << 16;
const UNIX = 3;

function zipArchive(write: (bytes: Uint8Array) => void): Archive {
  const zip = new Zip((error, bytes) => {
    if (error) throw error;
    if (bytes.length > 0) write(bytes);
  });
  let file: ZipDeflate | null = null;
  return {
    begin(path) {
      file = new ZipDeflate(path, { level: 6 });
      file.mtime = noMoment();
      file.os = UNIX;
      file.attrs = PLAIN_FILE;
      zip.add(file);
    },
    push: (bytes) => file?.push(bytes, false),
    end: () => file?.push(new Uint8Array(), true),
    finish: () => zip.end(),
  };
}

function tarArchive(write: (bytes: Uint8Array) => void, seconds: number): Archive {
  let size = 0;
  return {
    begin(path, length) {
      size = length;
      write(tarHeader(path, length, seconds));
    },
    push: write,
    end: () => write(tarPadding(size)),
    finish: () => write(tarEnd()),
  };
}

/** What a zip archive without its 64-bit form can hold. */
export const ZIP_LIMITS = { files: 65_535, bytes: 2 ** 32 - 1 } as const;

/** Whether files fit a zip archive; what they would shrink by is not counted on. */
export const fitsZip = (files: readonly { readonly path: string; readonly size: number }[]): boolean =>
  files.length <= ZIP_LIMITS.files &&
  files.reduce((sum, { path, size }) => sum + size + size / 1000 + 6 * path.length + 300, 0) <=
    ZIP_LIMITS.bytes;
