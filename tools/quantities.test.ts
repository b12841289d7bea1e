import * as core from "@wherry/core";
import { expect, test } from "vitest";
import { quantities } from "./generators/quantities.ts";

const listed = quantities.map(({ name }) => name);

test("the reference page has every equation that has a column twin", () => {
  const names = Object.keys(core).filter((name) => `${name}Column` in core && name !== "convertUnits");
  expect(names.length).toBeGreaterThan(25);
  expect(names.filter((name) => !listed.includes(name))).toEqual([]);
});

test("nothing is listed twice or without being there", () => {
  expect(new Set(listed).size).toBe(listed.length);
  expect(listed.filter((name) => !(name in core))).toEqual([]);
});
