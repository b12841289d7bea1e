import fc from "fast-check";
import { expect, test } from "vitest";
import { classicBytes } from "../src/classic/write-classic.ts";
import { netcdf4Bytes } from "../src/netcdf4/write-netcdf4.ts";
import { openDataset } from "../src/open.ts";
import { anyDataset, anyNetcdf4Dataset } from "./any-dataset.ts";
import { contentOf, unwrap } from "./content.ts";

const runs = { seed: 20_260_718, numRuns: 60 };

test.each([0, 4])("what is written as netCDF-4 is read, deflate %d", { timeout: 60_000 }, async (deflate) => {
  const property = fc.asyncProperty(anyNetcdf4Dataset, async (dataset) => {
    const bytes = unwrap(await netcdf4Bytes(dataset, { deflate }));
    const opened = await openDataset(bytes);
    const read = unwrap(opened);
    expect(opened).toMatchObject({ ok: true, warnings: [] });
    expect(read.problems).toEqual([]);
    expect(read.kind).toBe("netCDF-4");
    expect(await contentOf(read)).toEqual(await contentOf(dataset));
    // writing what was read gives the same file, so a second time changes nothing
    expect(unwrap(await netcdf4Bytes(read, { deflate }))).toEqual(bytes);
    read.close?.();
  });
  await fc.assert(property, runs);
});

test("a classic file is the same after a way through netCDF-4", { timeout: 60_000 }, async () => {
  const property = fc.asyncProperty(anyDataset(1), async (dataset) => {
    const classic = unwrap(await classicBytes(dataset, { version: 1 }));
    const first = unwrap(await openDataset(classic));
    const bytes = unwrap(await netcdf4Bytes(first, { model: "classic" }));
    const second = unwrap(await openDataset(bytes));
    expect(second.kind).toBe("netCDF-4 classic model");
    expect(unwrap(await classicBytes(second, { version: 1 }))).toEqual(classic);
    second.close?.();
  });
  await fc.assert(property, runs);
});
