import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { editDistance, nearestNames } from "./nearest.ts";

describe("editDistance", () => {
  // textbook pairs of the Levenshtein distance, and one swap of neighbours
  test.each([
    ["kitten", "sitting", 3],
    ["saturday", "sunday", 3],
    ["", "abc", 3],
    ["same", "same", 0],
    ["latitude", "latitdue", 1],
  ])("%s, %s", (a, b, want) => expect(editDistance(a, b)).toBe(want));

  test("is the same both ways, and a limit only cuts off", () => {
    const word = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 8 });
    fc.assert(
      fc.property(word, word, fc.integer({ min: 0, max: 8 }), (a, b, limit) => {
        const full = editDistance(a, b);
        expect(editDistance(b, a)).toBe(full);
        const cut = editDistance(a, b, limit);
        if (full <= limit) expect(cut).toBe(full);
        else expect(cut).toBeGreaterThan(limit);
      }),
    );
  });
});

describe("nearestNames", () => {
  const keys = ["survey", "people", "platform", "instrument", "licence", "created", "answers", "casts"];
  test.each([
    ["licens", ["licence"]],
    ["Instrument ", ["instrument"]],
    ["plattform", ["platform"]],
    ["cast", ["casts"]],
    ["weather", []],
    ["", []],
    ["x", []],
  ])("%j: %j", (typed, want) => expect(nearestNames(typed, keys)).toEqual(want));

  test("nearest first, at most as many as asked", () => {
    const names = ["depth", "death", "depths", "dept", "width"];
    expect(nearestNames("depth", names, 2)).toEqual(["depth", "death"]);
  });

  test("blanks and hyphens are as good as underscores", () =>
    expect(nearestNames("Sea Water-Temperature", ["sea_water_temperature"])).toEqual([
      "sea_water_temperature",
    ]));
});
