import type { Cast, Column } from "@wherry/core";
import { readSimulated } from "@wherry/testkit";
import { expect, test } from "vitest";
import { sharingResults } from "./share-results.ts";

test("results that are alike are one, and no value changes", () => {
  const cast = readSimulated("dev-b-shelf");
  const result = (flag: number, row = 0) => {
    const flags = new Uint8Array(cast.rows).fill(1);
    flags[row] = flag;
    return flags;
  };
  const judged = (column: Column): Column => ({
    ...column,
    flags: result(3),
    tests: new Map([
      ["spike", result(1)],
      ["range", result(3)],
      ["rate", result(3, 1)],
    ]),
  });
  const before: Cast = {
    ...cast,
    columns: new Map([...cast.columns].map(([name, column]) => [name, judged(column)])),
  };
  const after = sharingResults(before);
  expect(after).toEqual(before);
  const all = [...after.columns.values()].flatMap(({ flags, tests }) => [flags, ...tests.values()]);
  expect(all.length).toBe(4 * before.columns.size);
  expect(new Set(all).size).toBe(3);
});
