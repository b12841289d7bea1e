import { castOf, inventCast } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import type { Cast } from "./cast.ts";
import { findDips } from "./dips.ts";

/** Casts one after the other in one record. */
function joined(...casts: readonly Cast[]): Cast {
  const column = (name: string) =>
    Float64Array.from(casts.flatMap((cast) => [...cast.columns.get(name)!.values]));
  const elapsed: number[] = [];
  for (const cast of casts) {
    const from = elapsed.length === 0 ? 0 : elapsed.at(-1)! + 0.25;
    for (const time of cast.elapsed!) elapsed.push(from + time);
  }
  return castOf(
    {
      pressure: column("pressure"),
      temperature: column("temperature"),
      conductivity: column("conductivity"),
    },
    Float64Array.from(elapsed),
  );
}

describe("dips of one record", () => {
  const first = inventCast({ deepest: 20, seed: 1 }).cast;
  const second = inventCast({ deepest: 16, seed: 2 }).cast;

  test("two casts in one file, cut in the air between them", () => {
    const dips = findDips(joined(first, second));
    expect(dips).toHaveLength(2);
    expect(Math.abs(dips[1]!.firstRow - first.rows)).toBeLessThan(8 * 4);
    expect(dips[0]!.lastRow + 1).toBe(dips[1]!.firstRow);
    expect(dips[1]!.lastRow).toBe(first.rows + second.rows - 1);
  });

  test("three of unlike depth", () => expect(findDips(joined(second, first, second))).toHaveLength(3));

  test.each([
    ["one cast with a soak", inventCast({ deepest: 20, soak: 60 }).cast],
    ["a deep soak in shallow water", inventCast({ deepest: 4, soakPressure: 2.6, soak: 60 }).cast],
    ["free fall", inventCast({ soak: 0, speed: 2 }).cast],
    ["swell", inventCast({ swell: 0.6, speed: 0.3 }).cast],
    ["a record of the surface", inventCast({ deepest: 1.5 }).cast],
  ])("%s is one", (_, cast) => expect(findDips(cast)).toEqual([{ firstRow: 0, lastRow: cast.rows - 1 }]));

  test("a pressure spike deeper than the bottom makes no dip and hides none", () => {
    const both = joined(first, second);
    const pressure = both.columns.get("pressure")!;
    const values = pressure.values.slice();
    values[first.rows - 10] = 400;
    const spiked = { ...both, columns: new Map(both.columns).set("pressure", { ...pressure, values }) };
    expect(findDips(spiked)).toHaveLength(2);
  });
});
