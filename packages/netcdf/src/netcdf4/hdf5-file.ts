import type { Hdf5Library } from "./hdf5-library.ts";
import { Hdf5Error } from "./hdf5-library.ts";

/** Classes of HDF5 types, H5T_class_t. */
export const typeClass = {
  integer: 0,
  float: 1,
  time: 2,
  string: 3,
  bitfield: 4,
  opaque: 5,
  compound: 6,
  reference: 7,
  enum: 8,
  vlen: 9,
  array: 10,
} as const;

export interface Hdf5Type {
  readonly type: number;
  readonly size: number;
  readonly signed: boolean;
  /** A variable-length string. */
  readonly vlen: boolean;
  readonly enum_type?: { readonly type: number; readonly members: Readonly<Record<string, number>> };
  readonly vlen_type?: Hdf5Type;
}

export interface Hdf5Description extends Hdf5Type {
  /** Null for a dataspace without any extent. */
  readonly shape: readonly number[] | null;
  readonly maxshape: readonly number[] | null;
  readonly chunks: readonly number[] | null;
}

export type ObjectKind = "group" | "dataset" | "type" | "link";

/** H5G_obj_t: group, dataset, named type, soft link that leads nowhere, user-defined link. */
const kinds: readonly ObjectKind[] = ["group", "dataset", "type", "link", "link"];

/** Wrong files could make us ask again and again. */
const MOST_FAILURES = 1000;

/** Values as bytes in the machine's order, or, for variable-length strings, those of each text. */
export type RawValues = { readonly bytes: Uint8Array } | { readonly texts: Uint8Array[] };

/** An HDF5 file whose bytes lie in the library's virtual file system. All methods throw Hdf5Error. */
export class Hdf5File {
  readonly size: number;
  private readonly library: Hdf5Library;
  private readonly path: string;
  private id = 0n;
  private generation = -1;
  private failures = 0;

  constructor(library: Hdf5Library, bytes: Uint8Array) {
    this.library = library;
    this.size = bytes.length;
    this.path = library.addFile(bytes);
  }

  close(): void {
    try {
      if (this.generation === this.library.generation) this.library.call((h5) => h5.close_file(this.id));
    } catch {
      // the bytes are freed all the same
    } finally {
      this.generation = -1;
      this.library.removeFile(this.path);
    }
  }

  names(group: string): string[] {
    return this.call((h5, id) => h5.get_names(id, group, false)) as string[];
  }

  kind(path: string): ObjectKind | null {
    return kinds[this.call((h5, id) => h5.get_type(id, path))] ?? null;
  }

  isSoftLink(path: string): boolean {
    return this.call((h5, id) => h5.get_symbolic_link(id, path)) !== null;
  }

  /** Where an object lies in the file; two paths to one object give the same. */
  address(path: string): string {
    return addressText(this.call((h5, id) => h5.create_object_reference(id, path)));
  }

  describe(path: string): Hdf5Description {
    return this.call((h5, id) => h5.get_dataset_metadata(id, path)) as Hdf5Description;
  }

  filters(path: string): readonly { readonly id: number; readonly name: string }[] {
    return this.call((h5, id) => h5.get_dataset_filters(id, path));
  }

  attributeNames(path: string): string[] {
    return this.call((h5, id) => h5.get_attribute_names(id, path));
  }

  describeAttribute(path: string, name: string): Hdf5Description {
    return this.call((h5, id) => h5.get_attribute_metadata(id, path, name)) as Hdf5Description;
  }

  attributeValues(path: string, name: string, description: Hdf5Description): RawValues {
    const count = (description.shape ?? [0]).reduce((product, length) => product * length, 1);
    if (count === 0) return description.vlen ? { texts: [] } : { bytes: new Uint8Array(0) };
    if (!(count * description.size <= this.size))
      throw new Hdf5Error("it claims more bytes than the file has");
    return this.call((h5, id) =>
      this.inMemory(count * description.size, (at) => {
        h5.get_attribute_data(id, path, name, BigInt(at));
        if (!description.vlen) return { bytes: h5.HEAPU8.slice(at, at + count * description.size) };
        const texts = this.texts(at, count);
        h5.reclaim_vlen_memory(id, path, name, BigInt(at));
        return { texts };
      }),
    );
  }

