import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { sharedPath, testData, testWithShared } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { codesOf, unwrap } from "../../test/content.ts";
import { comparable, type LibraryContents, plainContents } from "../../test/netcdf-library.ts";
import type { DataArray, Dataset, Source } from "../dataset.ts";
import { openDataset } from "../open.ts";
import { takeSlab } from "../slab.ts";
import { hdf5Library } from "./hdf5-library.ts";

// Expected: raw values as the netCDF library 4.9.0 reads them, by way of Python's netCDF4 1.6.2
// (tools/make_netcdf4_fixtures.py).

const bytesOf = (name: string): Uint8Array => readFileSync(testData("netcdf4", name));
const open = async (name: string): Promise<Dataset> => unwrap(await openDataset(bytesOf(name)));

const expected = JSON.parse(readFileSync(testData("netcdf4", "expected.json"), "utf8")) as {
  files: Readonly<Record<string, LibraryContents>>;
};

/** The NULs that end a stored text are not part of an attribute of ours. */
function withoutEnds(contents: LibraryContents): LibraryContents {
  const cut = (list: LibraryContents["attributes"]) =>
    list.map((one) =>
      one.type === "char" ? { ...one, value: String(one.value).replace(/(?:00)+$/, "") } : one,
    );
  return {
    ...contents,
    attributes: cut(contents.attributes),
    variables: contents.variables.map((one) => ({ ...one, attributes: cut(one.attributes) })),
  };
}

describe("files as the netCDF library reads them", () => {
  test.each(Object.keys(expected.files))("%s", async (name) => {
    const dataset = await open(name);
    expect(withoutEnds(await plainContents(dataset))).toEqual(withoutEnds(comparable(expected.files[name]!)));
    dataset.close?.();
  });
});

test("the classic model is told apart", async () => {
  expect((await open("classic_model.nc")).kind).toBe("netCDF-4 classic model");
  expect((await open("groups.nc")).kind).toBe("netCDF-4");
});

test("types that have no place are problems of their own", async () => {
  const places = async (name: string) =>
    (await open(name)).problems.map(({ code, where }) => ({ code, ...where }));
  const code = "netcdf/unsupported-type";
  expect(await places("user_types.nc")).toEqual([
    { code, variable: "plain", attribute: "pair_attribute" },
    { code, variable: "pairs" },
    { code, variable: "ragged" },
  ]);
  expect(await places("opaque.nc")).toEqual([{ code, variable: "raw" }]);
});

test("an enumeration is read as its numbers, with a warning", async () => {
  const opened = await openDataset(bytesOf("user_types.nc"));
  expect(opened).toMatchObject({
    ok: true,
    warnings: [
      { code: "netcdf/enumeration", where: { variable: "sky" } },
      { code: "netcdf/enumeration", where: { variable: "sky", attribute: "_FillValue" } },
    ],
  });
});

test("what other programs put into HDF5", async () => {
  const dataset = await open("foreign.h5");
  expect(
    [...dataset.variables.values()].map(({ name, type, dimensions }) => [name, type, ...dimensions]),
  ).toEqual([
    ["zeta", "double", "zeta"],
    ["field", "int", "phony_dim_1", "zeta"],
    ["flags", "byte", "zeta"],
    ["names", "string", "phony_dim_1"],
    ["packed_otherwise", "int64", "phony_dim_2"],
    ["soft", "double", "zeta"],
  ]);
  expect(unwrap(await dataset.read("field"))).toEqual(Int32Array.of(0, 1, 2, 3, 4, 5));
  expect(unwrap(await dataset.read("names"))).toEqual(["ab", "cde"]);
  expect(dataset.attributes.get("nothing")?.value).toEqual(new Int32Array(0));
  expect(dataset.variables.get("field")?.attributes.get("table")?.value).toEqual(Int32Array.of(0, 1, 2, 3));
  expect(codesOf(await dataset.read("packed_otherwise"))).toEqual(["netcdf/unknown-filter"]);
  expect(dataset.problems.map(({ code, where }) => [code, where.variable])).toEqual([
    ["netcdf/link", "broken"],
    ["netcdf/link", "outside"],
    ["netcdf/link", "loop/back"],
    ["netcdf/unsupported-type", "half"],
    ["netcdf/unsupported-type", "nothing"],
    ["netcdf/unsupported-type", "reference"],
  ]);
});

