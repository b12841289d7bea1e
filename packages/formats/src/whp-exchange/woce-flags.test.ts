import { expect, test } from "vitest";
import { iodeFromWoceCtd, WOCE_CTD_FLAGS } from "./woce-flags.ts";

// The mapping is the project's decision; the codes are those of WHP-Exchange Format 1.2.1 (2024), Quality Codes.
test.each([
  [0, 2],
  [1, 2],
  [2, 1],
  [3, 3],
  [4, 4],
  [5, 2], // not reported, yet a value is there
  [6, 3],
  [7, 1],
  [9, 2], // not sampled, yet a value is there
])("WOCE CTD %i on a value becomes IODE %i", (code, want) => expect(iodeFromWoceCtd(code, 12.5)).toBe(want));

test.each([1, 2, 3, 4, 5, 6, 7, 8, 9])("a missing value with code %i is 9", (code) =>
  expect(iodeFromWoceCtd(code, NaN)).toBe(9),
);

test("every code from 1 to 9 has its meaning", () =>
  expect([...WOCE_CTD_FLAGS.keys()]).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]));
