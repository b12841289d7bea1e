import { isTextType, lengthOf, plainOf } from "../../engine/attribute-value.ts";
import { claimedEdition } from "../../engine/edition.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

export const conventions = defineRule({
  id: "cf/conventions",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("2.6.1"),
  covers: ["CF-2.6.1-R1", "CF-2.6.1-T2"],
  title: "The global attribute Conventions names the edition of CF, among other names if there are any",
  why: "Readers choose their rules by this name; without it they must guess what the attributes mean.",
  remedy: 'Set the global attribute Conventions, for example to "CF-1.13, ACDD-1.3".',
  messages: {
    missing: "there is no global attribute Conventions",
    text: "Conventions is not one text",
    other: "Conventions is {found}, which names no edition of CF in the form CF-major.minor",
  },
  passing: [
    `:Conventions = "CF-1.13" ;`,
    `:Conventions = "ACDD-1.3, CF-1.8" ;`,
    `:Conventions = "Own-2 CF-1.9" ;`,
  ],
  failing: [
    { cdl: `:title = "any" ;`, where: { attribute: "Conventions" }, message: "missing" },
    {
      cdl: `:title = "any" ;`,
      edition: "1.6",
      where: { attribute: "Conventions" },
      message: "missing",
      level: "warning",
    },
    { cdl: ":Conventions = 1.13 ;", where: { attribute: "Conventions" }, message: "text" },
    { cdl: `:Conventions = "CF1.8" ;`, where: { attribute: "Conventions" }, message: "other" },
    // the comma makes "CF-1.8 ACDD-1.3" one name
    { cdl: `:Conventions = "CF-1.8 ACDD-1.3, Own" ;`, where: { attribute: "Conventions" }, message: "other" },
  ],
  check(dataset, report) {
    const where = { attribute: "Conventions" };
    const attribute = dataset.attributes.get("Conventions");
    const text = dataset.text("Conventions");
    const expected = "a list of names with one like CF-1.13";
    // the chapter of 1.6 recommends the attribute, its list of requirements is silent
    const level = dataset.until("1.6") ? { level: "warning" as const } : {};
    if (attribute === undefined) report(where, "missing", { expected, ...level });
    else if (text === undefined || !isTextType(attribute.type) || lengthOf(attribute) !== 1)
      report(where, "text", { found: plainOf(attribute), expected });
    else if (claimedEdition(text) === null) report(where, "other", { found: text, expected });
  },
});