  /** Addresses of the objects that an attribute of lists of references names, a list for each value. */
  referenceLists(path: string, name: string): string[][] {
    const { shape, size, type, vlen_type } = this.describeAttribute(path, name);
    const count = shape?.length === 1 ? (shape[0] ?? 0) : 0;
    if (
      type !== typeClass.vlen ||
      vlen_type?.type !== typeClass.reference ||
      vlen_type.size !== 8 ||
      count > 1024
    )
      return [];
    return this.call((h5, id) =>
      this.inMemory(count * size, (at) => {
        h5.get_attribute_data(id, path, name, BigInt(at));
        const memory = new DataView(h5.HEAPU8.buffer);
        const lists: string[][] = [];
        for (let i = 0; i < count; i++) {
          const length = memory.getUint32(at + 8 * i, true);
          const from = memory.getUint32(at + 8 * i + 4, true);
          lists.push(
            Array.from({ length: Math.min(length, 1024) }, (_, j) =>
              addressText(h5.HEAPU8.slice(from + 8 * j, from + 8 * j + 8)),
            ),
          );
        }
        h5.reclaim_vlen_memory(id, path, name, BigInt(at));
        return lists;
      }),
    );
  }

  /** Values of a block of a dataset, at most 2 GiB; a scalar has no axes. */
  values(path: string, type: Hdf5Type, start: readonly number[], count: readonly number[]): RawValues {
    const many = count.reduce((product, length) => product * length, 1);
    const sizes = count.map(BigInt);
    const scalar = count.length === 0;
    return this.call((h5, id) =>
      this.inMemory(many * type.size, (at) => {
        h5.get_dataset_data(
          id,
          path,
          scalar ? null : sizes,
          scalar ? null : start.map(BigInt),
          scalar ? null : sizes.map(() => 1n),
          BigInt(at),
        );
        if (!type.vlen) return { bytes: h5.HEAPU8.slice(at, at + many * type.size) };
        const texts = this.texts(at, many);
        if (scalar) h5.reclaim_vlen_memory(id, path, "", BigInt(at));
        else h5.reclaim_vlen_memory_count(id, path, "", BigInt(at), sizes);
        return { texts };
      }),
    );
  }

  private call<T>(run: (h5: Hdf5Library["module"], id: bigint) => T): T {
    if (this.failures >= MOST_FAILURES) throw new Hdf5Error("too much of the file is damaged");
    const { library } = this;
    try {
      return library.call((h5) => {
        if (this.generation !== library.generation) {
          this.id = h5.open(this.path, h5.H5F_ACC_RDONLY, false, -1, -1);
          this.generation = library.generation;
        }
        return run(h5, this.id);
      });
    } catch (error) {
      this.failures++;
      throw error;
    }
  }

  private inMemory<T>(bytes: number, run: (at: number) => T): T {
    const h5 = this.library.module;
    const at = bytes <= h5.MAXIMUM_MEMORY ? h5._malloc(Math.max(bytes, 8)) : 0;
    if (at === 0) throw new Hdf5Error(`there is no memory for ${bytes} bytes`);
    try {
      return run(at);
    } finally {
      h5._free(at);
    }
  }

  /** Bytes of texts that pointers point to; the null pointer is the empty text. */
  private texts(at: number, count: number): Uint8Array[] {
    const heap = this.library.module.HEAPU8;
    const memory = new DataView(heap.buffer);
    return Array.from({ length: count }, (_, i) => {
      const from = memory.getUint32(at + 4 * i, true);
      return from === 0 ? new Uint8Array(0) : heap.slice(from, heap.indexOf(0, from));
    });
  }
}

const addressText = (reference: ArrayLike<number>): string => Array.from(reference).join(".");
