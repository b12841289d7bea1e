import { expect, test } from "vitest";
import { parseCellMethods } from "./cell-methods.ts";

test.each([
  // the examples of CF 1.13, sections 7.3 and 7.4
  ["time: mean", 1],
  ["lat: lon: standard_deviation", 1],
  ["lat: mean (interval: 1 degree_north) lon: mean (interval: 1 degree_east)", 2],
  ["time: variance (interval: 1 hr comment: sampled instantaneously)", 1],
  ["area: mean where land time: maximum", 2],
  ["lat: lon: mean where land over all_area_types time: maximum", 2],
  ["time: minimum within years time: mean over years", 2],
  ["time: sum within days time: mean over days", 2],
])("%s has %i entries", (text, count) => {
  const entries = parseCellMethods(text);
  expect(Array.isArray(entries) && entries.length).toBe(count);
});

test.each([
  ["mean", "name"],
  ["time:", "method"],
  ["time: mean where", "name"],
  ["time: mean (of rows", "bracket"],
  ["time: mean within weeks", "clause"],
  ["time: mean mean", "name"],
])("%s is no cell_methods: %s", (text, because) => {
  const fault = parseCellMethods(text);
  expect(Array.isArray(fault) ? "read" : fault.because).toBe(because);
});
