import { expect, test } from "vitest";
import { allRules } from "../engine/registry.ts";
import { tryExamples } from "../engine/rule-tester.ts";

test.each(allRules.map((rule) => ({ id: rule.id, rule })))(
  "$id keeps to its own examples",
  async ({ rule }) => {
    expect((await tryExamples(rule)).join("\n")).toBe("");
  },
);

test("ids are unique", () => {
  const ids = allRules.map(({ id }) => id);
  expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
});
