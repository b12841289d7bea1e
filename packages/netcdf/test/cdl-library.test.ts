import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { sharedPath, testWithShared } from "@wherry/testkit";
import fc from "fast-check";
import { expect } from "vitest";
import { parseCdl } from "../src/cdl/parse-cdl.ts";
import { toCdl } from "../src/cdl/to-cdl.ts";
import type { NcType } from "../src/dataset.ts";
import { anyCdlDataset } from "./any-cdl-dataset.ts";
import { unwrap } from "./content.ts";
import {
  comparable,
  type GeneratorKind,
  generatedContents,
  plainContents,
  testWithLibrary,
} from "./netcdf-library.ts";

// Checked against ncgen and Python's netCDF4, netCDF library 4.9.0 of Debian 12.

const classic: readonly NcType[] = ["byte", "char", "short", "int", "float", "double"];
const large: readonly NcType[] = [...classic, "ubyte", "ushort", "uint", "uint64"];
const types: Readonly<Record<GeneratorKind, readonly NcType[]>> = {
  nc3: classic,
  // ncgen 4.9.0 makes an int variable of an int64 one here
  nc5: large,
  nc4: [...large, "int64", "string"],
};

for (const kind of ["nc3", "nc5", "nc4"] as const)
  testWithLibrary(`the generator reads our text as ${kind} with the same values`, async () => {
    const limits = { types: types[kind], extended: kind === "nc4", generator: true };
    const datasets = fc.sample(anyCdlDataset(limits), { seed: 20_260_317, numRuns: 80 });
    const texts = await Promise.all(datasets.map((dataset) => toCdl(dataset)));
    const read = generatedContents(texts.map((text) => ({ text, kind })));
    for (const [i, dataset] of datasets.entries())
      expect(comparable(read[i]!), texts[i]).toEqual(await plainContents(dataset));
  });

for (const folder of ["our-products", "cf-examples"]) {
  const name = `texts in ${folder} mean what the generator makes of them`;
  const path = sharedPath("standards", folder);
  if (path === null) testWithShared(["standards", folder], name, () => {});
  else
    testWithLibrary(name, async () => {
      const files = readdirSync(path).filter((file) => file.endsWith(".cdl"));
      expect(files.length).toBeGreaterThan(3);
      const texts = files.map((file) => readFileSync(join(path, file), "utf8"));
      const made = generatedContents(texts.map((text) => ({ text, kind: "nc4" })));
      for (const [i, text] of texts.entries())
        expect(await plainContents(unwrap(parseCdl(text))), files[i]).toEqual(comparable(made[i]!));
    });
}
