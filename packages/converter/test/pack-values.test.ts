import { memoryDataset, numberAttribute, textAttribute } from "@wherry/netcdf";
import fc from "fast-check";
import { expect, test } from "vitest";
import { packValues } from "../src/writers/pack-values.ts";

function oneVariable(data: Float32Array | Float64Array) {
  return memoryDataset({
    dimensions: [{ name: "obs", length: data.length }],
    variables: [
      {
        name: "temperature",
        type: data instanceof Float32Array ? "float" : "double",
        dimensions: ["obs"],
        data,
        attributes: [
          textAttribute("coordinates", "time"),
          numberAttribute("_FillValue", data instanceof Float32Array ? "float" : "double", -9999),
        ],
      },
    ],
  });
}

/** As CF 1.13 section 8.1 has it: stored value times scale_factor, in the type of scale_factor. */
async function unpacked(data: Float32Array | Float64Array) {
  const dataset = await packValues(oneVariable(data));
  const { type, attributes } = dataset.variables.get("temperature")!;
  const read = await dataset.read("temperature");
  const stored = read.ok ? (read.value as Int16Array) : new Int16Array();
  const number = (name: string) => (attributes.get(name)?.value as ArrayLike<number> | undefined)?.[0];
  const scale = number("scale_factor");
  return {
    type,
    values: Array.from(stored, (each) => (each === number("_FillValue") ? null : each * (scale ?? 1))),
  };
}

test("values printed with few decimals are packed and come back as they were stored", async () => {
  const printed = fc
    .tuple(
      fc.integer({ min: 0, max: 4 }),
      fc.array(fc.integer({ min: -32767, max: 32767 }), { minLength: 1 }),
    )
    .map(([decimals, wholes]) => wholes.map((whole) => `${whole}e-${decimals}`));
  await fc.assert(
    fc.asyncProperty(printed, async (texts) => {
      const stored = Float32Array.from([...texts.map(Number), -9999]);
      const { type, values } = await unpacked(stored);
      expect(type).toBe("short");
      expect(values.at(-1)).toBeNull();
      for (const [k, value] of values.slice(0, -1).entries())
        if (value !== null) expect(Math.fround(value)).toBe(stored[k]! + 0);
    }),
  );
});

test("whatever the numbers, none changes", async () => {
  await fc.assert(
    fc.asyncProperty(fc.float64Array({ minLength: 1, noNaN: true }), async (data) => {
      const { type, values } = await unpacked(data);
      if (type === "short")
        for (const [k, value] of values.entries()) if (value !== null) expect(value).toBe(data[k]! + 0);
      if (type === "double") expect(values.map((value) => value ?? -9999)).toEqual([...data].map((x) => x));
    }),
  );
});

test("numbers with more digits than two bytes hold stay as they are", async () => {
  expect((await unpacked(Float32Array.of(1027.2344, 1027.3))).type).toBe("float");
  expect((await unpacked(Float32Array.of(40.001))).type).toBe("float");
});
