import { cfClause, defineRule } from "../../engine/rule.ts";

export const flagType = defineRule({
  id: "cf/flag-type",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("3.5"),
  covers: ["CF-3.5-R1", "CF-3.5-R6"],
  title: "flag_values and flag_masks have the variable's type",
  why: "Flags of another type do not compare equal to what is stored.",
  remedy: "Store {attribute} of {variable} with type {expected}.",
  messages: {
    type: "{attribute} of {variable} has the type {found}, the variable has {expected}",
    real: "{variable} has flag_masks but is of type {found}: masks are for whole numbers and characters",
  },
  passing: [`variables: byte q ; q:flag_values = 1b, 2b ; q:flag_meanings = "good bad" ;`],
  failing: [
    {
      cdl: `variables: byte q ; q:flag_values = 1, 2 ; q:flag_meanings = "good bad" ;`,
      where: { variable: "q", attribute: "flag_values" },
      message: "type",
    },
    {
      cdl: `variables: float q ; q:flag_masks = 1.f, 2.f ; q:flag_meanings = "good bad" ;`,
      where: { variable: "q", attribute: "flag_masks" },
      message: "real",
    },
  ],
  check(dataset, report) {
    for (const { name, type, attributes } of dataset.all) {
      for (const attribute of ["flag_values", "flag_masks"]) {
        const given = attributes.get(attribute)?.type;
        const where = { variable: name, attribute };
        if (given === undefined) continue;
        if (given !== type) report(where, "type", { found: given, expected: type });
        else if (attribute === "flag_masks" && ["float", "double", "string"].includes(type))
          report(where, "real", { found: type, expected: "byte, char, short or int" });
      }
    }
  },
});
