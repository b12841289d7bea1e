import fc from "fast-check";
import { expect, test } from "vitest";
import { contiguousSlabs, runLength, runStarts, sizeOf } from "./slab.ts";

test.each([
  { shape: [], most: 10, want: [{ start: [], count: [] }] },
  {
    shape: [5],
    most: 2,
    want: [
      { start: [0], count: [2] },
      { start: [2], count: [2] },
      { start: [4], count: [1] },
    ],
  },
  { shape: [2, 3], most: 6, want: [{ start: [0, 0], count: [2, 3] }] },
  {
    shape: [2, 3],
    most: 5,
    want: [
      { start: [0, 0], count: [1, 3] },
      { start: [1, 0], count: [1, 3] },
    ],
  },
  { shape: [0, 3], most: 5, want: [] },
])("slabs of $shape with at most $most values", ({ shape, most, want }) => {
  expect([...contiguousSlabs(shape, most)]).toEqual(want);
});

test("contiguous slabs are single runs that follow each other to the end", () => {
  const shape = fc.array(fc.integer({ min: 1, max: 5 }), { maxLength: 4 });
  const property = fc.property(shape, fc.integer({ min: 1, max: 40 }), (lengths, most) => {
    let next = 0;
    for (const slab of contiguousSlabs(lengths, most)) {
      expect([...runStarts(lengths, slab)]).toEqual([next]);
      expect(runLength(lengths, slab)).toBe(sizeOf(slab.count));
      expect(sizeOf(slab.count)).toBeLessThanOrEqual(most);
      next += sizeOf(slab.count);
    }
    expect(next).toBe(sizeOf(lengths));
  });
  fc.assert(property, { seed: 20_260_314 });
});
