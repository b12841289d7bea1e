import { Session } from "node:inspector/promises";
import { castOf } from "@wherry/testkit";
import { afterAll, beforeAll, expect, test } from "vitest";
import { processCast } from "../src/recipe/process-cast.ts";
import { defaultSettings } from "../src/recipe/settings.ts";

/** Ten rows a second for so many hours, down and up once, or near one depth. */
function record(hours: number, kind: "profile" | "fixed-depth") {
  const rows = hours * 36_000;
  const column = (value: (part: number, k: number) => number) =>
    Float64Array.from({ length: rows }, (_, k) => value(Math.sin((Math.PI * k) / rows), k));
  const reach = kind === "profile" ? 60 : 1;
  return castOf(
    {
      pressure: column((part, k) => 5 + reach * part + 0.01 * (k % 3)),
      temperature: column((part, k) => 15 - 5 * part + 0.001 * (k % 7)),
      conductivity: column((part, k) => 40 - 3 * part + 0.001 * (k % 5)),
    },
    Float64Array.from({ length: rows }, (_, k) => k / 10),
    { kind },
  );
}

interface Coverage {
  readonly result: readonly {
    readonly url: string;
    readonly functions: readonly { readonly ranges: readonly { readonly count: number }[] }[];
  }[];
}

// counting must have begun before the code under test is called for the first time
const session = new Session();
beforeAll(async () => {
  session.connect();
  await session.post("Profiler.enable");
  await session.post("Profiler.startPreciseCoverage", { callCount: true, detailed: true });
});
afterAll(() => session.disconnect());

/** How often the blocks of our own code are run in all, as V8 counts them. */
async function blocksRun(work: () => void): Promise<number> {
  await session.post("Profiler.takePreciseCoverage");
  work();
  const { result } = (await session.post("Profiler.takePreciseCoverage")) as Coverage;
  let sum = 0;
  for (const { url, functions } of result)
    if (url.includes("/packages/"))
      for (const { ranges } of functions) for (const { count } of ranges) sum += count;
  return sum;
}

test.each(["profile", "fixed-depth"] as const)(
  "a %s of three hours at 10 Hz takes linear work",
  async (kind) => {
    const [half, whole] = [record(1.5, kind), record(3, kind)];
    const first = await blocksRun(() => processCast(half, defaultSettings));
    const second = await blocksRun(() => processCast(whole, defaultSettings));
    expect(whole.rows).toBe(108_000);
    // a loop over all pairs of rows would make it four; sorting and medians make it a little more than two
    expect(first).toBeGreaterThan(10 * half.rows);
    expect(second / first).toBeLessThan(2.3);
    expect(second / first).toBeGreaterThan(1.7);
  },
);
