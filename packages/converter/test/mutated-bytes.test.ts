import fc from "fast-check";
import { expect, test } from "vitest";
import { anyExport, damaged, fault, generator, samples } from "./fuzz.ts";
import { attempt } from "./understand-samples.ts";

// `pnpm fuzz` takes 100,000 of them

test("1,500 damaged files: never an exception, and always casts of equal columns or a problem", () => {
  const random = generator(20_250_513);
  const all = samples();
  let read = 0;
  for (let i = 0; i < 1500; i++) {
    const sample = all[Math.floor(random() * all.length)]!;
    const bytes = damaged(sample, random);
    expect([i, sample.file, fault(bytes, sample.file)]).toEqual([i, sample.file, null]);
    if (attempt(bytes, sample.file).ok) read++;
  }
  expect(read).toBeGreaterThan(500);
});

test("500 texts of telling words and cells in any order", () => {
  fc.assert(
    fc.property(anyExport, (text) => {
      expect(fault(text, "any.txt")).toBeNull();
    }),
    { numRuns: 500 },
  );
});
