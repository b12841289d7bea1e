import fc from "fast-check";
import type { ClassicType, ClassicVersion } from "../src/classic/format.ts";
import type { Attribute, DataArray, Dataset, NcType } from "../src/dataset.ts";
import { type MemoryVariable, memoryDataset, textAttribute } from "../src/memory.ts";
import { bytesPerValue, newArray } from "../src/types.ts";

/** Versions of the classic formats, and 4 for netCDF-4. */
type AnyVersion = ClassicVersion | 4;

const classicTypes: readonly ClassicType[] = ["byte", "char", "short", "int", "float", "double"];
const numbers5: readonly ClassicType[] = [...classicTypes, "ubyte", "ushort", "uint", "int64", "uint64"];
const types: Readonly<Record<AnyVersion, readonly NcType[]>> = {
  1: classicTypes,
  2: classicTypes,
  4: [...numbers5, "string"],
  5: numbers5,
};

const firstLetter = fc.constantFrom("a", "Z", "_", "7", "é", "水", "😀");
const otherLetter = fc.constantFrom("b", "Q", "_", "0", "-", "+", ".", "@", "(", "°", "ß", "深", "𝛿");
const name = fc
  .tuple(firstLetter, fc.array(otherLetter, { maxLength: 6 }))
  .map(([first, others]) => (first + others.join("")).normalize("NFC"));
const names = (minLength: number, maxLength: number) => fc.uniqueArray(name, { minLength, maxLength });

const text = fc.string({ unit: "binary", maxLength: 9 }).filter((one) => !one.includes("\0"));

/** Values of any bits, so also NaNs of every kind; texts of any characters but NUL. */
const values = (type: NcType, length: number): fc.Arbitrary<DataArray> => {
  if (type === "string") return fc.array(text, size(length));
  const bytes = length * bytesPerValue(type);
  return fc.uint8Array({ minLength: bytes, maxLength: bytes }).map((random) => {
    const data = newArray(type, length) as Exclude<DataArray, string[]>;
    new Uint8Array(data.buffer).set(random);
    return data;
  });
};

const attribute = (version: AnyVersion, called: string): fc.Arbitrary<Attribute> =>
  fc.constantFrom(...types[version]).chain((type): fc.Arbitrary<Attribute> => {
    if (type === "char")
      return fc.string({ unit: "binary", maxLength: 9 }).map((text) => textAttribute(called, text));
    return fc
      .nat({ max: 3 })
      .chain((length) => values(type, length))
      .map((value) => ({ name: called, type, value }));
  });

const attributes = (version: AnyVersion): fc.Arbitrary<Attribute[]> =>
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

/**
 * Datasets for netCDF-4: all types, strings, any number of unlimited dimensions in any place, and variables that
 * bear the name of a dimension, as its coordinate variable or not.
 */
export const anyNetcdf4Dataset: fc.Arbitrary<Dataset> = fc
  .tuple(
    names(1, 4),
    fc.array(fc.nat({ max: 5 }), size(4)),
    fc.array(fc.boolean(), size(4)),
    names(0, 3),
    fc.nat(),
  )
  .chain(([called, lengths, unlimited, others, pick]) => {
    const dimensions = called.map((one, i) => ({
      name: one,
      length: unlimited[i]! ? lengths[i]! : lengths[i]! + 1,
      unlimited: unlimited[i]!,
    }));
    const variables = [...new Set([...others, ...called.slice(pick % (called.length + 1))])];
    const variable = (one: string): fc.Arbitrary<MemoryVariable> =>
      fc
        .tuple(
          fc.array(fc.constantFrom(...dimensions), { maxLength: 3 }),
          fc.constantFrom(...types[4]),
          attributes(4),
          fc.boolean(),
        )
        .chain(([drawn, type, own, isCoordinate]) => {
          const itself = dimensions.find(({ name: dimension }) => dimension === one);
          const used = isCoordinate && itself ? [itself, ...drawn.slice(1)] : drawn;
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
      .tuple(attributes(4), fc.tuple(...variables.map(variable)))
      .map(([own, made]) => memoryDataset({ dimensions, attributes: own, variables: made }));
  });
