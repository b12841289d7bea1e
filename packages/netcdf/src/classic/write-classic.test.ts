import { expect, test } from "vitest";
import { codesOf, contentOf, unwrap } from "../../test/content.ts";
import type { Attribute, Dataset, Dimension } from "../dataset.ts";
import { type MemoryContent, memoryDataset, numberAttribute, textAttribute } from "../memory.ts";
import { openDataset } from "../open.ts";
import { succeed } from "../problem.ts";
import { planFile } from "./plan-file.ts";
import { classicBytes, writeClassic } from "./write-classic.ts";

const hex = (text: string) =>
  Uint8Array.from(text.match(/[0-9a-f]{2}/g)!, (byte) => Number.parseInt(byte, 16));

test("the empty file of the specification", async () => {
  // NetCDF User's Guide, appendix "File Format Specifications", "Examples": 32 bytes
  const want = hex("43444601 00000000 00000000 00000000 00000000 00000000 00000000 00000000");
  expect(unwrap(await classicBytes(memoryDataset({}), { version: 1 }))).toEqual(want);
});

test("the tiny file of the specification", async () => {
  // the same, second example: netcdf tiny { dim = 5; short vx(dim); vx = 3, 1, 4, 1, 5 }, 92 bytes
  const want = hex(`4344 4601 0000 0000 0000 000a 0000 0001 0000 0003 6469 6d00 0000 0005 0000 0000
    0000 0000 0000 000b 0000 0001 0000 0002 7678 0000 0000 0001 0000 0000 0000 0000
    0000 0000 0000 0003 0000 000c 0000 0050 0003 0001 0004 0001 0005 8001`);
  const tiny = memoryDataset({
    dimensions: [{ name: "dim", length: 5 }],
    variables: [{ name: "vx", type: "short", dimensions: ["dim"], data: Int16Array.of(3, 1, 4, 1, 5) }],
  });
  expect(unwrap(await classicBytes(tiny, { version: 1 }))).toEqual(want);
  const read = unwrap(await openDataset(want));
  expect(await contentOf(read)).toEqual(await contentOf(tiny));
});

const one = (content: Partial<MemoryContent>) =>
  memoryDataset({ dimensions: [{ name: "x", length: 1 }], ...content });
const attributes = (...list: Attribute[]) => one({ attributes: list });
const variable = (type: "int64" | "ubyte" | "string", data: BigInt64Array | Uint8Array | string[]) =>
  one({ variables: [{ name: "v", type, dimensions: ["x"], data }] });

test.each([
  { version: 1, what: "int64 variable", dataset: variable("int64", BigInt64Array.of(1n)), code: "type" },
  { version: 2, what: "ubyte variable", dataset: variable("ubyte", Uint8Array.of(1)), code: "type" },
  { version: 5, what: "string variable", dataset: variable("string", ["a"]), code: "type" },
  {
    version: 1,
    what: "uint attribute",
    dataset: attributes(numberAttribute("a", "uint", 1)),
    code: "type",
  },
  {
    version: 5,
    what: "string attribute",
    dataset: attributes({ name: "a", type: "string", value: ["b"] }),
    code: "type",
  },
  { version: 1, what: "empty name", dataset: attributes(textAttribute("", "b")), code: "name" },
  { version: 1, what: "name with /", dataset: attributes(textAttribute("a/b", "b")), code: "name" },
  { version: 1, what: "name with a line end", dataset: attributes(textAttribute("a\n", "b")), code: "name" },
  { version: 1, what: "blank at the end", dataset: attributes(textAttribute("a ", "b")), code: "name" },
  { version: 1, what: "sign in front", dataset: attributes(textAttribute("+a", "b")), code: "name" },
  { version: 1, what: "half a character", dataset: attributes(textAttribute("a\ud83d", "b")), code: "name" },
  { version: 1, what: "257 bytes", dataset: attributes(textAttribute("a".repeat(257), "b")), code: "name" },
  {
    version: 1,
    what: "names equal in form C",
    dataset: attributes(textAttribute("\u00e9", "b"), textAttribute("e\u0301", "b")),
    code: "duplicate-name",
  },
  {
    version: 1,
    what: "half a character in a text",
    dataset: attributes(textAttribute("a", "\udc00")),
    code: "text",
  },
  {
    version: 5,
    what: "fixed length 0",
    dataset: memoryDataset({ dimensions: [{ name: "x", length: 0 }] }),
    code: "zero-length-dimension",
  },
  {
    version: 5,
    what: "two unlimited dimensions",
    dataset: memoryDataset({
      dimensions: [
        { name: "x", length: 1, unlimited: true },
        { name: "y", length: 1, unlimited: true },
      ],
    }),
    code: "record-dimensions",
  },
  {
    version: 5,
    what: "unlimited dimension second",
    dataset: memoryDataset({
      dimensions: [
        { name: "x", length: 1 },
        { name: "t", length: 1, unlimited: true },
      ],
      variables: [{ name: "v", type: "byte", dimensions: ["x", "t"], data: new Int8Array(1) }],
    }),
    code: "record-position",
  },
] as const)("version $version can't say: $what", async ({ version, dataset, code }) => {
  const chunks: Uint8Array[] = [];
  const written = await writeClassic(dataset, { version }, (chunk) => {
    chunks.push(chunk);
  });
  expect(codesOf(written)).toEqual([`netcdf/${code}`]);
  expect(chunks).toEqual([]);
});

