import type { Attribute, Dataset } from "../dataset.ts";
import { encodeInto, encodeText } from "../text.ts";
import { bytesOf, swapToBigEndian } from "./byte-order.ts";
import { storedName } from "./check-content.ts";
import {
  type ClassicType,
  type ClassicVersion,
  countSize,
  offsetSize,
  type Placement,
  padded,
  tags,
  typeCodes,
} from "./format.ts";

/**
 * The bytes of a header, all but where its variables begin, since that depends on how long it is.
 *
 * @param records numrecs
 * @param sizes   one for each variable of the dataset, in order
 * @source        the grammar of the NetCDF Classic Format Specification (see format.ts)
 */
export function headerBytes(
  dataset: Dataset,
  version: ClassicVersion,
  records: number,
  sizes: readonly Placement[],
): HeaderBytes {
  const header = new HeaderBytes(version);
  header.bytes(Uint8Array.of(0x43, 0x44, 0x46, version)); // "CDF"
  header.count(records);
  const ids = new Map<string, number>();
  header.list(tags.dimension, dataset.dimensions.size);
  for (const { name, length, unlimited } of dataset.dimensions.values()) {
    ids.set(name, ids.size);
    header.name(name);
    header.count(unlimited ? 0 : length);
  }
  header.attributes(dataset.attributes);
  header.list(tags.variable, dataset.variables.size);
  for (const [i, variable] of [...dataset.variables.values()].entries()) {
    const { bytes } = sizes[i]!;
    header.name(variable.name);
    header.count(variable.dimensions.length);
    for (const dimension of variable.dimensions) header.count(ids.get(dimension)!);
    header.attributes(variable.attributes);
    header.word(typeCodes[variable.type as ClassicType]);
    header.vsize(padded(bytes));
    header.begin();
  }
  return header;
}

/** The stored values of an attribute, without padding. */
function attributeBytes({ value, bytes }: Attribute): Uint8Array {
  if (typeof value === "string") return bytes ?? encodeText(value);
  const copy = value.slice() as Exclude<typeof value, string[]>;
  swapToBigEndian(copy);
  return bytesOf(copy);
}

export class HeaderBytes {
  readonly #version: ClassicVersion;
  readonly #begins: number[] = [];
  #buffer = new Uint8Array(16_384);
  #length = 0;

  constructor(version: ClassicVersion) {
    this.#version = version;
  }

  get length(): number {
    return this.#length;
  }

  /** Makes room; what follows is zero already: the header's padding. */
  #grow(bytes: number): void {
    const end = this.#length + padded(bytes);
    if (end <= this.#buffer.length) return;
    const larger = new Uint8Array(Math.max(end, 2 * this.#buffer.length));
    larger.set(this.#buffer);
    this.#buffer = larger;
  }

  bytes(bytes: Uint8Array): void {
    this.#grow(bytes.length);
    this.#buffer.set(bytes, this.#length);
    this.#length += padded(bytes.length);
  }

  /** A text and, before it, the number of its bytes. */
  text(text: string): void {
    const sized = countSize(this.#version);
    this.#grow(sized + 3 * text.length);
    const at = this.#length + sized;
    const bytes = encodeInto(text, this.#buffer, at);
    this.count(bytes);
    this.#length = at + padded(bytes);
  }

  word(value: number): void {
    this.#grow(4);
    this.#put(value, this.#length);
    this.#length += 4;
  }

  #put(value: number, at: number): void {
    this.#buffer[at] = value >>> 24;
    this.#buffer[at + 1] = value >>> 16;
    this.#buffer[at + 2] = value >>> 8;
    this.#buffer[at + 3] = value;
  }

  #long(value: number): void {
    this.word(Math.floor(value / 2 ** 32));
    this.word(value % 2 ** 32);
  }

  count(value: number): void {
    if (countSize(this.#version) === 4) this.word(value);
    else this.#long(value);
  }

  /** Room for where a variable begins. */
  begin(): void {
    this.#begins.push(this.#length);
    if (offsetSize(this.#version) === 4) this.word(0);
    else this.#long(0);
  }

  /** "Note on vsize": what doesn't fit into 32 bits is written as all ones. */
  vsize(value: number): void {
    this.count(this.#version === 5 ? value : Math.min(value, 2 ** 32 - 1));
  }

  name(name: string): void {
    this.text(storedName(name));
  }

  list(tag: number, length: number): void {
    this.word(length === 0 ? 0 : tag);
    this.count(length);
  }

  attributes(attributes: ReadonlyMap<string, Attribute>): void {
    this.list(tags.attribute, attributes.size);
    for (const attribute of attributes.values()) {
      const { name, type, value, bytes } = attribute;
      this.name(name);
      this.word(typeCodes[type as ClassicType]);
      if (typeof value === "string" && bytes === undefined) this.text(value);
      else {
        const stored = attributeBytes(attribute);
        this.count(typeof value === "string" ? stored.length : value.length);
        this.bytes(stored);
      }
    }
  }

  /** The header, now that it is known where its variables begin. */
  finish(begins: readonly number[]): Uint8Array {
    for (const [i, begin] of begins.entries()) {
      const at = this.#begins[i]!;
      const long = offsetSize(this.#version) !== 4;
      if (long) this.#put(Math.floor(begin / 2 ** 32), at);
      this.#put(begin % 2 ** 32, long ? at + 4 : at);
    }
    return this.#buffer.slice(0, this.#length);
  }
}
