import fc from "fast-check";
import type { Attribute, DataArray, Dataset, NcType } from "../src/dataset.ts";
import { memoryDataset, textAttribute } from "../src/memory.ts";
import { decodeText } from "../src/text.ts";
import { newArray } from "../src/types.ts";

export interface CdlDatasetLimits {
  readonly types: readonly NcType[];
  /** Several unlimited dimensions anywhere and groups; else one, which comes first. */
  readonly extended: boolean;
  /** Only what the netCDF library's generator can read too. */
  readonly generator: boolean;
}

const firstLetters = ["a", "Z", "_", "7", "é", "水", "😀"];
const otherLetters = ["b", "Q", "_", "0", "-", "+", ".", "@", "(", " ", "#", "\\", '"', ";", "°", "深", "x"];
const words = ["data", "dimensions", "variables", "NaN", "group1", "inf"];

const name = (limits: CdlDatasetLimits): fc.Arbitrary<string> =>
  fc.oneof(
    {
      weight: 9,
      arbitrary: fc
        .tuple(
          fc.constantFrom(...firstLetters, ...(limits.generator ? [] : ["#", "(", "."])),
          fc.array(fc.constantFrom(...otherLetters), { maxLength: 5 }),
        )
        .map(([first, others]) => (first + others.join("")).trimEnd())
        .map((made) => (limits.generator && made === "_" ? "__" : made)),
    },
    {
      weight: 1,
      arbitrary: fc.constantFrom(...words.slice(0, 3), ...(limits.generator ? [] : ["double", "_", "NaN"])),
    },
  );

/** Names of which none is twice there, apart from `_FillValue` and the like, which mean something. */
const names = (limits: CdlDatasetLimits, minLength: number, maxLength: number) =>
  fc.uniqueArray(name(limits), { minLength, maxLength });

/** Any text; the generator drops NULs from attributes and makes one NUL of an empty one. */
const text = (limits: CdlDatasetLimits) =>
  fc
    .string({ unit: "binary", maxLength: 12 })
    .map((given) => (limits.generator ? given.replaceAll("\0", "0") || "1" : given));

const bigBounds = { int64: [-(2n ** 63n), 2n ** 63n - 1n], uint64: [0n, 2n ** 64n - 1n] } as const;
const bounds: Partial<Record<NcType, readonly [number, number]>> = {
  byte: [-128, 127],
  ubyte: [0, 255],
  short: [-32768, 32767],
  ushort: [0, 65535],
  int: [-(2 ** 31), 2 ** 31 - 1],
  uint: [0, 2 ** 32 - 1],
};

function values(type: NcType, length: number, limits: CdlDatasetLimits): fc.Arbitrary<DataArray> {
  const sized = { minLength: length, maxLength: length };
  const filled = (given: readonly unknown[]): DataArray => {
    const data = newArray(type, length) as unknown as unknown[];
    given.forEach((value, i) => {
      data[i] = value;
    });
    return data as unknown as DataArray;
  };
  if (type === "string") return fc.array(text({ ...limits, generator: true }), sized);
  if (type === "char") return fc.uint8Array(sized);
  if (type === "double") return fc.array(fc.double(), sized).map(filled);
  if (type === "float") return fc.array(fc.float(), sized).map(filled);
  if (type === "int64" || type === "uint64")
    return fc.array(fc.bigInt({ min: bigBounds[type][0], max: bigBounds[type][1] }), sized).map(filled);
  const [min, max] = bounds[type] ?? [0, 0];
  return fc.array(fc.integer({ min, max }), sized).map(filled);
}

const attribute = (called: string, limits: CdlDatasetLimits): fc.Arbitrary<Attribute> =>
  fc.constantFrom(...limits.types).chain((type): fc.Arbitrary<Attribute> => {
    if (type === "char")
      return fc.oneof(
        text(limits).map((value) => textAttribute(called, value)),
        fc.uint8Array({ min: 1, minLength: 1, maxLength: 5 }).map((bytes): Attribute => {
          const { text: value, utf8 } = decodeText(bytes);
          return { name: called, type, value, ...(utf8 ? {} : { bytes }) };
        }),
      );
    const least = limits.generator ? 1 : 0;
    return fc
      .integer({ min: least, max: 3 })
      .chain((length) => values(type, length, limits))
      .map((value) => ({ name: called, type, value }));
  });

