import { expect, test } from "vitest";
import { shortNames } from "./short-names.ts";

test.each([
  { ids: ["OE25-01", "OE25-02", "OE25-P1"], names: ["01", "02", "P1"], without: "OE25-" },
  { ids: ["FJ-100", "FJ-101"], names: ["100", "101"], without: "FJ-" },
  { ids: ["a", "b"], names: ["a", "b"], without: "" },
  { ids: ["alone"], names: ["alone"], without: "" },
  { ids: ["marsh-quay-1"], names: ["marsh-quay-1"], without: "" },
  {
    ids: Array.from({ length: 9 }, (_, k) => `harbour${k}`),
    names: Array.from({ length: 9 }, (_, k) => String(k + 1)),
    without: null,
  },
  { ids: ["long_station_name", "another_long_name"], names: ["1", "2"], without: null },
  { ids: ["x-", "x-1"], names: ["1", "2"], without: null },
])("$ids", ({ ids, names, without }) => {
  const short = shortNames(ids);
  expect(ids.map((id) => short.names.get(id))).toEqual(names);
  expect(short.without).toBe(without);
});
