import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { openDataset, parseCdl, writeClassic, writeNetcdf4 } from "@wherry/netcdf";
import { inTemporaryFolder, testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { convert } from "../src/convert.ts";

// Every sampling geometry that is read goes into products, from classic files and netCDF-4 alike. What must arrive was
// read from the samples with the netCDF C library (test-data/cf-dsg/expected.json).

interface Expected {
  readonly id: string;
  readonly columns: Readonly<
    Record<string, { readonly rows: number; readonly missing: number; readonly sum: number }>
  >;
}

const { files: expected } = JSON.parse(readFileSync(testData("cf-dsg", "expected.json"), "utf8")) as {
  readonly files: Readonly<Record<string, readonly Expected[]>>;
};

const own = Object.keys(expected).filter((path) => !path.startsWith("reference-products/"));

/** The sample as a file of either kind. */
async function lay(path: string, folder: string, kind: "classic" | "netcdf4"): Promise<string> {
  const bytes = readFileSync(testData(path));
  const opened = path.endsWith(".cdl") ? parseCdl(bytes.toString()) : await openDataset(bytes);
  if (!opened.ok) throw new Error(opened.problems[0].message);
  const chunks: Uint8Array[] = [];
  const sink = (chunk: Uint8Array) => void chunks.push(chunk.slice());
  const written =
    kind === "classic"
      ? await writeClassic(opened.value, { version: 2 }, sink)
      : await writeNetcdf4(opened.value, { deflate: 1 }, sink);
  if (!written.ok) throw new Error(written.problems[0].message);
  const file = join(folder, basename(path).replace(/\.\w+$/, ".nc"));
  writeFileSync(file, Buffer.concat(chunks));
  return file;
}

/** Sum of all values of a quantity over the products that hold rows, in units of the products. */
async function sumIn(folder: string, names: readonly string[]): Promise<number> {
  let sum = 0;
  for (const file of readdirSync(folder).filter((name) => /_(?:full|series.*)\.nc$/.test(name))) {
    const opened = await openDataset(new Uint8Array(readFileSync(join(folder, file))));
    if (!opened.ok) throw new Error(opened.problems[0].message);
    const variable = names.map((name) => opened.value.variables.get(name)).find((each) => each !== undefined);
    if (!variable) continue;
    const read = await opened.value.read(variable.name);
    if (!read.ok) throw new Error(read.problems[0].message);
    const fill = Number((variable.attributes.get("_FillValue")?.value as Float64Array | undefined)?.[0]);
    for (const value of read.value as Float64Array) if (value !== fill) sum += value;
  }
  return sum;
}

describe.each(["classic", "netcdf4"] as const)("%s", (kind) => {
  test.each(own)("%s", (path) =>
    inTemporaryFolder(async (folder) => {
      const sheet = join(folder, "s.yaml");
      writeFileSync(sheet, "version: 1\ncreated: 2025-06-02T08:00:00Z\nsurvey: { id: quay }\n");
      const file = await lay(path, folder, kind);
      const out = join(folder, "out");
      const options = { products: ["full", "series"] as const, perCast: false, force: false, version: "0" };
      const done = await convert([file], { ...options, sheet, out });
      if (!done.ok) throw new Error(done.problems[0].message);
      const casts = expected[path]!;
      expect([done.value.casts, done.value.held]).toEqual([casts.length, []]);
      expect(done.value.added.length).toBe(casts.length);
      for (const [name, divisor] of [
        ["temperature", 1],
        ["conductivity", 10],
        ["salinity", 1],
      ] as const) {
        const sums = casts.flatMap(({ columns }) => columns[name]?.sum ?? []);
        if (sums.length === 0) continue;
        const sum = sums.reduce((a, b) => a + b) / divisor;
        // salinity beside a conductivity is computed anew, and the received one stays beside it
        const stored = await sumIn(out, name === "salinity" ? ["salinity_received", "salinity"] : [name]);
        expect(Math.abs(stored - sum), name).toBeLessThanOrEqual(1e-6 * Math.abs(sum));
      }
    }),
  );
});
