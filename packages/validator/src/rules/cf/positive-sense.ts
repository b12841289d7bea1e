import { VERTICAL_SENSE } from "../../engine/axis.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

export const positiveSense = defineRule({
  id: "cf/positive-sense",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("4.3"),
  editions: { since: "1.7" },
  covers: ["CF-4.3-A1"],
  title: "positive agrees with the standard name: depths grow downwards, heights upwards",
  why: "A depth that grows upwards turns the cast upside down.",
  remedy: "Correct positive of {variable}, or use the standard name for the other direction.",
  messages: { other: "{variable} is {name}, which grows {expected}, but positive is {found}" },
  passing: [`variables: float z ; z:standard_name = "depth" ; z:positive = "down" ;`],
  failing: [
    {
      cdl: `variables: float z ; z:standard_name = "depth" ; z:positive = "up" ;`,
      where: { variable: "z", attribute: "positive" },
      message: "other",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const name = variable.standardName ?? "";
      const expected = VERTICAL_SENSE.get(name);
      const found = variable.text("positive")?.toLowerCase();
      if (expected === undefined || (found !== "up" && found !== "down") || found === expected) continue;
      report({ variable: variable.name, attribute: "positive" }, "other", {
        found,
        expected,
        fill: { name },
      });
    }
  },
});
