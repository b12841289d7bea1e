import { cfClause, defineRule } from "../../engine/rule.ts";

export const flagValuesMasked = defineRule({
  id: "cf/flag-values-masked",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("3.5"),
  covers: ["CF-3.5-A1"],
  title: "A flag value lies within its mask",
  why: "A value with bits outside its mask can never be met, so its meaning is never found.",
  remedy: "Correct flag_values or flag_masks of {variable}.",
  messages: { outside: "flag_values of {variable} has {found}, which has bits outside the mask {expected}" },
  passing: [`variables: byte q ; q:flag_masks = 1b, 6b ; q:flag_values = 1b, 4b ; q:flag_meanings = "a b" ;`],
  failing: [
    {
      cdl: `variables: byte q ; q:flag_masks = 1b, 6b ; q:flag_values = 1b, 8b ; q:flag_meanings = "a b" ;`,
      where: { variable: "q", attribute: "flag_values" },
      message: "outside",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const masks = variable.numbers("flag_masks");
      const values = variable.numbers("flag_values");
      if (masks === undefined || values === undefined) continue;
      const index = values.findIndex((value, i) => (value & (masks[i] ?? value)) !== value);
      const [found, expected] = [values[index], masks[index]];
      if (found !== undefined && expected !== undefined)
        report({ variable: variable.name, attribute: "flag_values" }, "outside", { found, expected });
    }
  },
});
