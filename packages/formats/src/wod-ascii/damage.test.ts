import { readFileSync } from "node:fs";
import type { Cast } from "@wherry/core";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { attempt, readOk } from "../../test/asking-nobody.ts";
import { mutationsOf, truncationsOf } from "../../test/damage.ts";
import { readWodAscii } from "./read-wod-ascii.ts";

// Damage to a good file: what is read after it is what stood there, or is told.
const whole = readFileSync(testData("samples", "openformats", "wod_two_casts.dat"));
const good = readOk(readWodAscii, whole, "x.dat").casts;

const valuesOf = (cast: Cast, rows: number) =>
  [...cast.columns].map(([name, { values, sourceFlags }]) => [
    name,
    [...values.slice(0, rows)],
    sourceFlags?.values.slice(0, rows),
  ]);

test("cut at every byte: whole levels of the true cast, and a finding unless nothing is lost", () => {
  let cutCasts = 0;
  for (const bytes of truncationsOf(whole)) {
    const result = attempt(readWodAscii, bytes, "x.dat");
    if (!result.ok) continue;
    const { casts, findings } = result.value;
    for (const [i, cast] of casts.entries()) {
      expect(valuesOf(cast, cast.rows), `${bytes.length} bytes`).toEqual(valuesOf(good[i]!, cast.rows));
      if (cast.rows === good[i]!.rows) continue;
      cutCasts++;
      expect(findings.map(({ code }) => code)).toContain("wod-ascii/cut");
    }
    const complete = casts.length === 2 && casts.every((cast, i) => cast.rows === good[i]!.rows);
    // the cut may fall between the profiles, where a file may end
    if (!complete && findings.length === 0) expect(casts).toHaveLength(1);
  }
  expect(cutCasts).toBeGreaterThan(500);
});

describe("500 seeded mutations", () => {
  test("no throw, and a cast that is taken without a word has the true number of levels and rising depths", () => {
    let silent = 0;
    for (const { bytes, kind } of mutationsOf(whole, 500)) {
      const result = attempt(readWodAscii, bytes, "x.dat");
      if (!result.ok) continue;
      const { casts, findings } = result.value;
      for (const cast of casts) {
        const depth = cast.columns.get("depth")!.values;
        for (let row = 1; row < depth.length; row++)
          expect(Number.isNaN(depth[row]!) || depth[row]! > depth[row - 1]!).toBe(true);
      }
      if (findings.length > 0 || casts.length < 2) continue;
      silent++;
      // one changed digit of a value can't be told from another measurement; lost or added bytes always can
      const numbers = (each: readonly Cast[]) =>
        each.flatMap((cast) => valuesOf(cast, cast.rows)).flatMap(([, values]) => values as number[]);
      const [before, after] = [numbers(good), numbers(casts)];
      expect(after.length, kind).toBe(before.length);
      const different = after.filter((value, i) => !Object.is(value, before[i])).length;
      expect(different, kind).toBeLessThanOrEqual(kind === "change" ? 1 : 0);
    }
    expect(silent).toBeLessThan(500);
  });
});
