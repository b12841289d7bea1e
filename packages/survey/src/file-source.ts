import { closeSync, openSync, readSync } from "node:fs";
import { type FileHandle, open } from "node:fs/promises";
import type { Source } from "@wherry/netcdf";

export interface FileSource extends Source {
  close(): Promise<void>;
}

/**
 * The first bytes of a file, fewer if it is shorter. Many files are only looked at like this, so that it does not wait
 * for a thread.
 *
 * @throws the system's error if the file can't be opened or read
 */
export function firstBytes(path: string, length: number): Uint8Array {
  const bytes = new Uint8Array(length);
  const handle = openSync(path, "r");
  try {
    return bytes.subarray(0, readSync(handle, bytes, 0, length, 0));
  } finally {
    closeSync(handle);
  }
}

/**
 * Random access to a file that is never read whole.
 *
 * @throws the system's error if the file can't be opened, or was cut short while open
 */
export async function openFileSource(path: string): Promise<FileSource> {
  const handle: FileHandle = await open(path, "r");
  const { size } = await handle.stat();
  const readInto = async (offset: number, out: Uint8Array): Promise<void> => {
    let done = 0;
    while (done < out.length) {
      const { bytesRead } = await handle.read(out, done, out.length - done, offset + done);
      if (bytesRead === 0)
        throw new RangeError(`${path} ends at byte ${offset + done}, ${out.length - done} more expected`);
      done += bytesRead;
    }
  };
  return {
    size,
    async read(offset, length) {
      // not cleared: every byte is read, or the reading fails
      const bytes = Buffer.allocUnsafeSlow(length);
      await readInto(offset, bytes);
      return bytes;
    },
    readInto,
    close: () => handle.close(),
  };
}
