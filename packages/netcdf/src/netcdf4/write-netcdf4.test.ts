import { afterEach, describe, expect, test, vi } from "vitest";
import { codesOf, unwrap } from "../../test/content.ts";
import type { Attribute, Dataset } from "../dataset.ts";
import { type MemoryContent, memoryDataset, numberAttribute, textAttribute } from "../memory.ts";
import { openDataset } from "../open.ts";
import { fail } from "../problem.ts";
import { netcdf4Bytes, writeNetcdf4 } from "./write-netcdf4.ts";

const large = () =>
  memoryDataset({
    dimensions: [{ name: "obs", length: 300_001 }],
    attributes: [textAttribute("title", "OHDR in a text is no object header")],
    variables: [
      {
        name: "pressure",
        type: "double",
        dimensions: ["obs"],
        data: Float64Array.from({ length: 300_001 }, (_, i) => Math.sin(i)),
      },
    ],
  });

describe("the same dataset gives the same bytes", () => {
  afterEach(() => void vi.useRealTimers());

  test.each([0, 4])("on another day, after other work, deflate %d", async (deflate) => {
    vi.useFakeTimers({ toFake: ["Date"], now: Date.UTC(2026, 0, 1) });
    const first = unwrap(await netcdf4Bytes(large(), { deflate }));
    vi.setSystemTime(Date.UTC(2031, 5, 17));
    // leaves other bytes in the library's memory
    unwrap(await netcdf4Bytes(memoryDataset({ attributes: [textAttribute("a", "x".repeat(99_999))] }), {}));
    const second = unwrap(await netcdf4Bytes(large(), { deflate }));
    expect(Buffer.compare(first, second)).toBe(0);
  });
});

test("the sink gets the file in pieces", async () => {
  const pieces: Uint8Array[] = [];
  const written = await writeNetcdf4(large(), {}, (piece) => void pieces.push(piece));
  expect(written).toEqual({ ok: true, value: undefined, warnings: [] });
  expect(pieces.length).toBeGreaterThan(1);
  expect(Buffer.concat(pieces).equals(unwrap(await netcdf4Bytes(large(), {})))).toBe(true);
});

test("deflate makes it smaller", async () => {
  const zeros = memoryDataset({
    dimensions: [{ name: "obs", length: 100_000 }],
    variables: [{ name: "v", type: "double", dimensions: ["obs"], data: new Float64Array(100_000) }],
  });
  const sizes = [0, 1].map(async (deflate) => unwrap(await netcdf4Bytes(zeros, { deflate })).length);
  const [plain, packed] = await Promise.all(sizes);
  expect(packed! * 50).toBeLessThan(plain!);
});

test("text beyond 64 KiB, and more attributes than fit in a header", async () => {
  const attributes = [
    textAttribute("history", "step\n".repeat(40_000)),
    ...Array.from({ length: 60 }, (_, i) => textAttribute(`a${59 - i}`, `${i}`)),
  ];
  const read = unwrap(await openDataset(unwrap(await netcdf4Bytes(memoryDataset({ attributes }), {}))));
  expect([...read.attributes.values()]).toEqual(attributes);
  read.close?.();
});

