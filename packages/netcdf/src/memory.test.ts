import { expect, test } from "vitest";
import { memoryDataset, numberAttribute, textAttribute } from "./memory.ts";

const grid = memoryDataset({
  dimensions: [
    { name: "y", length: 3 },
    { name: "x", length: 4 },
  ],
  attributes: [textAttribute("title", "made up")],
  variables: [
    {
      name: "v",
      type: "int",
      dimensions: ["y", "x"],
      attributes: [numberAttribute("_FillValue", "int", -1)],
      data: Int32Array.from([0, 1, 2, 3, 10, 11, 12, 13, 20, 21, 22, 23]),
    },
    { name: "s", type: "string", dimensions: ["y"], data: ["a", "b", "c"] },
    { name: "scalar", type: "double", dimensions: [], data: Float64Array.of(1.5) },
  ],
});

test.each([
  { name: "v", slab: undefined, want: [0, 1, 2, 3, 10, 11, 12, 13, 20, 21, 22, 23] },
  { name: "v", slab: { start: [1, 1], count: [2, 2] }, want: [11, 12, 21, 22] },
  { name: "v", slab: { start: [1, 0], count: [2, 4] }, want: [10, 11, 12, 13, 20, 21, 22, 23] },
  { name: "v", slab: { start: [0, 3], count: [3, 1] }, want: [3, 13, 23] },
  { name: "v", slab: { start: [3, 0], count: [0, 4] }, want: [] },
  { name: "s", slab: { start: [1], count: [2] }, want: ["b", "c"] },
  { name: "scalar", slab: { start: [], count: [] }, want: [1.5] },
])("slab of $name: $slab", async ({ name, slab, want }) => {
  const read = await grid.read(name, slab);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  expect([...read.value]).toEqual(want);
});

test.each([
  { name: "v", slab: { start: [0], count: [1] }, code: "netcdf/slab" },
  { name: "v", slab: { start: [2, 0], count: [2, 1] }, code: "netcdf/slab" },
  { name: "v", slab: { start: [-1, 0], count: [1, 1] }, code: "netcdf/slab" },
  { name: "v", slab: { start: [0, 0], count: [1, 0.5] }, code: "netcdf/slab" },
  { name: "w", slab: undefined, code: "netcdf/no-variable" },
])("a wrong request is a problem: $name $slab", async ({ name, slab, code }) => {
  const read = await grid.read(name, slab);
  expect(read.ok ? null : read.problems.map((problem) => problem.code)).toEqual([code]);
});

test("wrong calls throw", () => {
  const dimensions = [{ name: "x", length: 2 }];
  const variable = { name: "v", type: "int" as const, dimensions: ["x"], data: Int32Array.of(1, 2) };
  expect(() => memoryDataset({ variables: [variable] })).toThrow(RangeError);
  expect(() => memoryDataset({ dimensions, variables: [variable, variable] })).toThrow(RangeError);
  expect(() => memoryDataset({ dimensions, variables: [{ ...variable, data: Int32Array.of(1) }] })).toThrow(
    RangeError,
  );
  expect(() => memoryDataset({ dimensions, variables: [{ ...variable, type: "float" }] })).toThrow(TypeError);
  expect(() => numberAttribute("a", "byte", 128)).toThrow(RangeError);
  expect(() => numberAttribute("a", "short", 1.5)).toThrow(RangeError);
  expect(() => numberAttribute("a", "float", 1e300)).toThrow(RangeError);
  expect(() => numberAttribute("a", "int64", 2n ** 63n)).toThrow(RangeError);
});