test("a name is written in normal form C, with a warning", async () => {
  const dataset = memoryDataset({ dimensions: [{ name: "e\u0301", length: 1 }] });
  const written = await classicBytes(dataset, { version: 1 });
  expect(written).toMatchObject({ ok: true, warnings: [{ code: "netcdf/name-form" }] });
  expect([...unwrap(await openDataset(unwrap(written))).dimensions.keys()]).toEqual(["\u00e9"]);
});

/** A dataset of byte variables that are too large to hold; reading it fails. */
function sized(lengths: readonly number[], records?: { sizes: readonly number[] }): Dataset {
  const dimension = (name: string, length: number, unlimited = false): [string, Dimension] => [
    name,
    { name, length, unlimited },
  ];
  const all = [...lengths.map((length, i) => ({ name: `f${i}`, length, record: false }))];
  for (const [i, length] of (records?.sizes ?? []).entries())
    all.push({ name: `r${i}`, length, record: true });
  return {
    ...memoryDataset({}),
    dimensions: new Map([
      ...all.map(({ name, length }) => dimension(name, length)),
      ...(records ? [dimension("t", 3, true)] : []),
    ]),
    variables: new Map(
      all.map(({ name, length, record }) => [
        name,
        {
          name,
          type: "byte",
          dimensions: record ? ["t", name] : [name],
          shape: record ? [3, length] : [length],
          attributes: new Map(),
        },
      ]),
    ),
  };
}

const GiB = 2 ** 30;
// NetCDF User's Guide, "NetCDF Classic Format Limitations" and "NetCDF 64-bit Offset Format Limitations"
test.each([
  { version: 1, fixed: [2 * GiB - 4096, 4], records: undefined, code: null },
  { version: 1, fixed: [2 * GiB - 4, 4], records: undefined, code: "size-limit" }, // the last begin
  { version: 1, fixed: [4, 2 * GiB - 4], records: undefined, code: null },
  { version: 1, fixed: [4, 3 * GiB], records: undefined, code: "size-limit" }, // the dimension
  { version: 1, fixed: [GiB, GiB, 4], records: undefined, code: "size-limit" }, // the last begin
  { version: 1, fixed: [4], records: [2 * GiB - 4], code: null },
  { version: 1, fixed: [GiB], records: [GiB, 4], code: "size-limit" }, // the last begin
  { version: 2, fixed: [GiB, GiB, GiB, GiB, 2 * GiB - 4], records: [4, 4], code: null },
  { version: 2, fixed: [4, 2 * GiB], records: undefined, code: "size-limit" }, // the dimension
  { version: 5, fixed: [8 * GiB, 8 * GiB], records: [8 * GiB, 8 * GiB], code: null },
] as const)("sizes in version $version: $fixed, per record $records", ({ version, fixed, records, code }) => {
  const dataset = sized(fixed, records && { sizes: records });
  const codes = codesOf(planFile(dataset, version));
  expect(new Set(codes)).toEqual(new Set(code === null ? [] : [`netcdf/${code}`]));
});

