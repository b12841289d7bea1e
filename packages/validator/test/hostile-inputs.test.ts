import { expect, test } from "vitest";
import { damaged, dice, samples, verdictsOn } from "./hostile-inputs.ts";

// `pnpm fuzz:check` takes 100,000 of them

test("2,000 damaged files, packages and tables get a verdict, never an exception", {
  timeout: 300_000,
}, async () => {
  const roll = dice(20_260_101);
  const all = samples();
  let [read, unread] = [0, 0];
  for (let round = 0; round < 2000; round += 1) {
    const sample = all[roll(all.length)]!;
    const verdicts = await verdictsOn({ ...sample, bytes: damaged(sample.bytes, roll) }, roll);
    if (verdicts.some(({ format }) => format !== null)) read += 1;
    else unread += 1;
  }
  // damage of both kinds was met: such that ends reading, and such that rules have to live with
  expect(read).toBeGreaterThan(300);
  expect(unread).toBeGreaterThan(300);
});
