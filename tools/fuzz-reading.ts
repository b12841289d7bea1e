import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { parseNumber } from "@wherry/core";
import fc from "fast-check";
import { anyExport, damaged, fault, generator, samples } from "../packages/converter/test/fuzz.ts";

// Reads many damaged and random inputs, to be run at night: pnpm fuzz [inputs] [seed]. Each must end in casts or in a
// problem, within ten seconds, and memory must not grow. What fails is kept in a folder and named. Ends with 1 then.

const [inputs = 100_000, seed = Math.floor(Date.now() / 86_400_000)] = process.argv.slice(2).map(parseNumber);
const SLOWEST = 10_000;
const MOST_MEMORY = 1_500_000_000;

console.log(`${inputs} inputs, seed ${seed}`);
const all = samples();
const random = generator(seed);
const texts = fc.sample(anyExport, { numRuns: Math.min(2000, inputs), seed });
const failed: string[] = [];
let slowest = 0;
let memory = 0;
for (let i = 0; i < inputs; i++) {
  const sample = all[Math.floor(random() * all.length)]!;
  // every fifth is a random text, and every second of these is damaged as well
  const text = i % 5 === 0 ? new TextEncoder().encode(texts[(i / 5) % texts.length]) : null;
  const bytes =
    text && i % 2 === 0 ? text : damaged(text ? { file: "any.txt", bytes: text } : sample, random);
  const name = text ? "any.txt" : sample.file;
  const before = performance.now();
  let found: string | null;
  try {
    found = fault(bytes, name);
  } catch (error) {
    found = error instanceof Error ? (error.stack ?? error.message) : String(error);
  }
  const took = performance.now() - before;
  if (took > SLOWEST) found ??= `took ${Math.round(took / 1000)} s`;
  slowest = Math.max(slowest, took);
  if (i % 1000 === 0) {
    memory = Math.max(memory, process.memoryUsage().rss);
    if (memory > MOST_MEMORY) found ??= `${Math.round(memory / 1e6)} MB of memory`;
  }
  if (found === null) continue;
  const path = `${mkdtempSync(`${tmpdir()}/wherry-fuzz-`)}/${name}`;
  writeFileSync(path, bytes);
  failed.push(path);
  console.log(`input ${i}: ${path}\n  ${found}`);
  if (failed.length >= 20) break;
}
console.log(
  `${failed.length} failed; slowest ${Math.round(slowest)} ms; at most ${Math.round(memory / 1e6)} MB of memory`,
);
if (failed.length > 0) process.exitCode = 1;
