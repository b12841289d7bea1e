import { cfClause, defineRule } from "../../engine/rule.ts";

const DEPRECATED = ["status_flag", "number_of_observations"];

export const modifierDeprecated = defineRule({
  id: "cf/modifier-deprecated",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("3.3"),
  editions: { since: "1.7" },
  covers: ["CF-3.3-A1"],
  title: "status_flag and number_of_observations are standard names, no longer modifiers",
  why: "As names of their own they describe a variable that is tied to its data by ancillary_variables.",
  remedy: 'Write standard_name = "{found}" alone and name {variable} in ancillary_variables of the data.',
  messages: { modifier: "standard_name of {variable} has the modifier {found}" },
  passing: [
    `variables: byte q ; q:standard_name = "status_flag" ;`,
    { cdl: `variables: byte q ; q:standard_name = "sea_water_temperature status_flag" ;`, edition: "1.6" },
  ],
  failing: [
    {
      cdl: `variables: byte q ; q:standard_name = "sea_water_temperature status_flag" ;`,
      where: { variable: "q", attribute: "standard_name" },
      message: "modifier",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const found = variable.words("standard_name")[1];
      if (found !== undefined && DEPRECATED.includes(found))
        report({ variable: variable.name, attribute: "standard_name" }, "modifier", { found });
    }
  },
});
