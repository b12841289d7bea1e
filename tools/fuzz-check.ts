import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseNumber } from "@wherry/core";
import { damaged, dice, samples, verdictsOn } from "../packages/validator/test/hostile-inputs.ts";

// Checks many damaged files, packages and tables, to be run at night: pnpm fuzz:check [inputs] [seed]. Each must get a
// verdict within ten seconds, and memory must not grow. What fails is kept in a folder and named. Ends with 1 then.

const [inputs = 100_000, seed = Math.floor(Date.now() / 86_400_000)] = process.argv.slice(2).map(parseNumber);
const SLOWEST = 10_000;
const MOST_MEMORY = 1_500_000_000;
const MOST_FAILED = 20;

console.log(`${inputs} inputs, seed ${seed}`);
const all = samples();
const roll = dice(seed);
let [failed, slowest, memory] = [0, 0, 0];
for (let i = 0; i < inputs && failed < MOST_FAILED; i += 1) {
  const sample = all[roll(all.length)]!;
  const bytes = damaged(sample.bytes, roll);
  const before = performance.now();
  let fault = "";
  try {
    await verdictsOn({ ...sample, bytes }, roll);
  } catch (error) {
    fault = error instanceof Error ? (error.stack ?? error.message) : String(error);
  }
  const took = performance.now() - before;
  slowest = Math.max(slowest, took);
  if (took > SLOWEST) fault ||= `took ${Math.round(took / 1000)} s`;
  if (i % 1000 === 0) {
    memory = Math.max(memory, process.memoryUsage().rss);
    if (memory > MOST_MEMORY) fault ||= `${Math.round(memory / 1e6)} MB of memory`;
  }
  if (fault === "") continue;
  failed += 1;
  const path = join(mkdtempSync(join(tmpdir(), "wherry-fuzz-")), sample.name);
  writeFileSync(path, bytes);
  console.log(`input ${i}: ${path}\n  ${fault}`);
}
console.log(
  `${failed} failed; slowest ${Math.round(slowest)} ms; at most ${Math.round(memory / 1e6)} MB of memory`,
);
if (failed > 0) process.exitCode = 1;
