import { spawnSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { layerMeans } from "@wherry/core";
import { classicBytes, type Dataset } from "@wherry/netcdf";
import { inTemporaryFolder } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { binnedDataset } from "../src/writers/binned-dataset.ts";
import { fullDataset } from "../src/writers/full-dataset.ts";
import { seriesDataset } from "../src/writers/series-dataset.ts";
import { numbers, referenceCasts } from "./reference-casts.ts";
import { referenceContext } from "./reference-sheet.ts";

const context = referenceContext();
const casts = await referenceCasts("full");
const [series] = await referenceCasts("series");
const means = new Map(
  casts.map((cast) => [cast.id, layerMeans(cast, { width: 0.5, coordinate: "depth", direction: "down" })]),
);
const products: Record<string, Dataset> = {
  full: fullDataset(casts, context),
  binned: binnedDataset(casts, means, context)!,
  series: seriesDataset(series!, context),
};

/** Prints what xarray makes of a file; any warning is an error. */
const SCRIPT = `
import json, sys, warnings
warnings.simplefilter("error")
import xarray
with xarray.open_dataset(sys.argv[1], engine="netcdf4") as data:
    print(json.dumps({
        "dims": {str(k): int(v) for k, v in data.sizes.items()},
        "coords": sorted(map(str, data.coords)),
        "time": str(data["time"].dtype),
        "temperature": [None if v != v else float(v) for v in data["temperature"].values],
        "salinity_dims": list(map(str, data["salinity"].dims)),
    }))
`;

const has = (program: string, ...args: string[]) => spawnSync(program, args).status === 0;
const withNcdump = has("ncdump", "-h", "/dev/null") || spawnSync("ncdump").error === undefined;
const python = "/usr/bin/python3";
const withXarray = has(python, "-c", "import xarray, netCDF4");

describe.each(Object.entries(products))("%s product in other readers", (name, dataset) => {
  test("the C library's ncdump reads it", async (context) => {
    if (!withNcdump) return context.skip("skipped: ncdump (Debian's netcdf-bin) is not installed");
    await withFile(dataset, (path) => {
      const { status, stdout, stderr } = spawnSync("ncdump", ["-h", path], { encoding: "utf8" });
      expect([status, stderr]).toEqual([0, ""]);
      for (const variable of dataset.variables.keys())
        expect(stdout).toMatch(new RegExp(`\\s${variable}[( ]`));
    });
  });

  test("xarray opens it without a warning, with coordinates and decoded times", async (context) => {
    if (!withXarray) return context.skip("skipped: xarray (Debian's python3-xarray) is not installed");
    const wanted = await numbers(dataset, "temperature");
    await withFile(dataset, (path) => {
      const { status, stdout, stderr } = spawnSync(python, ["-c", SCRIPT, path], { encoding: "utf8" });
      expect([status, stderr]).toEqual([0, ""]);
      const seen = JSON.parse(stdout);
      expect(seen.time).toMatch(/^datetime64/);
      expect(seen.coords).toEqual(expect.arrayContaining(["time", "latitude", "longitude", "depth"]));
      expect(seen.salinity_dims).toEqual([name === "series" ? "time" : "obs"]);
      expect(seen.temperature).toEqual(wanted.map((value) => (Number.isNaN(value) ? null : value)));
    });
  });
});

async function withFile(dataset: Dataset, run: (path: string) => void) {
  const bytes = await classicBytes(dataset, { version: 1 });
  if (!bytes.ok) throw new Error(bytes.problems[0].message);
  await inTemporaryFolder((folder) => {
    const path = join(folder, "product.nc");
    writeFileSync(path, bytes.value);
    run(path);
  });
}
