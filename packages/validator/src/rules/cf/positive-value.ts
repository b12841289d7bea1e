import { plainOf } from "../../engine/attribute-value.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

export const positiveValue = defineRule({
  id: "cf/positive-value",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("4.3"),
  covers: ["CF-4.3-R1"],
  title: "positive is up or down",
  why: "It tells which way the values grow; any other word tells nothing.",
  remedy: 'Set positive of {variable} to "down" (depths) or "up" (heights).',
  messages: { other: "positive of {variable} is {found}" },
  passing: [`variables: float z ; z:positive = "Down" ;`],
  failing: [
    {
      cdl: `variables: float z ; z:positive = "downwards" ;`,
      where: { variable: "z", attribute: "positive" },
      message: "other",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const attribute = variable.attributes.get("positive");
      if (attribute === undefined || /^(?:up|down)$/i.test(variable.text("positive") ?? "")) continue;
      report({ variable: variable.name, attribute: "positive" }, "other", {
        found: plainOf(attribute),
        expected: "up or down",
      });
    }
  },
});