const attributes = (limits: CdlDatasetLimits): fc.Arbitrary<Attribute[]> =>
  names(limits, 0, 3).chain((called) => fc.tuple(...called.map((one) => attribute(one, limits))));

/** The fill value of a variable, made of its own values so that `_` comes up. */
function fillAttribute(type: NcType, data: DataArray): Attribute {
  const first = newArray(type, 1);
  if (data.length > 0) (first as unknown[])[0] = data[0];
  if (!(first instanceof Uint8Array) || type !== "char") return { name: "_FillValue", type, value: first };
  const { text: value, utf8 } = decodeText(first);
  return { name: "_FillValue", type, value, ...(utf8 ? {} : { bytes: first }) };
}

interface Part {
  readonly dimensions: readonly { name: string; length: number; unlimited: boolean }[];
  readonly attributes: readonly Attribute[];
  readonly variables: readonly {
    name: string;
    type: NcType;
    dimensions: string[];
    attributes: Attribute[];
    data: DataArray;
  }[];
}

/** What one group holds; `seen` are dimensions of the groups around it. */
const part = (limits: CdlDatasetLimits, path: string, seen: Part["dimensions"]): fc.Arbitrary<Part> =>
  fc
    .tuple(
      names(limits, 1, 3),
      fc.array(fc.integer({ min: limits.generator ? 1 : 0, max: 4 }), { minLength: 3, maxLength: 3 }),
      fc.nat({ max: 7 }),
    )
    .chain(([called, lengths, unlimitedBits]) => {
      const own = called.map((one, i) => {
        const unlimited = limits.extended ? ((unlimitedBits >> i) & 1) === 1 : i === 0 && unlimitedBits > 3;
        return { name: path + one, unlimited, length: unlimited ? Math.max(lengths[i]!, 1) : lengths[i]! };
      });
      const known = [...own, ...seen];
      const shape = limits.extended
        ? fc.array(fc.constantFrom(...known), { maxLength: 3 })
        : fc
            .tuple(
              fc.boolean(),
              fc.array(fc.constantFrom(...known.slice(1), ...known.filter((d) => !d.unlimited), null), {
                maxLength: 2,
              }),
            )
            .map(([first, others]) => [
              ...(first ? [known[0]!] : []),
              ...others.filter((d) => d !== null && !d.unlimited),
            ]);
      // an unlimited dimension has its length from the values along it
      const users = own
        .filter(({ unlimited }) => unlimited)
        .map(
          (dimension): fc.Arbitrary<Part["variables"][number]> =>
            values("byte", dimension.length, limits).map((data) => ({
              name: `${dimension.name}_user`,
              type: "byte",
              dimensions: [dimension.name],
              attributes: [],
              data,
            })),
        );
      const variable = (one: string): fc.Arbitrary<Part["variables"][number]> =>
        fc
          .tuple(shape, fc.constantFrom(...limits.types), attributes(limits), fc.boolean())
          .chain(([axes, type, given, withFill]) => {
            const length = axes.reduce((product, axis) => product * axis!.length, 1);
            return values(type, length, limits).map((data) => ({
              name: path + one,
              type,
              dimensions: axes.map((axis) => axis!.name),
              attributes: withFill ? [fillAttribute(type, data), ...given] : given,
              data,
            }));
          });
      return fc
        .tuple(
          attributes(limits),
          names(limits, 0, 4).chain((variables) => fc.tuple(...variables.map(variable))),
          fc.tuple(...users),
        )
        .map(([given, variables, more]) => ({
          dimensions: own,
          attributes: given.map((one) => ({ ...one, name: path + one.name })),
          variables: [...variables, ...more],
        }));
    });

/** Datasets that CDL can say. */
export const anyCdlDataset = (limits: CdlDatasetLimits): fc.Arbitrary<Dataset> =>
  part(limits, "", []).chain((root) => {
    const group = limits.extended
      ? fc.oneof(
          fc.constant(null),
          part(limits, "g 1/", root.dimensions),
          part(limits, "g/h/", root.dimensions),
        )
      : fc.constant(null);
    return group.map((inner) =>
      memoryDataset({
        dimensions: [...root.dimensions, ...(inner?.dimensions ?? [])],
        attributes: [...root.attributes, ...(inner?.attributes ?? [])],
        variables: [...root.variables, ...(inner?.variables ?? [])],
      }),
    );
  });
