import { type FileHandle, mkdir, open } from "node:fs/promises";
import { dirname, join } from "node:path";
import { type ArchiveForm, archive } from "@wherry/converter";

/** A file to be written, with its bytes in pieces. */
export interface Content {
  readonly path: string;
  readonly size: number;
  pieces(): AsyncIterable<Uint8Array>;
}

/** Where the files of a package go, one after the other. */
export interface BagSink {
  add(content: Content): Promise<void>;
  /** Ends an archive, and sees to it that it is on the disk. */
  finish(): Promise<void>;
  /** Closes what is open after a failure. */
  abandon(): Promise<void>;
}

/** Files of their own in a folder. */
export const folderSink = (folder: string): BagSink => ({
  async add({ path, pieces }) {
    const full = join(folder, ...path.split("/"));
    await mkdir(dirname(full), { recursive: true });
    const handle = await open(full, "wx");
    try {
      for await (const piece of pieces()) await writeAll(handle, piece);
    } finally {
      await handle.close();
    }
  },
  finish: async () => {},
  abandon: async () => {},
});

/**
 * An archive in a file, with the bag in a folder in it.
 *
 * @param base    name of that folder
 * @param seconds moment of the files, epoch seconds
 */
export async function archiveSink(
  file: string,
  form: ArchiveForm,
  base: string,
  seconds: number,
): Promise<BagSink> {
  const handle = await open(file, "w");
  const waiting: Uint8Array[] = [];
  const writer = archive(form, (bytes) => waiting.push(bytes), seconds);
  const flush = async () => {
    for (const bytes of waiting.splice(0)) await writeAll(handle, bytes);
  };
  return {
    async add({ path, size, pieces }) {
      writer.begin(`${base}/${path}`, size);
      await flush();
      for await (const piece of pieces()) {
        writer.push(piece);
        await flush();
      }
      writer.end();
      await flush();
    },
    async finish() {
      writer.finish();
      await flush();
      await handle.sync();
      await handle.close();
    },
    // closing twice does nothing
    abandon: () => handle.close(),
  };
}

async function writeAll(handle: FileHandle, bytes: Uint8Array): Promise<void> {
  for (let done = 0; done < bytes.length; ) done += (await handle.write(bytes, done)).bytesWritten;
}
