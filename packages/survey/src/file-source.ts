import { type FileHandle, open } from "node:fs/promises";
import type { Source } from "@wherry/netcdf";

export interface FileSource extends Source {
  close(): Promise<void>;
}

/**
 * Random access to a file that is never read whole.
 *
 * @throws the system's error if the file can't be opened, or was cut short while open
 */
export async function openFileSource(path: string): Promise<FileSource> {
  const handle: FileHandle = await open(path, "r");
  const { size } = await handle.stat();
  return {
    size,
    async read(offset, length) {
      const bytes = new Uint8Array(length);
      let done = 0;
      while (done < length) {
        const { bytesRead } = await handle.read(bytes, done, length - done, offset + done);
        if (bytesRead === 0)
          throw new RangeError(`${path} ends at byte ${offset + done}, ${length - done} more expected`);
        done += bytesRead;
      }
      return bytes;
    },
    close: () => handle.close(),
  };
}
