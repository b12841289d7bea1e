import { cfClause, defineRule } from "../../engine/rule.ts";

const NAMES = /^(?:status_flag|quality_flag|\w+_quality_flag)$/;

export const flagName = defineRule({
  id: "cf/flag-name",
  status: "stable",
  since: "0.1.0",
  level: "advice",
  basis: "reading",
  citation: cfClause("3.4"),
  editions: { since: "1.9" },
  covers: ["CF-3.4-T5"],
  title: "Quality flags beside data have one of the standard names for flags",
  why: "A program finds the flags among the ancillary variables by this name.",
  remedy: 'Set standard_name of {variable}, for example to "aggregate_quality_flag".',
  messages: { other: "{variable} holds flags of other variables, but its standard_name is {found}" },
  passing: [
    `variables: float t ; t:ancillary_variables = "q" ; byte q ; q:flag_values = 1b ; q:flag_meanings = "good" ; q:standard_name = "quality_flag" ;`,
  ],
  failing: [
    {
      cdl: `variables: float t ; t:ancillary_variables = "q" ; byte q ; q:flag_values = 1b ; q:flag_meanings = "good" ;`,
      where: { variable: "q", attribute: "standard_name" },
      message: "other",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.ancillary) {
      if (variable.role !== "flag") continue;
      const [name, modifier] = variable.words("standard_name");
      // the modifier has a rule of its own
      if (modifier === "status_flag" || (name !== undefined && NAMES.test(name))) continue;
      report({ variable: variable.name, attribute: "standard_name" }, "other", { found: name ?? null });
    }
  },
});
