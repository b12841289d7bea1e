import { expect, test } from "vitest";
import { runBagRules } from "../../engine/bag-rule.ts";
import { bagOf } from "../../engine/bag-rule-tester.ts";
import { packageRules } from "./index.ts";

test.each(packageRules.map((rule) => ({ id: rule.id, rule })))(
  "$id keeps to its own examples",
  async ({ rule }) => {
    for (const example of rule.passing)
      expect((await runBagRules([rule], await bagOf(example))).findings).toEqual([]);
    for (const example of rule.failing) {
      const { findings } = await runBagRules([rule], await bagOf(example));
      expect(findings.map(({ where, key }) => ({ where, message: key }))).toEqual([
        { where: example.where, message: example.message },
      ]);
      for (const { message } of findings) expect(message).not.toMatch(/\{\w+\}/);
    }
    const shown = new Set(rule.failing.map(({ message }) => message));
    expect(Object.keys(rule.messages).filter((key) => !shown.has(key))).toEqual([]);
  },
);
