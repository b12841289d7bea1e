import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { sharedPath, testWithShared } from "@wherry/testkit";
import { expect } from "vitest";
import { openDataset } from "../src/open.ts";
import { unwrap } from "./content.ts";
import { comparable, libraryContents, plainContents, testWithLibrary } from "./netcdf-library.ts";

// Every netCDF-4 file among the samples, read by us and by the netCDF library.

for (const folder of ["dsg_own", "planted"]) {
  const path = sharedPath("samples", folder);
  const name = `netCDF-4 files in ${folder} hold what the netCDF library reads`;
  if (path === null) testWithShared(["samples", folder], name, () => {});
  else
    testWithLibrary(name, async () => {
      const files = readdirSync(path)
        .map((file) => join(path, file))
        .filter((file) => file.endsWith(".nc") && readFileSync(file).subarray(1, 4).toString() === "HDF");
      expect(files.length).toBeGreaterThan(0);
      for (const [i, contents] of libraryContents(files).entries()) {
        const dataset = unwrap(await openDataset(readFileSync(files[i]!)));
        expect(await plainContents(dataset), files[i]).toEqual(comparable(contents));
      }
    });
}
