export type Hdf5Module = Awaited<typeof import("h5wasm")["ready"]>;

/** What the HDF5 library says when a call fails, in one sentence. */
export class Hdf5Error extends Error {}

interface Stream {
  readonly fd: number;
  readonly path?: string;
}
interface VirtualFiles {
  readonly streams: readonly (Stream | null | undefined)[];
  writeFile(path: string, bytes: Uint8Array, options: { canOwn: boolean }): void;
  readFile(path: string): Uint8Array;
  truncate(path: string, length: number): void;
  unlink(path: string): void;
  close(stream: Stream): void;
}

/** Streams below are the console's. */
const FIRST_STREAM = 3;

/**
 * The HDF5 library, compiled to WebAssembly, with the care it needs to outlive damaged files:
 *
 * - a failing call throws through the library's own frames; the stack is set back and the temporary file that
 *   the message was written to is closed;
 * - what failed calls leave behind in the library's memory (open objects, or worse after a trap) is undone by
 *   setting the memory back to what it was right after loading: at once after a trap, otherwise when the last
 *   file is closed. Files that are open meanwhile open themselves again (`generation`).
 */
export class Hdf5Library {
  /** Counts the times that the memory was set back; ids of an earlier generation are void. */
  generation = 0;
  readonly module: Hdf5Module;
  private readonly fresh: Uint8Array;
  private readonly files = new Set<string>();
  private spoilt = false;
  private made = 0;

  constructor(module: Hdf5Module) {
    this.module = module;
    module.activate_throwing_error_handler();
    const heap = module.HEAPU8;
    let used = heap.length;
    while (used > 0 && heap[used - 1] === 0) used--;
    this.fresh = heap.slice(0, used);
  }

  private get virtual(): VirtualFiles {
    return this.module.FS as unknown as VirtualFiles;
  }

  /** Puts bytes where the library can open them and gives their path. The bytes are taken over, not copied. */
  addFile(bytes: Uint8Array): string {
    this.made++;
    const path = `/netcdf-${this.made}`;
    this.virtual.writeFile(path, bytes, { canOwn: true });
    this.files.add(path);
    return path;
  }

  /** The bytes of a file as they are now, a copy. */
  bytesOf(path: string): Uint8Array {
    return this.virtual.readFile(path);
  }

  /** Frees the bytes of a file. */
  removeFile(path: string): void {
    if (!this.files.delete(path)) return;
    this.virtual.truncate(path, 0); // a stream that was left open would keep the bytes
    this.virtual.unlink(path);
    if (this.spoilt && this.files.size === 0) this.setBack();
  }

  /**
   * Runs calls of the library.
   *
   * @throws Hdf5Error for whatever goes wrong inside
   */
  call<T>(run: (module: Hdf5Module) => T): T {
    let value: { readonly done: T } | undefined;
    let thrown: unknown;
    // ccall sets the stack back to where it was once a text argument was passed; the call itself doesn't throw
    const target = this.module as unknown as { _wherryCall: () => number };
    target._wherryCall = () => {
      try {
        value = { done: run(this.module) };
      } catch (error) {
        thrown = error;
      }
      return 0;
    };
    this.module.ccall("wherryCall", "number", ["string"], ["."]);
    if (value) return value.done;
    throw this.afterFailure(thrown);
  }

  private afterFailure(thrown: unknown): Hdf5Error {
    this.spoilt = true;
    const text = thrown instanceof Error ? thrown.message : String(thrown);
    if (thrown instanceof Hdf5Error) return thrown;
    if (!text.startsWith("HDF5-DIAG")) {
      this.setBack();
      return new Hdf5Error(`the HDF5 library broke down (${text.split("\n")[0]})`);
    }
    for (const stream of this.virtual.streams)
      if (stream?.path?.startsWith("/tmp/tmpfile_")) this.virtual.close(stream);
    return new Hdf5Error(summary(text));
  }

  private setBack(): void {
    for (const stream of this.virtual.streams)
      if (stream && stream.fd >= FIRST_STREAM) this.virtual.close(stream);
    const heap = this.module.HEAPU8;
    heap.set(this.fresh);
    heap.fill(0, this.fresh.length);
    this.spoilt = false;
    this.generation++;
  }
}

/** The first and the deepest of the errors that HDF5 prints one below the other. */
function summary(text: string): string {
  const errors = [...text.matchAll(/#\d+:.* in [A-Za-z0-9_]+\(\): (.*)/g)].map((match) => match[1] ?? "");
  const first = errors.at(0);
  const deepest = errors.at(-1);
  if (first === undefined || deepest === undefined) return "HDF5 reports an error";
  return first === deepest ? first : `${first}: ${deepest}`;
}

let loading: Promise<Hdf5Library> | undefined;

/** Loads the library on first use: about 0.15 s and 20 MB, plus the bytes of the files that are open. */
export function hdf5Library(): Promise<Hdf5Library> {
  loading ??= import("h5wasm").then(async ({ ready }) => new Hdf5Library(await ready));
  return loading;
}
