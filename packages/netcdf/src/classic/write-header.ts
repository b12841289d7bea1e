import type { Attribute, Dataset } from "../dataset.ts";
import { encodeText } from "../text.ts";
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
 * The bytes of a header. Called twice: once to learn how long it is (any begins), once with the true begins.
 *
 * @param records    numrecs
 * @param placements one for each variable of the dataset, in order
 * @source           the grammar of the NetCDF Classic Format Specification (see format.ts)
 */
export function headerBytes(
  dataset: Dataset,
  version: ClassicVersion,
  records: number,
  placements: readonly Placement[],
): Uint8Array {
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
    const { begin, bytes } = placements[i]!;
    header.name(variable.name);
    header.count(variable.dimensions.length);
    for (const dimension of variable.dimensions) header.count(ids.get(dimension)!);
    header.attributes(variable.attributes);
    header.word(typeCodes[variable.type as ClassicType]);
    header.vsize(padded(bytes));
    header.offset(begin);
  }
  return header.finish();
}

/** The stored values of an attribute, without padding. */
function attributeBytes({ value, bytes }: Attribute): Uint8Array {
  if (typeof value === "string") return bytes ?? encodeText(value);
  const copy = value.slice() as Exclude<typeof value, string[]>;
  swapToBigEndian(copy);
  return bytesOf(copy);
}

class HeaderBytes {
  readonly #version: ClassicVersion;
  #buffer = new Uint8Array(4096);
  #length = 0;

  constructor(version: ClassicVersion) {
    this.#version = version;
  }

  bytes(bytes: Uint8Array): void {
    const end = this.#length + padded(bytes.length);
    if (end > this.#buffer.length) {
      const larger = new Uint8Array(Math.max(end, 2 * this.#buffer.length));
      larger.set(this.#buffer);
      this.#buffer = larger;
    }
    this.#buffer.set(bytes, this.#length); // what follows is zero already: the header's padding
    this.#length = end;
  }

  word(value: number): void {
    this.bytes(Uint8Array.of(value >>> 24, value >>> 16, value >>> 8, value));
  }

  #long(value: number): void {
    this.word(Math.floor(value / 2 ** 32));
    this.word(value % 2 ** 32);
  }

  count(value: number): void {
    if (countSize(this.#version) === 4) this.word(value);
    else this.#long(value);
  }

  offset(value: number): void {
    if (offsetSize(this.#version) === 4) this.word(value);
    else this.#long(value);
  }

  /** "Note on vsize": what doesn't fit into 32 bits is written as all ones. */
  vsize(value: number): void {
    this.count(this.#version === 5 ? value : Math.min(value, 2 ** 32 - 1));
  }

  name(name: string): void {
    const bytes = encodeText(storedName(name));
    this.count(bytes.length);
    this.bytes(bytes);
  }

  list(tag: number, length: number): void {
    this.word(length === 0 ? 0 : tag);
    this.count(length);
  }

  attributes(attributes: ReadonlyMap<string, Attribute>): void {
    this.list(tags.attribute, attributes.size);
    for (const attribute of attributes.values()) {
      const bytes = attributeBytes(attribute);
      this.name(attribute.name);
      this.word(typeCodes[attribute.type as ClassicType]);
      this.count(typeof attribute.value === "string" ? bytes.length : attribute.value.length);
      this.bytes(bytes);
    }
  }

  finish(): Uint8Array {
    return this.#buffer.slice(0, this.#length);
  }
}
