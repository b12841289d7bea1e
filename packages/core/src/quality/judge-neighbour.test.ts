import { castOf } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import type { Cast } from "../cast/cast.ts";
import { withColumns, withTest } from "../cast/change.ts";
import { computedColumn } from "../cast/computed-column.ts";
import { formerProfile, judgeNeighbour, neighbourDefaults } from "./judge-neighbour.ts";
import { MANUAL } from "./manual-flags.ts";

const rows = 40;
const made = (id: string, time: number, latitude: number, warmer: number): Cast => {
  const pressure = Float64Array.from({ length: rows }, (_, k) => 1 + k / 4);
  const cast = castOf(
    { pressure, temperature: pressure.map((p) => 10 + (p > 6 ? warmer : 0)) },
    Float64Array.from({ length: rows }, (_, k) => k),
    { id, time, start: { latitude, longitude: 4, satellites: 9, quality: null } },
  );
  const density = computedColumn({
    name: "density",
    standardName: null,
    longName: "",
    units: "kg m-3",
    values: pressure.slice(),
    method: { from: ["temperature"], equation: "", references: "" },
  });
  return {
    ...cast,
    columns: new Map<string, Cast["columns"] extends ReadonlyMap<string, infer C> ? C : never>([
      ...cast.columns,
      ["density", density],
    ]),
    segments: [{ kind: "down", firstRow: 0, lastRow: rows - 1 }],
  };
};
const parameters = {
  ...neighbourDefaults,
  limits: { temperature: [{ pressureRange: [0, 100], largestDifference: 0.5 }] },
} as const;
const first = made("first", 1000, 52, 0);

describe("comparison with an earlier profile", () => {
  test("what differs by more than the limit is questionable, and so is what comes from it", () => {
    const judged = judgeNeighbour(made("second", 5000, 52, 1), first, parameters);
    const [T, rho] = ["temperature", "density"].map((name) => judged.columns.get(name)!.flags);
    expect([T![5], T![30], rho![5], rho![30]]).toEqual([2, 3, 2, 3]);
    expect(judged.steps.at(-1)?.parameters.former).toBe("first");
  });
  test("what a person judged stands, and so does what comes from it", () => {
    const cast = made("second", 5000, 52, 1);
    const said = new Uint8Array(rows);
    said[30] = 1;
    const temperature = withTest(cast.columns.get("temperature")!, MANUAL, said);
    const judged = judgeNeighbour(withColumns(cast, temperature), first, parameters);
    const [T, rho] = ["temperature", "density"].map((name) => judged.columns.get(name)!.flags);
    expect([T![30], T![31], rho![30], rho![31]]).toEqual([2, 3, 2, 3]);
  });
  test("the latest earlier one within distance and time is taken", () => {
    const casts = [
      first,
      made("later", 2000, 52.001, 0),
      made("far", 3000, 53, 0),
      made("after", 9000, 52, 0),
    ];
    expect(formerProfile(made("x", 5000, 52, 0), casts, parameters)?.id).toBe("later");
    expect(formerProfile(made("x", 5000 + 10 * 86400, 52, 0), casts, parameters)).toBeNull();
    expect(formerProfile({ ...first, start: null }, casts, parameters)).toBeNull();
  });
  test("without limits nothing is compared", () => {
    const cast = made("second", 5000, 52, 1);
    expect(judgeNeighbour(cast, first, neighbourDefaults)).toBe(cast);
  });
});