describe("what can't be said is a problem", () => {
  const x = { name: "x", length: 1 };
  const scalar = (name: string, attributes: Attribute[] = []) =>
    ({ name, type: "int", dimensions: [], data: Int32Array.of(1), attributes }) as const;
  const strings = (texts: string[]) =>
    ({ name: "s", type: "string", dimensions: ["x"], data: texts }) as const;

  test.each<[string, MemoryContent, string]>([
    ["a name that starts with a stroke", { variables: [scalar("/v")] }, "netcdf/name"],
    ["one name in two forms", { variables: [scalar("é"), scalar("e\u0301")] }, "netcdf/duplicate-name"],
    ["a group of a variable's name", { variables: [scalar("a"), scalar("a/b")] }, "netcdf/duplicate-name"],
    ["a reserved attribute", { attributes: [textAttribute("_NCProperties", "x")] }, "netcdf/reserved-name"],
    [
      "a reserved attribute of a coordinate variable",
      {
        dimensions: [x],
        variables: [
          {
            name: "x",
            type: "int",
            dimensions: ["x"],
            data: Int32Array.of(1),
            attributes: [textAttribute("CLASS", "first")],
          },
        ],
      },
      "netcdf/reserved-name",
    ],
    ["a reserved variable", { variables: [scalar("_nc4_non_coord_v")] }, "netcdf/reserved-name"],
    [
      "a dimension of another group",
      {
        dimensions: [{ name: "a/y", length: 1 }],
        variables: [{ name: "v", type: "int", dimensions: ["a/y"], data: Int32Array.of(1) }],
      },
      "netcdf/dimension-scope",
    ],
    ["a NUL inside a string", { dimensions: [x], variables: [strings(["a\0b"])] }, "netcdf/text"],
    ["half a character in a string", { dimensions: [x], variables: [strings(["\ud800"])] }, "netcdf/text"],
    ["half a character in a text", { attributes: [textAttribute("t", "\ud800")] }, "netcdf/text"],
    [
      "a NUL in a list of strings",
      { attributes: [{ name: "t", type: "string", value: ["a\0"] }] },
      "netcdf/text",
    ],
    [
      "records without extent",
      {
        dimensions: [
          { name: "r", length: 1, unlimited: true },
          { name: "n", length: 0 },
        ],
        variables: [{ name: "v", type: "int", dimensions: ["r", "n"], data: new Int32Array(0) }],
      },
      "netcdf/zero-length-dimension",
    ],
  ])("%s", async (_, content, code) => {
    const sink = vi.fn();
    expect(codesOf(await writeNetcdf4(memoryDataset(content), {}, sink))).toEqual([code]);
    expect(sink).not.toHaveBeenCalled();
  });

  test.each<[string, MemoryContent, string]>([
    ["a type", { attributes: [numberAttribute("n", "uint", 1)] }, "netcdf/type"],
    ["a group", { variables: [scalar("a/b")] }, "netcdf/groups"],
    [
      "two unlimited dimensions",
      {
        dimensions: [
          { name: "r", length: 0, unlimited: true },
          { name: "s", length: 0, unlimited: true },
        ],
      },
      "netcdf/record-dimensions",
    ],
    [
      "an unlimited dimension that is not the first",
      {
        dimensions: [x, { name: "r", length: 1, unlimited: true }],
        variables: [{ name: "v", type: "int", dimensions: ["x", "r"], data: Int32Array.of(1) }],
      },
      "netcdf/record-position",
    ],
  ])("%s in the classic model", async (_, content, code) => {
    const dataset = memoryDataset(content);
    expect(codesOf(await netcdf4Bytes(dataset, { model: "classic" }))).toEqual([code]);
    expect(codesOf(await netcdf4Bytes(dataset, {}))).toEqual([]);
  });
});

test("an unlimited dimension that nothing uses is warned of", async () => {
  const dataset = memoryDataset({ dimensions: [{ name: "r", length: 2, unlimited: true }] });
  expect(await netcdf4Bytes(dataset, {})).toMatchObject({
    ok: true,
    warnings: [{ code: "netcdf/unlimited-unused", where: { dimension: "r" } }],
  });
});

test("what the dataset can't give is passed on", async () => {
  const problem = { code: "netcdf/damaged-values", message: "no", where: { variable: "pressure" } };
  const broken: Dataset = { ...large(), read: async () => fail(problem) };
  expect(await netcdf4Bytes(broken, {})).toEqual({ ok: false, problems: [problem] });
});

test.each([-1, 10, 1.5])("deflate %d is a wrong call", async (deflate) => {
  await expect(netcdf4Bytes(large(), { deflate })).rejects.toThrow(RangeError);
});
