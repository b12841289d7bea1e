import fc from "fast-check";
import type { ClassicType, ClassicVersion } from "../src/classic/format.ts";
import type { Attribute, DataArray, Dataset } from "../src/dataset.ts";
import { type MemoryVariable, memoryDataset, textAttribute } from "../src/memory.ts";
import { bytesPerValue, newArray } from "../src/types.ts";

const classicTypes: readonly ClassicType[] = ["byte", "char", "short", "int", "float", "double"];
const types: Readonly<Record<ClassicVersion, readonly ClassicType[]>> = {
  1: classicTypes,
  2: classicTypes,
  5: [...classicTypes, "ubyte", "ushort", "uint", "int64", "uint64"],
};

const firstLetter = fc.constantFrom("a", "Z", "_", "7", "é", "水", "😀");
const otherLetter = fc.constantFrom("b", "Q", "_", "0", "-", "+", ".", "@", "(", "°", "ß", "深", "𝛿");
const name = fc
  .tuple(firstLetter, fc.array(otherLetter, { maxLength: 6 }))
  .map(([first, others]) => (first + others.join("")).normalize("NFC"));
const names = (minLength: number, maxLength: number) => fc.uniqueArray(name, { minLength, maxLength });

/** Values of any bits, so also NaNs of every kind. */
const values = (type: ClassicType, length: number): fc.Arbitrary<Exclude<DataArray, string[]>> => {
  const bytes = length * bytesPerValue(type);
  return fc.uint8Array({ minLength: bytes, maxLength: bytes }).map((random) => {
    const data = newArray(type, length) as Exclude<DataArray, string[]>;
    new Uint8Array(data.buffer).set(random);
    return data;
  });
};

const attribute = (version: ClassicVersion, called: string): fc.Arbitrary<Attribute> =>
  fc.constantFrom(...types[version]).chain((type): fc.Arbitrary<Attribute> => {
    if (type === "char")
      return fc.string({ unit: "binary", maxLength: 9 }).map((text) => textAttribute(called, text));
    return fc
      .nat({ max: 3 })
      .chain((length) => values(type, length))
      .map((value) => ({ name: called, type, value }));
  });

const attributes = (version: ClassicVersion): fc.Arbitrary<Attribute[]> =>
  names(0, 3).chain((called) => fc.tuple(...called.map((one) => attribute(version, one))));

/** Datasets that a version can say: any types, ranks to 3, with and without records. */
export const anyDataset = (version: ClassicVersion): fc.Arbitrary<Dataset> =>
  fc
    .tuple(names(1, 4), fc.boolean(), fc.nat({ max: 5 }), fc.array(fc.integer({ min: 1, max: 4 }), size(4)))
    .chain(([called, withRecords, records, lengths]) => {
      const dimensions = called.map((one, i) => ({
        name: one,
        length: withRecords && i === 0 ? records : lengths[i]!,
        unlimited: withRecords && i === 0,
      }));
      const fixed = dimensions.filter(({ unlimited }) => !unlimited);
      const shape = fc.tuple(
        fc.boolean(),
        fixed.length === 0 ? fc.constant([]) : fc.array(fc.constantFrom(...fixed), { maxLength: 2 }),
      );
      const variable = (one: string): fc.Arbitrary<MemoryVariable> =>
        fc
          .tuple(shape, fc.constantFrom(...types[version]), attributes(version))
          .chain(([[record, others], type, own]) => {
            const used = record && withRecords ? [dimensions[0]!, ...others] : others;
            const length = used.reduce((product, dimension) => product * dimension.length, 1);
            return values(type, length).map((data) => ({
              name: one,
              type,
              dimensions: used.map((dimension) => dimension.name),
              attributes: own,
              data,
            }));
          });
      return fc
        .tuple(
          attributes(version),
          names(0, 4).chain((variables) => fc.tuple(...variables.map(variable))),
        )
        .map(([own, variables]) => memoryDataset({ dimensions, attributes: own, variables }));
    });

const size = (length: number) => ({ minLength: length, maxLength: length });
