import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { testWithShared } from "@wherry/testkit";
import { expect } from "vitest";
import { classicBytes } from "../src/classic/write-classic.ts";
import type { Dataset, NcType } from "../src/dataset.ts";
import { openDataset } from "../src/open.ts";
import { codesOf, contentOf, unwrap } from "./content.ts";

/*
 * Real files, compared with what the netCDF C library read from them (inventory.json: first, last, least and
 * greatest value, or a checksum of the characters).
 */

interface Found {
  opens: boolean | string;
  data_model: string;
  dimensions: Record<string, [number, boolean]>;
  n_global_attributes: number;
  variables: Record<
    string,
    {
      dtype: string;
      dims: string[];
      n_attributes: number;
      first?: number;
      last?: number;
      min?: number;
      max?: number;
      n_nonfinite?: number;
      bytes_sha256_12?: string;
    }
  >;
}

const dtypes: Partial<Record<NcType, string>> = {
  byte: "int8",
  char: "|S1",
  short: "int16",
  int: "int32",
  float: "float32",
  double: "float64",
};

async function describe(dataset: Dataset): Promise<Pick<Found, "dimensions" | "variables">> {
  const dimensions: Found["dimensions"] = {};
  for (const { name, length, unlimited } of dataset.dimensions.values())
    dimensions[name] = [length, unlimited];
  const variables: Found["variables"] = {};
  for (const variable of dataset.variables.values()) {
    const data = unwrap(await dataset.read(variable.name));
    const base = {
      dtype: dtypes[variable.type] ?? variable.type,
      dims: [...variable.dimensions],
      n_attributes: variable.attributes.size,
    };
    if (variable.type === "char") {
      const checksum = createHash("sha256")
        .update(data as Uint8Array)
        .digest("hex");
      variables[variable.name] = { ...base, bytes_sha256_12: checksum.slice(0, 12) };
      continue;
    }
    const numbers = Array.from(data as ArrayLike<number>);
    const finite = numbers.filter(Number.isFinite);
    const isFloat = variable.type === "float" || variable.type === "double";
    variables[variable.name] = {
      ...base,
      ...(numbers.length === 0 ? {} : { first: numbers[0]!, last: numbers.at(-1)! }),
      ...(isFloat && numbers.length > 0 ? { n_nonfinite: numbers.length - finite.length } : {}),
      ...(finite.length === 0
        ? {}
        : {
            min: finite.reduce((least, value) => Math.min(least, value)),
            max: finite.reduce((most, value) => Math.max(most, value)),
          }),
    };
  }
  return { dimensions, variables };
}

testWithShared(["samples", "real"], "real classic files hold what the C library reads", async (folder) => {
  const inventory = JSON.parse(readFileSync(join(folder, "inventory.json"), "utf8")) as {
    files: Record<string, Found>;
  };
  let compared = 0;
  for (const [path, found] of Object.entries(inventory.files)) {
    if (found.opens !== true || !found.data_model.startsWith("NETCDF3") || path.includes("bad_")) continue;
    const dataset = unwrap(await openDataset(readFileSync(join(folder, path))));
    expect(dataset.problems).toEqual([]);
    const { dimensions, variables } = found;
    expect({ path, ...(await describe(dataset)) }).toEqual({ path, dimensions, variables });
    expect(dataset.attributes.size).toBe(found.n_global_attributes);
    compared += 1;
  }
  expect(compared).toBe(8);
});

// The C library refuses the first two and crashes on the third; of the fourth it makes two unlimited dimensions.
for (const [file, code] of [
  ["bad_begin.nc5", "overlap"],
  ["bad_cdf5_begin.nc", "overlap"],
  ["bad_ndims.nc2", "count"],
  ["bad_unlimited.nc1", "record-dimensions"],
] as const)
  testWithShared(["samples", "real", "netcdf", file], `${file} is refused with a reason`, async (path) => {
    expect(codesOf(await openDataset(readFileSync(path)))).toEqual([`netcdf/${code}`]);
  });

testWithShared(
  ["samples", "real", "netcdf", "bad_padding_name_dim.nc1"],
  "garbage in a padding is a warning, as the C library reads on",
  async (path) => {
    const opened = await openDataset(readFileSync(path));
    expect(opened).toMatchObject({ ok: true, warnings: [{ code: "netcdf/padding", where: { byte: 27 } }] });
    expect([...unwrap(opened).dimensions.values()]).toEqual([
      { name: "rec_dim", length: 0, unlimited: true },
    ]);
  },
);

for (const folder of ["dsg_own", "planted"])
  testWithShared(
    ["samples", folder],
    `classic files of ${folder} open and are written alike`,
    async (path) => {
      let read = 0;
      for (const name of readdirSync(path).filter((one) => one.endsWith(".nc"))) {
        const bytes = readFileSync(join(path, name));
        if (bytes.toString("latin1", 0, 3) !== "CDF") continue;
        const opened = await openDataset(bytes);
        expect({ name, opened }).toMatchObject({ name, opened: { ok: true, warnings: [] } });
        const dataset = unwrap(opened);
        expect(dataset.problems).toEqual([]);
        const again = unwrap(await classicBytes(dataset, { version: bytes[3] as 1 | 2 | 5 }));
        expect(await contentOf(unwrap(await openDataset(again)))).toEqual(await contentOf(dataset));
        // made by the C library, which may add zeros up to the end of a disk block
        expect(Buffer.from(again).equals(bytes.subarray(0, again.length))).toBe(true);
        expect(bytes.subarray(again.length).every((byte) => byte === 0)).toBe(true);
        read += 1;
      }
      expect(read).toBeGreaterThan(5);
    },
  );
