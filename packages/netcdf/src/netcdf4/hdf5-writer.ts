import type { DataArray, NcType } from "../dataset.ts";
import { encodeText } from "../text.ts";
import { bytesPerValue } from "../types.ts";
import { clearTimes } from "./clear-times.ts";
import { typeClass } from "./hdf5-file.ts";
import { Hdf5Error, type Hdf5Library, type Hdf5Module } from "./hdf5-library.ts";

/** H5F_LIBVER_V18 and H5F_LIBVER_V110: readable by HDF5 1.8 and later, with the order of creation kept. */
const OLDEST = 1;
const NEWEST = 2;
const UNLIMITED = 2n ** 64n - 1n;
const DEFLATE = 1;
const ASCII = 0;
const UTF8 = 1;
/** Bytes of a variable-length text in the library's memory: a pointer. */
const POINTER = 4;

export interface Hdf5Layout {
  readonly shape: readonly number[];
  /** Per axis whether it may grow. */
  readonly growing: readonly boolean[];
  /** Null for values that lie together. */
  readonly chunks: readonly number[] | null;
  /** 1 to 9; 0 for none. */
  readonly deflate: number;
}

/** A new HDF5 file in the library's virtual file system. All methods throw Hdf5Error. */
export class Hdf5Writer {
  private readonly library: Hdf5Library;
  private readonly path: string;
  private readonly generation: number;
  private readonly id: bigint;
  private isOpen = true;

  constructor(library: Hdf5Library) {
    this.library = library;
    this.path = library.addFile(new Uint8Array(0));
    this.generation = library.generation;
    this.id = library.call((h5) => h5.open(this.path, h5.H5F_ACC_TRUNC, true, OLDEST, NEWEST));
  }

  /** Closes the file and gives its bytes. */
  finish(): Uint8Array {
    this.call((h5) => h5.close_file(this.id));
    this.isOpen = false;
    const bytes = this.library.bytesOf(this.path);
    clearTimes(bytes);
    return bytes;
  }

  /** Frees everything; has to be called in the end whatever happened. */
  release(): void {
    try {
      if (this.isOpen) this.call((h5) => h5.close_file(this.id));
    } catch {
      // the bytes are freed all the same
    } finally {
      this.isOpen = false;
      this.library.removeFile(this.path);
    }
  }

  createGroup(path: string): void {
    this.call((h5) => h5.create_group(this.id, path, true));
  }

  /** A dataset whose values lie together, with its values. */
  createWhole(path: string, type: NcType, shape: readonly number[], data: DataArray): void {
    this.call((h5) =>
      this.withValues(data, (at) => h5.create_dataset(this.id, path, at, metadata(type, shape))),
    );
  }

  /** A dataset in chunks, without values yet. What is never written takes no room and reads as 0. */
  createChunked(path: string, type: NcType, { shape, growing, chunks, deflate }: Hdf5Layout): void {
    const empty = {
      ...metadata(
        type,
        shape.map(() => 0),
      ),
      maxshape: shape.map((length, axis) => (growing[axis] ? UNLIMITED : BigInt(length))),
      chunks: (chunks ?? []).map(BigInt),
      ...(deflate > 0 ? { compression: DEFLATE, compression_opts: [deflate] } : {}),
    };
    this.call((h5) => {
      this.withValues(new Uint8Array(0), (at) => h5.create_dataset(this.id, path, at, empty));
      h5.resize_dataset(this.id, path, shape.map(BigInt));
    });
  }

  writeBlock(path: string, start: readonly number[], count: readonly number[], data: DataArray): void {
    const steps = count.map(() => 1n);
    this.call((h5) =>
      this.withValues(data, (at) =>
        h5.set_dataset_data(this.id, path, count.map(BigInt), start.map(BigInt), steps, at),
      ),
    );
  }

  /** Makes a dataset a dimension scale. */
  setScale(path: string, label: string): void {
    this.call((h5) => h5.set_scale(this.id, path, label));
  }

  attachScale(path: string, scale: string, axis: number): void {
    this.call((h5) => h5.attach_scale(this.id, path, scale, axis));
  }

  /** An attribute that is one text; the empty text is one NUL. */
  textAttribute(path: string, name: string, bytes: Uint8Array): void {
    const text = bytes.length === 0 ? new Uint8Array(1) : bytes;
    this.attribute(path, name, text, { ...metadata("char", []), size: text.length });
  }

  /** An attribute that is a list, or a single value without an axis. */
  listAttribute(path: string, name: string, type: NcType, data: DataArray, isScalar = false): void {
    this.attribute(path, name, data, metadata(type, isScalar ? [] : [data.length]));
  }

  private attribute(
    path: string,
    name: string,
    data: DataArray,
    description: ReturnType<typeof metadata>,
  ): void {
    this.call((h5) =>
      this.withValues(data, (at) => h5.create_attribute(this.id, path, name, at, description)),
    );
  }

  private call<T>(run: (h5: Hdf5Module) => T): T {
    if (this.generation !== this.library.generation)
      throw new Hdf5Error("the HDF5 library had to be set back while the file was written");
    return this.library.call(run);
  }

  /** Puts values where the library can read them; texts as pointers to what ends with NUL. */
  private withValues<T>(data: DataArray, run: (at: bigint) => T): T {
    const h5 = this.library.module;
    const texts = Array.isArray(data) ? data.map(encodeText) : null;
    const size = texts
      ? texts.reduce((sum, text) => sum + POINTER + text.length + 1, 0)
      : (data as Uint8Array).byteLength;
    const at = size <= h5.MAXIMUM_MEMORY ? h5._malloc(Math.max(size, 8)) : 0;
    if (at === 0) throw new Hdf5Error(`there is no memory for ${size} bytes`);
    try {
      if (texts) placeTexts(h5.HEAPU8, at, texts);
      else {
        const { buffer, byteOffset, byteLength } = data as Uint8Array;
        h5.HEAPU8.set(new Uint8Array(buffer, byteOffset, byteLength), at);
      }
      return run(BigInt(at));
    } finally {
      h5._free(at);
    }
  }
}

function placeTexts(heap: Uint8Array, at: number, texts: readonly Uint8Array[]): void {
  const pointers = new DataView(heap.buffer, at);
  let next = at + POINTER * texts.length;
  for (const [index, text] of texts.entries()) {
    pointers.setUint32(POINTER * index, next, true);
    heap.set(text, next);
    heap[next + text.length] = 0;
    next += text.length + 1;
  }
}

const isUnsigned = (type: NcType): boolean => type.startsWith("u");

/** What the bindings ask of a type and a shape. */
function metadata(type: NcType, shape: readonly number[]) {
  const isText = type === "char" || type === "string";
  const isReal = type === "float" || type === "double";
  return {
    type: isText ? typeClass.string : isReal ? typeClass.float : typeClass.integer,
    size: type === "string" ? POINTER : bytesPerValue(type),
    signed: !isUnsigned(type),
    vlen: type === "string",
    cset: type === "string" ? UTF8 : ASCII,
    littleEndian: true,
    total_size: 0,
    shape: shape.map(BigInt),
    maxshape: null as bigint[] | null,
    chunks: null as bigint[] | null,
    track_order: true,
  };
}
