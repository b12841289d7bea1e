import { expect, test } from "vitest";
import type { Column } from "../cast/cast.ts";
import { decidedBy } from "./decided-by.ts";

const column: Column = {
  name: "temperature",
  standardName: null,
  longName: "",
  units: "degree_C",
  values: Float64Array.of(1, 2, 3, Number.NaN),
  flags: Uint8Array.of(1, 3, 4, 9),
  source: null,
  sourceFlags: null,
  tests: new Map([
    ["gross_range", Uint8Array.of(1, 1, 4, 9)],
    ["spike_return", Uint8Array.of(1, 3, 3, 9)],
    ["climatology", Uint8Array.of(1, 3, 2, 9)],
  ]),
  method: null,
};

test("the tests that gave a row its flag are named", () => {
  expect([0, 1, 2, 3].map((row) => decidedBy(column, row))).toEqual([
    [],
    ["spike_return", "climatology"],
    ["gross_range"],
    ["missing"],
  ]);
  expect(() => decidedBy(column, 4)).toThrow(RangeError);
});