test("a variable of 4 GiB may only come last in version 2, and vsize is then all ones", () => {
  const square = (order: readonly string[]): Dataset => ({
    ...sized([]),
    dimensions: new Map([["x", { name: "x", length: 2 ** 17, unlimited: false }]]),
    variables: new Map(
      order.map((name) => {
        const dimensions = name === "large" ? ["x", "x"] : ["x"];
        const shape = dimensions.map(() => 2 ** 17);
        return [name, { name, type: "short", dimensions, shape, attributes: new Map() }];
      }),
    ),
  });
  expect(codesOf(planFile(square(["large", "small"]), 2))).toEqual(["netcdf/size-limit"]);
  const { header, fixed } = unwrap(planFile(square(["small", "large"]), 2));
  expect([...header.slice(-12)]).toEqual([255, 255, 255, 255, 0, 0, 0, 0, 0, 4, 0, header.length]);
  expect(fixed[1]!.begin).toBe(header.length + 2 ** 18);
});

test("chunks are bounded, and large records are read back", async () => {
  const length = 300_000; // a record of more than a chunk
  const records = 3;
  const wide = Float64Array.from({ length: records * length }, (_, i) => i / 7);
  const narrow = Int16Array.of(5, 6, 7);
  const dataset = memoryDataset({
    dimensions: [
      { name: "t", length: records, unlimited: true },
      { name: "x", length },
    ],
    variables: [
      { name: "wide", type: "double", dimensions: ["t", "x"], data: wide },
      { name: "narrow", type: "short", dimensions: ["t"], data: narrow },
    ],
  });
  const chunks: Uint8Array[] = [];
  unwrap(await writeClassic(dataset, { version: 1 }, async (chunk) => void chunks.push(chunk)));
  expect(Math.max(...chunks.map((chunk) => chunk.length))).toBeLessThanOrEqual(2 ** 20);
  const read = unwrap(await openDataset(Buffer.concat(chunks)));
  expect(await contentOf(read)).toEqual(await contentOf(dataset));
});

test("a variable longer than what is read at once is read back", async () => {
  const data = Float64Array.from({ length: 700_000 }, (_, i) => Math.sqrt(i));
  const dataset = memoryDataset({
    dimensions: [{ name: "x", length: data.length }],
    variables: [{ name: "v", type: "double", dimensions: ["x"], data }],
  });
  const read = unwrap(await openDataset(unwrap(await classicBytes(dataset, { version: 5 }))));
  expect(await contentOf(read)).toEqual(await contentOf(dataset));
});

test("many small records are read back", async () => {
  const records = 200_000; // several batches of records
  const dataset = memoryDataset({
    dimensions: [
      { name: "t", length: records, unlimited: true },
      { name: "x", length: 5 },
    ],
    variables: [
      {
        name: "a",
        type: "float",
        dimensions: ["t"],
        data: Float32Array.from({ length: records }, Math.sqrt),
      },
      { name: "b", type: "char", dimensions: ["t", "x"], data: new Uint8Array(5 * records).map((_, i) => i) },
      {
        name: "c",
        type: "double",
        dimensions: ["t", "x"],
        data: new Float64Array(5 * records).map((_, i) => -i),
      },
    ],
  });
  const read = unwrap(await openDataset(unwrap(await classicBytes(dataset, { version: 2 }))));
  expect(await contentOf(read)).toEqual(await contentOf(dataset));
});

test("a dataset that can't be read is a failure; one that lies is a wrong call; the sink's error is its own", async () => {
  const good = one({ variables: [{ name: "v", type: "byte", dimensions: ["x"], data: Int8Array.of(1) }] });
  const problem = { code: "test/unreadable", message: "unreadable", where: {} };
  const broken: Dataset = { ...good, read: async () => ({ ok: false, problems: [problem] }) };
  expect(codesOf(await classicBytes(broken, { version: 1 }))).toEqual(["test/unreadable"]);
  const lying: Dataset = { ...good, read: async () => succeed(new Int8Array(2)) };
  await expect(classicBytes(lying, { version: 1 })).rejects.toThrow(TypeError);
  const full = () => {
    throw new Error("no space");
  };
  await expect(writeClassic(good, { version: 1 }, full)).rejects.toThrow("no space");
});
