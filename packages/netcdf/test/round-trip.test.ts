import fc from "fast-check";
import { expect, test } from "vitest";
import { classicBytes } from "../src/classic/write-classic.ts";
import type { Slab, Source } from "../src/dataset.ts";
import { openDataset } from "../src/open.ts";
import { anyDataset } from "./any-dataset.ts";
import { contentOf, unwrap } from "./content.ts";

const runs = { seed: 20_260_314, numRuns: 150 };
const kinds = { 1: "classic", 2: "64-bit offset", 5: "64-bit data" } as const;

test.each([1, 2, 5] as const)("what is written in version %d is read", async (version) => {
  const property = fc.asyncProperty(anyDataset(version), async (dataset) => {
    const bytes = unwrap(await classicBytes(dataset, { version }));
    const opened = await openDataset(bytes);
    const read = unwrap(opened);
    expect(opened).toMatchObject({ ok: true, warnings: [] });
    expect(read.problems).toEqual([]);
    expect(read.kind).toBe(kinds[version]);
    expect(await contentOf(read)).toEqual(await contentOf(dataset));
    expect(unwrap(await classicBytes(read, { version }))).toEqual(bytes);
  });
  await fc.assert(property, runs);
});

test("a source that is read in pieces, at odd addresses, gives the same", async () => {
  const property = fc.asyncProperty(anyDataset(5), fc.integer({ min: 0, max: 7 }), async (dataset, shift) => {
    const bytes = unwrap(await classicBytes(dataset, { version: 5 }));
    const moved = new Uint8Array(bytes.length + shift);
    moved.set(bytes, shift);
    const source: Source = {
      size: bytes.length,
      read: async (offset, length) => moved.subarray(shift + offset, shift + offset + length),
    };
    expect(await contentOf(unwrap(await openDataset(source)))).toEqual(await contentOf(dataset));
  });
  await fc.assert(property, runs);
});

test("slabs of a file are slabs of what was written", async () => {
  const property = fc.asyncProperty(anyDataset(2), fc.infiniteStream(fc.nat()), async (dataset, random) => {
    const read = unwrap(await openDataset(unwrap(await classicBytes(dataset, { version: 2 }))));
    for (const { name, shape } of dataset.variables.values()) {
      const slab = someSlab(shape, () => random.next().value);
      expect(unwrap(await read.read(name, slab))).toEqual(unwrap(await dataset.read(name, slab)));
    }
  });
  await fc.assert(property, runs);
});

function someSlab(shape: readonly number[], next: () => number): Slab {
  const start = shape.map((length) => next() % (length + 1));
  const count = shape.map((length, axis) => next() % (length - start[axis]! + 1));
  return { start, count };
}
