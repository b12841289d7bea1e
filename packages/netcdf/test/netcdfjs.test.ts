import { NetCDFReader } from "netcdfjs";
import { expect, test } from "vitest";
import { classicBytes } from "../src/classic/write-classic.ts";
import { memoryDataset, numberAttribute, textAttribute } from "../src/memory.ts";
import { unwrap } from "./content.ts";

/*
 * netcdfjs is an independent reader within its limits: CDF-1 and CDF-2, names and texts in ASCII, values of
 * type int, float and double (docs/decisions/0002-own-classic-netcdf.md).
 */
test.each([1, 2] as const)("netcdfjs reads what we write in version %d", async (version) => {
  const temperature = Float32Array.of(4.5, 4.25, 4.125, 5.5, 5.25, 5.125, 6.5, 6.25, 6.125);
  const dataset = memoryDataset({
    dimensions: [
      { name: "time", length: 3, unlimited: true },
      { name: "level", length: 3 },
    ],
    attributes: [textAttribute("title", "Invented casts"), numberAttribute("numbers", "double", [1.5, -2.5])],
    variables: [
      { name: "level", type: "int", dimensions: ["level"], data: Int32Array.of(0, -70_000, 2 ** 31 - 1) },
      {
        name: "temperature",
        type: "float",
        dimensions: ["time", "level"],
        attributes: [textAttribute("units", "degree_C"), numberAttribute("_FillValue", "float", -999)],
        data: temperature,
      },
      {
        name: "time",
        type: "double",
        dimensions: ["time"],
        data: Float64Array.of(1e9, 1e9 + 0.125, 1e9 + 1),
      },
    ],
  });
  const reader = new NetCDFReader(unwrap(await classicBytes(dataset, { version })));
  expect(reader.dimensions.map(({ name, size }) => ({ name, size }))).toEqual([
    { name: "time", size: 0 },
    { name: "level", size: 3 },
  ]);
  expect(reader.recordDimension).toMatchObject({ length: 3, name: "time" });
  expect(reader.globalAttributes).toEqual([
    { name: "title", type: "char", value: "Invented casts" },
    { name: "numbers", type: "double", value: [1.5, -2.5] },
  ]);
  expect(reader.getDataVariable("level")).toEqual([0, -70_000, 2 ** 31 - 1]);
  expect(reader.getDataVariable("time")).toEqual([1e9, 1e9 + 0.125, 1e9 + 1]);
  expect(reader.getDataVariable("temperature").flat()).toEqual([...temperature]);
  expect(reader.variables.find(({ name }) => name === "temperature")?.attributes).toEqual([
    { name: "units", type: "char", value: "degree_C" },
    { name: "_FillValue", type: "float", value: -999 },
  ]);
});
