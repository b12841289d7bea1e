import { closeSync, fsync, openSync, readdirSync, writeSync } from "node:fs";
import { join } from "node:path";

// Products are many small files: each wait for the pool of threads would cost more than the writing.

const encoder = new TextEncoder();
/** Texts are written by way of this. */
const room = new Uint8Array(1 << 18);

/**
 * A new file that is written piece by piece.
 *
 * @throws the system's error if the disk refuses, or if there is such a file
 */
export class NewFile {
  readonly #handle: number;

  constructor(path: string) {
    this.#handle = openSync(path, "wx");
  }

  write(piece: Uint8Array | string): void {
    if (typeof piece !== "string") this.#writeBytes(piece);
    else
      for (let rest = piece; rest !== ""; ) {
        const { read, written } = encoder.encodeInto(rest, room);
        this.#writeBytes(room.subarray(0, written));
        rest = rest.slice(read);
      }
  }

  #writeBytes(bytes: Uint8Array): void {
    for (let done = 0; done < bytes.length; ) done += writeSync(this.#handle, bytes, done);
  }

  /** The disk may begin with it; `syncTree` waits until it is done, and hears of what went wrong. */
  close(): void {
    fsync(this.#handle, () => closeSync(this.#handle));
  }
}

/** A new file of these pieces. */
export function writeNew(path: string, pieces: Iterable<Uint8Array | string>): void {
  const file = new NewFile(path);
  try {
    for (const piece of pieces) file.write(piece);
  } finally {
    file.close();
  }
}

/** Files that are brought to the disk at the same time: it takes many together nearly as fast as one. */
const LANES = 32;

/**
 * Brings the files of a folder to the disk, which is done before it gets its name: a power cut leaves no empty files
 * there then.
 */
export async function syncTree(folder: string): Promise<void> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  let next = 0;
  const lane = async () => {
    while (next < files.length) {
      const { parentPath, name } = files[next++]!;
      const handle = openSync(join(parentPath, name), "r+");
      await new Promise<void>((resolve, reject) =>
        fsync(handle, (error) => (error ? reject(error) : resolve())),
      ).finally(() => closeSync(handle));
    }
  };
  await Promise.all(Array.from({ length: LANES }, lane));
}
