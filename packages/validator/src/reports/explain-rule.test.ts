import { expect, test } from "vitest";
import { allRules } from "../engine/registry.ts";
import { explainRule } from "./explain-rule.ts";
import { ruleSection } from "./rule-set-page.ts";

test.each(allRules.map(({ id, why, citation }) => ({ id, why, citation })))(
  "$id is explained",
  ({ id, why, citation }) => {
    const explained = explainRule(id);
    const text = explained.ok ? explained.value : "";
    const inOneLine = text.replace(/\s+/g, " ");
    expect(inOneLine).toContain(why.replace(/\s+/g, " "));
    expect(inOneLine).toContain(`${citation.document} ${citation.edition}`);
    expect(text).toContain("This passes:");
    expect(text).toContain("This does not");
    expect(text).not.toMatch(/[{}]\w*[{}]/);
  },
);

test.each([
  ["cf/latitude-unit", "cf/latitude-units"],
  ["latitude", "cf/latitude-units"],
  ["acdd/titel", "acdd/title"],
])("%s is unknown, %s is offered", (id, offered) => {
  const explained = explainRule(id);
  expect(explained.ok).toBe(false);
  if (!explained.ok) expect(explained.problems[0].remedy).toContain(offered);
});

test("the reference page holds what the rule says of itself", () => {
  const rule = allRules.find(({ id }) => id === "cf/names")!;
  const page = ruleSection(rule);
  expect(page).toContain("# cf/names");
  expect(page).toContain("| level | error until 1.7, then warning |");
  expect(page).toContain("CF Conventions 1.13, section 2.3 (the source says it)");
  expect(page.match(/```cdl/g)).toHaveLength(rule.passing.length + rule.failing.length);
});
