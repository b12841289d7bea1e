import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type ClassicVersion, type Dataset, openDataset, writeClassic, writeNetcdf4 } from "@wherry/netcdf";
import { testWithShared } from "@wherry/testkit";
import { expect } from "vitest";
import { mendDataset } from "../src/index.ts";

const NOW = Date.parse("2026-11-24T00:00:00Z") / 1000;
const VERSIONS: Readonly<Partial<Record<Dataset["kind"], ClassicVersion>>> = {
  classic: 1,
  "64-bit offset": 2,
  "64-bit data": 5,
};

async function written(dataset: Dataset): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  const sink = (chunk: Uint8Array) => void chunks.push(chunk.slice());
  const version = VERSIONS[dataset.kind];
  const result =
    version === undefined
      ? await writeNetcdf4(dataset, {}, sink)
      : await writeClassic(dataset, { version }, sink);
  if (!result.ok) throw new Error(result.problems[0].message);
  return Buffer.concat(chunks);
}

const mended = (dataset: Dataset, path: string) => mendDataset(dataset, { path, now: NOW }, "wherry 0");

/** Mends a file, writes it, and mends it again; says how many attributes were mended. */
async function followed(bytes: Uint8Array, path: string): Promise<number> {
  const opened = await openDataset(bytes);
  // damaged on purpose; nothing to mend, and what cannot be said again is refused before
  if (!opened.ok || opened.value.problems.length > 0) return 0;
  const before = opened.value;
  const first = await mended(before, path);
  const rules = new Set(first.mended.map(({ rule, variable }) => `${rule} ${variable}`));
  const left = first.verdict.findings.filter(({ rule, where }) =>
    rules.has(`${rule} ${where.variable ?? null}`),
  );
  expect(left.map(({ message }) => `${path}: ${message}`)).toEqual([]);
  const again = await openDataset(await written(first.dataset));
  if (!again.ok) throw new Error(`${path}: ${again.problems[0].message}`);
  expect((await mended(again.value, path)).mended).toEqual([]);
  for (const name of before.variables.keys()) {
    const [old, now] = [await before.read(name), await again.value.read(name)];
    expect(now).toEqual(old);
  }
  again.value.close?.();
  before.close?.();
  return first.mended.length;
}

testWithShared(
  ["samples"],
  "files of all kinds are mended once: values are kept, mended rules are silent, the second time changes nothing",
  async (folder) => {
    let changes = 0;
    for (const kind of ["real", "planted", "dsg_own"])
      for (const name of readdirSync(join(folder, kind), { recursive: true, encoding: "utf8" }).sort())
        if (/\.nc\d?$/.test(name)) changes += await followed(readFileSync(join(folder, kind, name)), name);
    expect(changes).toBeGreaterThan(20);
  },
);
