import { expect, test } from "vitest";
import type { Cast } from "../cast/cast.ts";
import { rowTimeFlags } from "./row-time-flags.ts";

const series = (...elapsed: number[]): Cast => ({
  id: "s",
  kind: "fixed-depth",
  state: { processing: "raw", pressureZeroed: false, lagCorrected: false, direction: "unknown" },
  rows: elapsed.length,
  time: 1_700_000_000,
  timeRole: "start",
  endTime: Number.NaN,
  elapsed: Float64Array.from(elapsed),
  start: null,
  end: null,
  fixedDepth: null,
  instrument: { model: null, serialNumber: null, ratedPressure: null },
  notes: [],
  columns: new Map(),
  texts: new Map(),
  lines: Uint32Array.from(elapsed.keys()),
  source: { path: "s.csv", sha256: "" },
  evidence: [],
  pressureOffset: Number.NaN,
  segments: [],
  steps: [],
});

// what is expected is counted by hand (house rule, no source)
test.each([
  ["times that all grow", [0, 60, 120, 180, 240], [1, 1, 1, 1, 1], 0, false],
  ["one time twice: the later row", [0, 60, 60, 120, 180], [1, 1, 3, 1, 1], 1, false],
  ["missing between equal times", [0, 60, Number.NaN, 60, 120, 180], [1, 1, 9, 3, 1, 1], 1, false],
  ["two rows a second by a clock of seconds", [0, 0, 1, 1, 2, 2], [1, 1, 1, 1, 1, 1], 3, true],
  ["a clock that went back leaves all in doubt", [0, 60, 30, 120, 180], [3, 3, 3, 3, 3], 0, false],
  ["no rows", [], [], 0, false],
])("%s", (_, elapsed, flags, repeated, isCoarse) => {
  const found = rowTimeFlags(series(...elapsed));
  expect([...found.flags]).toEqual(flags);
  expect(found).toMatchObject({ repeated, isCoarse });
});

test("without times of rows or of the cast all are missing", () => {
  expect([...rowTimeFlags({ ...series(0, 1), elapsed: null }).flags]).toEqual([9, 9]);
  expect([...rowTimeFlags({ ...series(0, 1), time: Number.NaN }).flags]).toEqual([9, 9]);
});
