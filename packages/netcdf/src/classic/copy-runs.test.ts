import fc from "fast-check";
import { expect, test } from "vitest";
import { copyRuns } from "./copy-runs.ts";

const small = fc.nat({ max: 9 });

test("runs are copied as byte by byte, at any alignment", () => {
  const length = fc.oneof(fc.constantFrom(1, 2, 4, 8, 12, 40), fc.integer({ min: 1, max: 40 }));
  const property = fc.property(
    fc.tuple(small, small, small, small, small),
    fc.boolean(),
    length,
    fc.integer({ min: 1, max: 5 }),
    ([shift, start, gap, outStart, outGap], aligned, long, count) => {
      const align = (bytes: number) => (aligned ? 4 * bytes : bytes);
      const from = { start: align(start), step: align(gap) + (aligned ? 4 * Math.ceil(long / 4) : long) };
      const to = { start: align(outStart), step: align(outGap) + (aligned ? 4 * Math.ceil(long / 4) : long) };
      const memory = Uint8Array.from({ length: 1000 }, (_, i) => i % 251);
      const source = memory.subarray(align(shift), align(shift) + from.start + count * from.step);
      const out = new Uint8Array(to.start + count * to.step);
      const want = out.slice();
      for (let run = 0; run < count; run++)
        for (let i = 0; i < long; i++)
          want[to.start + run * to.step + i] = source[from.start + run * from.step + i]!;
      copyRuns(source, from, out, to, long, count);
      expect([...out]).toEqual([...want]);
    },
  );
  fc.assert(property, { seed: 20_260_314, numRuns: 500 });
});
