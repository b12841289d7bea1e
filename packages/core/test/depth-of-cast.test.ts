import { castOf } from "@wherry/testkit";
import { expect, test } from "vitest";
import type { Cast, Segment } from "../src/cast/cast.ts";
import { addComputed } from "../src/cast/computed-columns.ts";
import { conductivityFromSalinity } from "../src/seawater/conductivity-from-salinity.ts";

/** Dropped without a soak through four dbar of brackish water into four of the sea's, at 15 degrees. */
function dropped(unsettledRows: number): Cast {
  const pressure = Float64Array.from({ length: 321 }, (_, k) => k / 40);
  const conductivity = pressure.map((p) => conductivityFromSalinity(p < 4 ? 8 : 34, 15, p));
  const cast: Cast = castOf(
    { pressure, temperature: new Float64Array(321).fill(15), conductivity },
    pressure.map((p) => p * 2),
    { start: { latitude: 46, longitude: -4, satellites: 9, quality: null } },
  );
  const unsettled = Uint8Array.from(pressure, (_, k) => (k < unsettledRows ? 3 : 1));
  const columns = new Map(
    [...cast.columns].map(([name, column]) => [
      name,
      name === "pressure" ? column : { ...column, tests: new Map([["unsettled", unsettled]]) },
    ]),
  );
  const segments: Segment[] = [{ kind: "down", firstRow: 0, lastRow: 320 }];
  return { ...cast, columns, segments };
}

// dz = 1e4 v dp / g summed over 32,000 steps with the TEOS-10 library 3.6.16; the standard ocean gives 7.934 m
test.each([0, 200])("brackish water above counts, %i rows of it unsettled", (rows) => {
  const depth = addComputed(dropped(rows), "automatic").columns.get("depth")!;
  expect(Math.abs(depth.values[320]! - 8.0356)).toBeLessThan(2e-3);
  expect(depth.method!.equation).toContain("density measured in the downcast");
});