describe("slabs", () => {
  test.each([
    { name: "deflated", start: [3, 4], count: [20, 17] },
    { name: "big", start: [39, 0], count: [1, 30] },
    { name: "holes", start: [7, 2], count: [8, 9] },
    { name: "contiguous", start: [0, 29], count: [40, 1] },
    { name: "packed", start: [1, 1], count: [0, 5] },
  ])("$name from $start, $count", async ({ name, start, count }) => {
    const dataset = await open("storage.nc");
    const { type, shape } = dataset.variables.get(name)!;
    const whole = unwrap(await dataset.read(name));
    expect(unwrap(await dataset.read(name, { start, count }))).toEqual(
      takeSlab(type, whole, shape, { start, count }),
    );
  });

  test("records that only other variables have are the fill value", async () => {
    const dataset = await open("dimensions.nc");
    const read = async (name: string, start: number[], count: number[]) => [
      ...(unwrap(await dataset.read(name, { start, count })) as Float64Array),
    ];
    expect(await read("z_first", [1, 1], [3, 2])).toEqual([4, 5, -9, -9, -9, -9]);
    expect(await read("short_records", [3], [2])).toEqual([255, 255]);
    expect(await read("records", [2], [2])).toEqual([3, 4]);
  });

  test("texts", async () => {
    const dataset = await open("text.nc");
    expect(unwrap(await dataset.read("words", { start: [1], count: [2] }))).toEqual(["größer", "two\nlines"]);
    expect(codesOf(await dataset.read("words", { start: [1], count: [3] }))).toEqual(["netcdf/slab"]);
    expect(codesOf(await dataset.read("nowords"))).toEqual(["netcdf/no-variable"]);
  });
});

test("a file larger than the pieces it is read in", async () => {
  const bytes = bytesOf("storage.nc");
  const longest: number[] = [];
  const source: Source = {
    size: bytes.length,
    read: async (offset, length) => {
      longest.push(length);
      return bytes.subarray(offset, offset + length);
    },
  };
  const dataset = unwrap(await openDataset(source));
  expect(Math.max(...longest)).toBeLessThanOrEqual(1 << 23);
  expect(dataset.variables.size).toBe(7);
});

test("closing frees the bytes and ends reading", async () => {
  const library = await hdf5Library();
  const files = () =>
    (library.module.FS as unknown as { readdir(path: string): string[] }).readdir("/").length;
  const before = files();
  const dataset = await open("storage.nc");
  expect(files()).toBe(before + 1);
  dataset.close?.();
  dataset.close?.();
  expect(files()).toBe(before);
  expect(codesOf(await dataset.read("big"))).toEqual(["netcdf/closed"]);
});

describe("damage", () => {
  /** A linear congruential generator (Numerical Recipes), so that every run is the same. */
  const random = (seed: number) => {
    let state = seed;
    return (below: number) => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return Math.floor((state / 2 ** 32) * below);
    };
  };

  async function readAll(bytes: Uint8Array): Promise<readonly { code: string; message: string }[]> {
    const opened = await openDataset(bytes);
    if (!opened.ok) return opened.problems;
    const found = [...opened.value.problems];
    for (const name of opened.value.variables.keys()) {
      const values = await opened.value.read(name);
      if (!values.ok) found.push(...values.problems);
    }
    opened.value.close?.();
    return found;
  }

  test("200 files cut short or with wrong bytes give problems, and good files are read as before", async () => {
    const names = Object.keys(expected.files);
    const next = random(20_260_318);
    const whole = await open("groups.nc");
    let wrong = 0;
    for (let i = 0; i < 200; i++) {
      let bytes = Uint8Array.from(bytesOf(names[i % names.length]!));
      if (i % 4 === 0) bytes = bytes.slice(0, next(bytes.length));
      else for (let n = 1 + next(20); n > 0; n--) bytes[next(i % 2 === 0 ? 4096 : bytes.length)] = next(256);
      const problems = await readAll(bytes);
      if (problems.length > 0) wrong++;
      for (const { code } of problems) expect(code).toMatch(/^netcdf\//);
    }
    expect(wrong).toBeGreaterThan(100);
    expect(withoutEnds(await plainContents(whole))).toEqual(
      withoutEnds(comparable(expected.files["groups.nc"]!)),
    );
    whole.close?.();
    const again = await open("types_big.nc");
    expect(withoutEnds(await plainContents(again))).toEqual(
      withoutEnds(comparable(expected.files["types_big.nc"]!)),
    );
  });

  test("a cut file is refused with a plain sentence", async () => {
    const opened = await openDataset(bytesOf("storage.nc").subarray(0, 20_000));
    expect(codesOf(opened)).toEqual(["netcdf/damaged-hdf5"]);
  });

  test("a heap of texts that runs in a circle doesn't hang", async () => {
    const bytes = Uint8Array.from(bytesOf("text.nc"));
    const heap = Buffer.from(bytes.buffer).indexOf("GCOL");
    expect(heap).toBeGreaterThan(0);
    // the first object becomes free space of no size (HDF5 File Format Specification III.E)
    bytes.fill(0, heap + 16, heap + 32);
    expect((await readAll(bytes)).map(({ code }) => code)).toContain("netcdf/damaged-attribute");
  });
});

