import { readFileSync } from "node:fs";
import { type Dataset, parseCdl } from "@wherry/netcdf";
import { testData } from "@wherry/testkit";
import { expect, test } from "vitest";
import { checkDataset, fullNameOf } from "../src/index.ts";

const product = (name: string): Dataset => {
  const parsed = parseCdl(readFileSync(testData("reference-products", `${name}.cdl`), "utf8"));
  if (!parsed.ok) throw new Error(parsed.problems[0].message);
  return parsed.value;
};

const compared = async (binned: Dataset) =>
  (
    await checkDataset(binned, {
      path: "a_binned.nc",
      now: 1.8e9,
      ruleSets: ["physics"],
      full: { path: "a_full.nc", dataset: product("full") },
    })
  ).filter(({ rule }) => rule === "physics/binned-against-full");

const withAdded = (dataset: Dataset, name: string, by: number): Dataset => ({
  ...dataset,
  read: async (wanted, slab) => {
    const read = await dataset.read(wanted, slab);
    return read.ok && wanted === name
      ? { ...read, value: (read.value as Float32Array).map((v) => v + by) }
      : read;
  },
});

test.each(["binned", "binned_incomplete"])(
  "%s agrees with the full data that it was made from",
  async (name) => {
    expect((await compared(product(name))).map(({ message }) => message)).toEqual([]);
  },
);

test.each(["binned", "binned_incomplete"])("%s with another temperature does not", async (name) => {
  const findings = await compared(withAdded(product(name), "temperature", 2));
  expect(findings.map(({ key, where }) => [key, where.variable])).toEqual([["outside", "temperature"]]);
});

test("the full data are looked for by name", () => {
  expect(fullNameOf("out/a_binned.nc")).toBe("out/a_full.nc");
  expect(fullNameOf("out/binned.nc")).toBeNull();
});
