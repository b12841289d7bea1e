import { plainOf } from "../../engine/attribute-value.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

/** Modifiers of appendix C. */
const MODIFIERS = ["detection_minimum", "number_of_observations", "standard_error", "status_flag"];

export const standardNameForm = defineRule({
  id: "cf/standard-name-form",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("3.3"),
  covers: ["CF-3.3-R1", "CF-3.3-R3"],
  title: "standard_name is a name, or a name and one modifier of appendix C",
  why: "Programs look the name up; more words, or an unknown modifier, make it unknown.",
  remedy:
    "Write the name alone, or with one of: detection_minimum, number_of_observations, standard_error, status_flag.",
  messages: {
    text: "standard_name of {variable} is not one text but {found}",
    words: 'standard_name of {variable} is "{found}"',
    modifier: 'standard_name of {variable} has the modifier "{found}"',
  },
  passing: [
    `variables: float t ; t:standard_name = "sea_water_temperature" ;`,
    `variables: float t ; t:standard_name = "sea_water_temperature  standard_error" ;`,
  ],
  failing: [
    ["t:standard_name = 5", "text"] as const,
    [`t:standard_name = "sea water temperature"`, "words"] as const,
    [`t:standard_name = " "`, "words"] as const,
    [`t:standard_name = "sea_water_temperature error"`, "modifier"] as const,
  ].map(([cdl, message]) => ({
    cdl: `variables: float t ; ${cdl} ;`,
    where: { variable: "t", attribute: "standard_name" },
    message,
  })),
  check(dataset, report) {
    for (const variable of dataset.all) {
      const attribute = variable.attributes.get("standard_name");
      if (attribute === undefined) continue;
      const where = { variable: variable.name, attribute: "standard_name" };
      const text = variable.text("standard_name");
      const [name, modifier, ...others] = variable.words("standard_name");
      if (text === undefined) report(where, "text", { found: plainOf(attribute) });
      else if (name === undefined || others.length > 0) report(where, "words", { found: text });
      else if (modifier !== undefined && !MODIFIERS.includes(modifier))
        report(where, "modifier", { found: modifier, expected: MODIFIERS });
    }
  },
});
