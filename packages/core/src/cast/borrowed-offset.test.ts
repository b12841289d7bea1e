import { inventCast } from "@wherry/testkit";
import { expect, test } from "vitest";
import { atmosphericOffsetDefaults } from "./atmospheric-offset.ts";
import { borrowedOffset } from "./borrowed-offset.ts";

const named = (id: string, choice: Parameters<typeof inventCast>[0]) => ({ ...inventCast(choice).cast, id });
const others = [0.1, 0.14, 0.12].map((offset, k) => named(`c${k}`, { offset, seed: k }));
const without = named("wet", { air: 0 });

test("the median of the others, with how many and how far apart", () => {
  const found = borrowedOffset(without, others, atmosphericOffsetDefaults)!;
  expect(found.value).toBeCloseTo(0.12, 2);
  expect(found.from).toContain("3 other casts");
  expect(found.from).toMatch(/0\.0[34]\d dbar apart/);
});

test("nothing is borrowed by a cast with a reading of its own, from itself, or from casts without one", () => {
  expect(borrowedOffset(others[0]!, others, atmosphericOffsetDefaults)).toBeNull();
  expect(borrowedOffset(without, [without], atmosphericOffsetDefaults)).toBeNull();
  expect(
    borrowedOffset(without, [named("absolute", { offset: 10.1 })], atmosphericOffsetDefaults),
  ).toBeNull();
});
