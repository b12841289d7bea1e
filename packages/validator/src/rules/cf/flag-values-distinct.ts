import { cfClause, defineRule } from "../../engine/rule.ts";
import type { VariableView } from "../../engine/variable-view.ts";
import { flagItems } from "./flag-list.ts";

/** Each flag with its mask, as text; where both lists are given a value may stand once under each mask. */
function keysOf(variable: VariableView): string[] {
  const values = variable.attributes.get("flag_values");
  const masks = variable.attributes.get("flag_masks");
  const maskItems = masks === undefined ? [] : flagItems(masks);
  return values === undefined ? [] : flagItems(values).map((value, i) => `${value}/${maskItems[i] ?? ""}`);
}

export const flagValuesDistinct = defineRule({
  id: "cf/flag-values-distinct",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("3.5"),
  covers: ["CF-3.5-R7", "CF-3.5-R8"],
  title: "Each flag value stands once, and no mask is zero",
  why: "A value with two meanings has none; a mask of zero selects nothing.",
  remedy: "Correct {attribute} of {variable}.",
  messages: {
    twice: "flag_values of {variable} has {found} more than once",
    zero: "flag_masks of {variable} has a zero",
  },
  passing: [
    `variables: byte q ; q:flag_values = 1b, 2b ; q:flag_meanings = "a b" ;`,
    `variables: byte q ; q:flag_masks = 1b, 2b, 2b ; q:flag_values = 1b, 0b, 2b ; q:flag_meanings = "a b c" ;`,
  ],
  failing: [
    {
      cdl: `variables: byte q ; q:flag_values = 1b, 1b ; q:flag_meanings = "a b" ;`,
      where: { variable: "q", attribute: "flag_values" },
      message: "twice",
    },
    {
      cdl: `variables: byte q ; q:flag_masks = 0b, 1b ; q:flag_meanings = "a b" ;`,
      where: { variable: "q", attribute: "flag_masks" },
      message: "zero",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const keys = keysOf(variable);
      const twice = keys.find((key, index) => keys.indexOf(key) !== index);
      if (twice !== undefined)
        report({ variable: variable.name, attribute: "flag_values" }, "twice", {
          found: twice.split("/")[0] ?? "",
        });
      if (variable.numbers("flag_masks")?.includes(0))
        report({ variable: variable.name, attribute: "flag_masks" }, "zero");
    }
  },
});