interface Inventory {
  readonly files: Readonly<
    Record<
      string,
      {
        opens: boolean;
        data_model: string;
        dimensions: Readonly<Record<string, readonly [number, boolean]>>;
        n_global_attributes: number;
        variables: Readonly<
          Record<
            string,
            {
              dtype: string;
              dims: readonly string[];
              n_attributes: number;
              first?: number;
              last?: number;
              min?: number;
              max?: number;
              bytes_sha256_12?: string;
            }
          >
        >;
      }
    >
  >;
}

describe("real files", () => {
  for (const file of ["wod/wod_ragged_OSD.nc", "dsg/glider_template_v2.0.nc"])
    testWithShared(["samples", "real", file], `${file} has what the inventory says`, async (path) => {
      const inventory = JSON.parse(
        readFileSync(sharedPath("samples", "real", "inventory.json")!, "utf8"),
      ) as Inventory;
      const known = inventory.files[file]!;
      const dataset = unwrap(await openDataset(readFileSync(path)));
      // numpy writes the types of its records as lists of names
      const compound = Object.keys(known.variables).filter((name) =>
        known.variables[name]?.dtype.includes("names"),
      );
      expect(dataset.problems.map(({ code, where }) => [code, where.variable])).toEqual(
        compound.map((name) => ["netcdf/unsupported-type", name]),
      );
      expect(
        Object.fromEntries([...dataset.dimensions.values()].map((d) => [d.name, [d.length, d.unlimited]])),
      ).toEqual(known.dimensions);
      expect(dataset.attributes.size).toBe(known.n_global_attributes);
      expect([...dataset.variables.keys()]).toEqual(
        Object.keys(known.variables).filter((name) => !compound.includes(name)),
      );
      for (const [name, { dims, n_attributes, first, last, min, max, bytes_sha256_12 }] of Object.entries(
        known.variables,
      )) {
        if (compound.includes(name)) continue;
        const variable = dataset.variables.get(name)!;
        expect(variable.dimensions, name).toEqual(dims);
        expect(variable.attributes.size, name).toBe(n_attributes);
        const data = unwrap(await dataset.read(name));
        if (bytes_sha256_12 !== undefined) expect(sha256(data as Uint8Array), name).toBe(bytes_sha256_12);
        if (first === undefined || last === undefined) continue;
        const numbers = Array.from(data as Exclude<DataArray, string[]>, Number);
        expect([numbers.at(0), numbers.at(-1)], name).toEqual([first, last]);
        const finite = numbers.filter(Number.isFinite);
        if (min !== undefined)
          expect(
            finite.reduce((a, b) => Math.min(a, b)),
            name,
          ).toBe(min);
        if (max !== undefined)
          expect(
            finite.reduce((a, b) => Math.max(a, b)),
            name,
          ).toBe(max);
      }
    });
});

const sha256 = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex").slice(0, 12);
