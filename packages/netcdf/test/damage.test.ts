import { readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import { expect, test } from "vitest";
import { openDataset } from "../src/open.ts";
import { type Problem, type Result, succeed } from "../src/problem.ts";

/** Opens and reads all; gives what was complained of and the bytes of the values. */
async function readAll(bytes: Uint8Array): Promise<Result<{ problems: Problem[]; valueBytes: number }>> {
  const opened = await openDataset(bytes);
  if (!opened.ok) return opened;
  const problems = [...opened.warnings, ...opened.value.problems];
  let valueBytes = 0;
  for (const name of opened.value.variables.keys()) {
    const read = await opened.value.read(name);
    if (!read.ok) problems.push(...read.problems);
    else if (!Array.isArray(read.value)) valueBytes += read.value.byteLength;
  }
  return succeed({ problems, valueBytes });
}

const files = ["classic_all_types.nc", "offset64_single_short.nc", "data64_all_types.nc"];

test.each(files)("%s cut at any byte is a problem", async (name) => {
  const bytes = new Uint8Array(readFileSync(testData("netcdf", name)));
  const whole = await readAll(bytes);
  expect(whole.ok && whole.value.problems).toEqual([]);
  for (let length = 0; length < bytes.length; length++) {
    const read = await readAll(bytes.slice(0, length));
    const problems = read.ok ? read.value.problems : read.problems;
    if (problems.length === 0) throw new Error(`nothing was said of ${length} bytes of ${name}`);
    for (const { code, message, where } of problems) {
      expect(code).toMatch(/^netcdf\//);
      expect(message).not.toMatch(/undefined|NaN|Infinity/);
      expect(where.byte ?? where.variable).toBeDefined();
    }
  }
});

/** Numbers below `limit`, the same on every run (a linear congruential generator, constants of Numerical Recipes). */
function dice(seed: number) {
  let state = seed;
  return (limit: number): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * limit);
  };
}

test("changed bytes never throw, nor ask for more than the file holds", async () => {
  const originals = files.map((name) => new Uint8Array(readFileSync(testData("netcdf", name))));
  const roll = dice(20_260_314);
  const telling = [0x00, 0x01, 0x7f, 0x80, 0xff, 0x0a, 0x0b, 0x0c];
  let refused = 0;
  let opened = 0;
  for (let run = 0; run < 2000; run++) {
    const bytes = originals[run % originals.length]!.slice();
    for (let change = 0; change <= roll(4); change++) {
      const at = 4 + roll(bytes.length - 4);
      const byte = roll(2) === 0 ? telling[roll(telling.length)]! : roll(256);
      // a field of four bytes, or a single byte
      if (roll(3) === 0) bytes.fill(byte, at, at + 4);
      else bytes[at] = byte;
    }
    const read = await readAll(bytes);
    if (!read.ok) refused += 1;
    else {
      opened += 1;
      expect(read.value.valueBytes).toBeLessThanOrEqual(bytes.length);
    }
  }
  // both happen, or the changes were not worth much
  expect(refused).toBeGreaterThan(200);
  expect(opened).toBeGreaterThan(200);
});
