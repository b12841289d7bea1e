import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, testData } from "@wherry/testkit";
import fc from "fast-check";
import { expect, test } from "vitest";
import { classicBytes } from "../src/classic/write-classic.ts";
import type { Dataset } from "../src/dataset.ts";
import { memoryDataset, numberAttribute, textAttribute } from "../src/memory.ts";
import { openDataset } from "../src/open.ts";
import { anyDataset } from "./any-dataset.ts";
import { contentOf, unwrap } from "./content.ts";
import {
  comparable,
  type LibraryContents,
  libraryContents,
  plainContents,
  testWithLibrary,
} from "./netcdf-library.ts";

/*
 * The netCDF C library is the independent reader and writer here: by way of Python's netCDF4 (the files of
 * test-data/netcdf were written by it, tools/make_netcdf_fixtures.py) and of ncdump.
 */

const expected = JSON.parse(readFileSync(testData("netcdf", "expected.json"), "utf8")) as {
  made_with: string;
  files: Record<string, LibraryContents & { version: 1 | 2 | 5 }>;
};

test.each(Object.entries(expected.files))(
  "%s, written by the C library",
  async (name, { version, ...want }) => {
    const bytes = readFileSync(testData("netcdf", name));
    const opened = await openDataset(bytes);
    expect(opened).toMatchObject({ ok: true, warnings: [] });
    const dataset = unwrap(opened);
    expect(dataset.problems).toEqual([]);
    expect(dataset.attributes.get("made_with")?.value).toBe(expected.made_with);
    expect(await plainContents(dataset)).toEqual(want);
    // a NUL at the end of a text is not kept, so the one file that has it changes
    if (name === "classic_nul_text.nc") return;
    // layout, vsize and padding are those of the C library, byte for byte, but that it leaves what it likes in
    // the padding of records of one-byte integers; there the specification asks for the fill value, -127 or 255
    const written = unwrap(await classicBytes(dataset, { version }));
    expect(written.length).toBe(bytes.length);
    const differing = [...written.entries()].filter(([at, byte]) => byte !== bytes[at]);
    expect(differing.filter(([, byte]) => byte !== 0x81 && byte !== 0xff)).toEqual([]);
    expect(differing.length).toBeLessThanOrEqual(name.includes("all_types") ? 18 : 0);
  },
);

/** Values of all types, as records and fixed; the invented names are those of no file. */
function sample(version: 1 | 2 | 5): Dataset {
  const long = version === 5;
  const variables = [
    { name: "b", type: "byte", dimensions: ["t"], data: Int8Array.of(-128, 0, 127) },
    { name: "c", type: "char", dimensions: ["t", "x"], data: new TextEncoder().encode("abcdefghijklmno") },
    { name: "s", type: "short", dimensions: ["x"], data: Int16Array.of(-32768, -1, 0, 1, 32767) },
    { name: "i", type: "int", dimensions: ["t"], data: Int32Array.of(-(2 ** 31), 0, 2 ** 31 - 1) },
    { name: "f", type: "float", dimensions: ["t"], data: Float32Array.of(0.1, Number.NaN, -1e30) },
    { name: "d", type: "double", dimensions: [], data: Float64Array.of(Math.PI) },
  ] as const;
  const longer = [
    { name: "ub", type: "ubyte", dimensions: ["t"], data: Uint8Array.of(0, 128, 255) },
    { name: "us", type: "ushort", dimensions: ["x"], data: Uint16Array.of(0, 1, 2, 32768, 65535) },
    { name: "ui", type: "uint", dimensions: ["t"], data: Uint32Array.of(0, 2 ** 31, 2 ** 32 - 1) },
    { name: "l", type: "int64", dimensions: ["t"], data: BigInt64Array.of(-(2n ** 63n), 0n, 2n ** 63n - 1n) },
    { name: "ul", type: "uint64", dimensions: ["t"], data: BigUint64Array.of(0n, 2n ** 63n, 2n ** 64n - 1n) },
  ] as const;
  return memoryDataset({
    dimensions: [
      { name: "x", length: 5 },
      { name: "t", length: 3, unlimited: true },
    ],
    attributes: [
      textAttribute("title", "Größe, 深さ"),
      textAttribute("empty", ""),
      numberAttribute("none", "double", []),
      numberAttribute("three", "short", [1, 2, 3]),
      ...(long ? [numberAttribute("large", "uint64", [2n ** 64n - 1n])] : []),
    ],
    variables: long ? [...variables, ...longer] : [...variables],
  });
}

