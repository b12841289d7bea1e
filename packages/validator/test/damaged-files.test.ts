import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { testData } from "@wherry/testkit";
import { expect, test } from "vitest";
import { checkFile, checkText } from "../src/index.ts";

/** A generator of whole numbers below a limit, the same on every machine (linear congruence, Knuth's constants). */
function dice(seed: number): (limit: number) => number {
  let state = seed >>> 0;
  return (limit) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * limit);
  };
}

const folder = testData("samples", "dsg_own");
const names = readdirSync(folder).filter((name) => name.endsWith(".nc"));

/** Changes a few bytes of the header, or cuts the file. */
function damage(bytes: Uint8Array, roll: (limit: number) => number): Uint8Array {
  const copy = Uint8Array.from(bytes);
  for (let i = 0; i <= roll(6); i += 1) copy[roll(Math.min(copy.length, 12_000))] = roll(256);
  return roll(5) === 0 ? copy.subarray(0, roll(copy.length)) : copy;
}

test("files with wrong bytes get a verdict, never an exception", { timeout: 120_000 }, async () => {
  const roll = dice(20_260_101);
  let unread = 0;
  let read = 0;
  // classic files: what a damaged netCDF-4 file does is tested where it is read
  const files = names.map((name) => readFileSync(join(folder, name))).filter((bytes) => bytes[0] === 0x43);
  for (let round = 0; round < 40; round += 1) {
    for (const bytes of files) {
      const checked = await checkFile(damage(bytes, roll), { path: "a.nc", now: 1.9e9 });
      expect(checkText([checked])).toContain("1 file checked");
      if (checked.format === null) unread += 1;
      else read += 1;
    }
  }
  // both kinds were met
  expect(unread).toBeGreaterThan(20);
  expect(read).toBeGreaterThan(20);
});
