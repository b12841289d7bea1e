import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { expect } from "vitest";
import type { Dataset } from "../src/dataset.ts";
import { memoryDataset, numberAttribute, textAttribute } from "../src/memory.ts";
import { type Netcdf4Options, netcdf4Bytes } from "../src/netcdf4/write-netcdf4.ts";
import { openDataset } from "../src/open.ts";
import { anyNetcdf4Dataset } from "./any-dataset.ts";
import { contentOf, unwrap } from "./content.ts";
import { type LibraryContents, libraryContents, plainContents, testWithLibrary } from "./netcdf-library.ts";

// What the netCDF library, its programs and Python make of our netCDF-4 files.

async function inFolder(run: (folder: string) => Promise<void>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "wherry-netcdf4-"));
  try {
    await run(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

async function written(folder: string, name: string, dataset: Dataset, options: Netcdf4Options = {}) {
  const path = join(folder, name);
  writeFileSync(path, unwrap(await netcdf4Bytes(dataset, options)));
  return path;
}

const python = (code: string, ...args: string[]) =>
  execFileSync("/usr/bin/python3", ["-W", "error", "-c", code, ...args], { encoding: "utf8" });

/** The empty text is written as a single NUL, since h5wasm makes no attribute without a value. */
function withNuls(contents: LibraryContents): LibraryContents {
  const filled = (attributes: LibraryContents["attributes"]) =>
    attributes.map((one) => (one.type === "char" && one.value === "" ? { ...one, value: "00" } : one));
  return {
    ...contents,
    attributes: filled(contents.attributes),
    variables: contents.variables.map((one) => ({ ...one, attributes: filled(one.attributes) })),
  };
}

const cast = () =>
  memoryDataset({
    dimensions: [
      { name: "time", length: 3, unlimited: true },
      { name: "z", length: 70_000 },
      { name: "name_length", length: 4 },
    ],
    attributes: [textAttribute("Conventions", "CF-1.13"), textAttribute("title", "eau salée, 水")],
    variables: [
      {
        name: "time",
        type: "double",
        dimensions: ["time"],
        attributes: [
          textAttribute("standard_name", "time"),
          textAttribute("units", "seconds since 1970-01-01 00:00:00Z"),
        ],
        data: Float64Array.of(10, 20, 30),
      },
      {
        name: "temperature",
        type: "float",
        dimensions: ["time", "z"],
        attributes: [numberAttribute("_FillValue", "float", -9999), textAttribute("units", "degree_C")],
        data: Float32Array.from({ length: 3 * 70_000 }, (_, i) => (i % 700) / 7),
      },
      {
        name: "station",
        type: "char",
        dimensions: ["time", "name_length"],
        data: new TextEncoder().encode("AB\0\0CDEFüG\0"),
      },
    ],
  });

testWithLibrary("the netCDF library reads what we write, of all kinds", () =>
  inFolder(async (folder) => {
    const datasets = fc.sample(anyNetcdf4Dataset, { seed: 20_260_719, numRuns: 60 });
    const paths = [];
    for (const [i, dataset] of datasets.entries())
      paths.push(await written(folder, `${i}.nc`, dataset, { deflate: i % 3 }));
    for (const [i, contents] of libraryContents(paths).entries()) {
      const wanted = withNuls(await plainContents(datasets[i]!));
      const used = new Set(wanted.variables.flatMap(({ dimensions }) => dimensions));
      expect(contents, `dataset ${i}`).toMatchObject({
        ...wanted,
        // without a variable along it the library finds no length of an unlimited dimension
        dimensions: wanted.dimensions.map((one) =>
          one.unlimited && !used.has(one.name) ? { ...one, length: 0 } : one,
        ),
      });
    }
  }),
);

testWithLibrary("ncdump tells the kind and the storage", () =>
  inFolder(async (folder) => {
    const path = await written(folder, "cast.nc", cast(), { deflate: 4, model: "classic" });
    expect(execFileSync("ncdump", ["-k", path], { encoding: "utf8" })).toBe("netCDF-4 classic model\n");
    const shown = execFileSync("ncdump", ["-hs", path], { encoding: "utf8" });
    expect(shown).toContain("time = UNLIMITED ; // (3 currently)");
    expect(shown).toContain("temperature:_DeflateLevel = 4");
    expect(shown).not.toContain("phony");
    const plain = await written(folder, "plain.nc", cast());
    expect(execFileSync("ncdump", ["-k", plain], { encoding: "utf8" })).toBe("netCDF-4\n");
  }),
);

testWithLibrary("Python appends records, variables and attributes", () =>
  inFolder(async (folder) => {
    for (const model of ["classic", "netCDF-4"] as const) {
      const path = await written(folder, `${model}.nc`, cast(), { deflate: 2, model });
      python(
        `
import sys, netCDF4
with netCDF4.Dataset(sys.argv[1], "a") as d:
    d.set_auto_maskandscale(False)
    d["time"][3] = 40.0
    d["temperature"][3, :] = 5.5
    d.comment = "added"
    d["time"].axis = "T"
    d.createVariable("added", "i4", ("time",))[:] = [1, 2, 3, 4]
`,
        path,
      );
      const read = unwrap(await openDataset(readFileSync(path)));
      expect(read.problems).toEqual([]);
      expect([...read.variables.keys()]).toEqual(["time", "temperature", "station", "added"]);
      expect([...(unwrap(await read.read("time")) as Float64Array)]).toEqual([10, 20, 30, 40]);
      const values = unwrap(await read.read("temperature")) as Float32Array;
      expect(values.slice(0, 210_000)).toEqual(unwrap(await cast().read("temperature")));
      expect(new Set(values.slice(210_000))).toEqual(new Set([5.5]));
      expect([...(unwrap(await read.read("added")) as Int32Array)]).toEqual([1, 2, 3, 4]);
      expect(read.attributes.get("comment")?.value).toBe("added");
      expect(read.variables.get("time")?.attributes.get("axis")?.value).toBe("T");
      read.close?.();
    }
  }),
);

testWithLibrary("xarray opens it without a warning", () =>
  inFolder(async (folder) => {
    const path = await written(folder, "cast.nc", cast(), { deflate: 4, model: "classic" });
    const code = `
import sys, xarray
with xarray.open_dataset(sys.argv[1]) as d:
    d.load()
    print(dict(d.sizes), str(d.time.values[2])[:19], d.title)
`;
    expect(python(code, path).trim()).toBe(
      "{'time': 3, 'z': 70000, 'name_length': 4} 1970-01-01T00:00:30 eau salée, 水".replace(
        ", 'name_length': 4",
        "",
      ),
    );
  }),
);

testWithLibrary("groups become groups again", () =>
  inFolder(async (folder) => {
    const inGroups = memoryDataset({
      dimensions: [
        { name: "x", length: 2 },
        { name: "a/y", length: 3 },
      ],
      attributes: [textAttribute("title", "t"), textAttribute("a/b/title", "inner")],
      variables: [
        { name: "x", type: "int", dimensions: ["x"], data: Int32Array.of(1, 2) },
        { name: "a/v", type: "short", dimensions: ["x", "a/y"], data: Int16Array.of(1, 2, 3, 4, 5, 6) },
        { name: "a/b/w", type: "string", dimensions: ["a/y"], data: ["p", "", "q"] },
      ],
    });
    const path = await written(folder, "groups.nc", inGroups);
    const read = unwrap(await openDataset(readFileSync(path)));
    expect(read.problems).toEqual([]);
    expect(await contentOf(read)).toEqual(await contentOf(inGroups));
    read.close?.();
    const code = `
import sys, netCDF4
with netCDF4.Dataset(sys.argv[1]) as d:
    print(d["a/b"].title, d["a/b/w"][:].tolist(), d["a/v"].dimensions, d["a/v"][1].tolist())
`;
    expect(python(code, path).trim()).toBe("inner ['p', '', 'q'] ('x', 'y') [4, 5, 6]");
  }),
);