const to79 = Array.from({ length: 15 }, (_, i) => i + 65);
const counting = { byte: Int8Array.from(to79), char: Uint8Array.from(to79), short: Int16Array.from(to79) };

/** A single record variable, whose records are then not padded. */
const single = (type: "byte" | "char" | "short") =>
  memoryDataset({
    dimensions: [
      { name: "t", length: 5, unlimited: true },
      { name: "x", length: 3 },
    ],
    variables: [
      {
        name: "v",
        type,
        dimensions: ["t", "x"],
        data: counting[type],
      },
      { name: "fixed", type: "short", dimensions: ["x"], data: Int16Array.of(7, 8, 9) },
    ],
  });

/** Records that are written many at once, or (with `wide` above a chunk of the writer) one by one. */
const long = (records: number, wide: number) =>
  memoryDataset({
    dimensions: [
      { name: "t", length: records, unlimited: true },
      { name: "x", length: wide },
    ],
    variables: [
      { name: "a", type: "float", dimensions: ["t"], data: new Float32Array(records).map((_, i) => i / 3) },
      { name: "b", type: "char", dimensions: ["t"], data: new Uint8Array(records).map((_, i) => i) },
      {
        name: "c",
        type: "double",
        dimensions: ["t", "x"],
        data: new Float64Array(records * wide).map((_, i) => -i / 7),
      },
    ],
  });

async function written(): Promise<
  { name: string; dataset: Dataset; bytes: Uint8Array; version: 1 | 2 | 5 }[]
> {
  const files = [];
  for (const version of [1, 2, 5] as const) {
    const generated = fc.sample(anyDataset(version), { seed: 20_260_314, numRuns: 25 });
    const named: [string, Dataset][] = [
      [`sample-${version}.nc`, sample(version)],
      [`byte-${version}.nc`, single("byte")],
      [`char-${version}.nc`, single("char")],
      [`short-${version}.nc`, single("short")],
      ...generated.map((dataset, i): [string, Dataset] => [`generated-${version}-${i}.nc`, dataset]),
    ];
    if (version === 2) named.push(["many-2.nc", long(10_000, 20)], ["wide-2.nc", long(2, 140_000)]);
    for (const [name, dataset] of named)
      files.push({ name, dataset, version, bytes: unwrap(await classicBytes(dataset, { version })) });
  }
  return files;
}

const models = { 1: "NETCDF3_CLASSIC", 2: "NETCDF3_64BIT_OFFSET", 5: "NETCDF3_64BIT_DATA" };

testWithLibrary("what we write is read by the C library", () =>
  inTemporaryFolder(async (folder) => {
    const files = await written();
    for (const { name, bytes } of files) writeFileSync(join(folder, name), bytes);
    const contents = libraryContents(files.map(({ name }) => join(folder, name)));
    for (const [i, { name, dataset, version }] of files.entries()) {
      const { model, ...content } = contents[i]!;
      expect({ name, model }).toEqual({ name, model: models[version] });
      expect(comparable(content)).toEqual(await plainContents(dataset));
    }
  }),
);

const ncdumpKinds = { 1: "classic", 2: "64-bit offset", 5: "cdf5" };

testWithLibrary("what we write is printed by ncdump", () =>
  inTemporaryFolder(async (folder) => {
    for (const { name, bytes, version } of await written()) {
      const path = join(folder, name);
      writeFileSync(path, bytes);
      expect(execFileSync("ncdump", ["-k", path], { encoding: "utf8" }).trim()).toBe(ncdumpKinds[version]);
      const dump = execFileSync("ncdump", [path], { encoding: "utf8", maxBuffer: 2 ** 28 }).replaceAll(
        /\s+/g,
        " ",
      );
      if (name.startsWith("byte")) expect(dump).toContain("v = 65, 66, 67, 68, 69, 70, 71, 72, 73, 74, 75,");
      if (name.startsWith("short")) expect(dump).toContain("74, 75, 76, 77, 78, 79 ; fixed = 7, 8, 9 ;");
      if (name.startsWith("char")) expect(dump).toContain('v = "ABC", "DEF", "GHI", "JKL", "MNO" ;');
      if (name.startsWith("sample")) {
        expect(dump).toContain("i = -2147483648, 0, 2147483647 ;");
        expect(dump).toContain("d = 3.14159265358979 ;");
        expect(dump).toContain(':title = "Größe, 深さ" ;');
      }
    }
  }),
);

test("what our own reader says of the files that the others are given", async () => {
  for (const { dataset, bytes } of await written())
    expect(await contentOf(unwrap(await openDataset(bytes)))).toEqual(await contentOf(dataset));
});
