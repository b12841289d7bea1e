import { createHash } from "node:crypto";
import { closeSync, fstatSync, openSync, readFileSync, readSync } from "node:fs";
import type { ByteSource } from "@wherry/converter";

/** Files up to this size are read at once, which is faster. */
const SMALL = 1 << 26;
/** Bytes that are hashed at once. */
const PIECE = 1 << 20;

/**
 * Gives a file's bytes to a reader: all of a small one, a window at a time of a large one.
 *
 * @throws the system's error if the file can't be opened, read, or was cut short meanwhile
 */
export function withBytes<T>(path: string, use: (source: ByteSource) => T): T {
  const handle = openSync(path, "r");
  try {
    const { size } = fstatSync(handle);
    // what is no regular file tells no size
    if (size <= SMALL) {
      const held = readFileSync(handle);
      return use({
        size: held.length,
        held,
        read: (offset, out) => out.set(held.subarray(offset, offset + out.length)),
      });
    }
    return use({ size, held: null, read: (offset, out) => readWhole(handle, path, offset, out) });
  } finally {
    closeSync(handle);
  }
}

function readWhole(handle: number, path: string, offset: number, out: Uint8Array): void {
  for (let done = 0; done < out.length; ) {
    const read = readSync(handle, out, done, out.length - done, offset + done);
    if (read === 0)
      throw Object.assign(new Error(`${path} was cut short while it was read`), {
        code: "EIO",
        syscall: "read",
        path,
      });
    done += read;
  }
}

/** SHA-256 of a source, 64 hexadecimal digits. */
export function sha256Of(source: ByteSource): string {
  const hash = createHash("sha256");
  for (const piece of piecesOf(source)) hash.update(piece);
  return hash.digest("hex");
}

/** All bytes of a source, one piece after the other; a piece holds until the next is asked for. */
export function* piecesOf({ size, held, read }: ByteSource): Generator<Uint8Array> {
  if (held) return yield held;
  const piece = new Uint8Array(PIECE);
  for (let at = 0; at < size; at += piece.length) {
    const part = piece.subarray(0, Math.min(piece.length, size - at));
    read(at, part);
    yield part;
  }
}
