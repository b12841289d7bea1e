import { isTextType, plainOf } from "../../engine/attribute-value.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

/** Attributes of table A.1 that are text, without those whose own rules say so. */
const TEXTS: ReadonlySet<string> = new Set([
  "ancillary_variables",
  "axis",
  "bounds",
  "calendar",
  "cell_measures",
  "cell_methods",
  "cf_role",
  "climatology",
  "compress",
  "computed_standard_name",
  "featureType",
  "formula_terms",
  "geometry",
  "grid_mapping",
  "instance_dimension",
  "long_name",
  "positive",
  "sample_dimension",
]);

/** Attributes of table A.1 that are numbers, without those whose own rules say so. */
const NUMBERS: ReadonlySet<string> = new Set([
  "leap_month",
  "leap_year",
  "month_lengths",
  "standard_error_multiplier",
  "valid_max",
  "valid_min",
  "valid_range",
]);

export const attributeType = defineRule({
  id: "cf/attribute-type",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("Appendix A, table A.1"),
  covers: ["CF-A-T40"],
  title: "An attribute of CF is text or a number as table A.1 says",
  why: "A program that expects a text cannot use a number, and takes the attribute for absent.",
  remedy: "Write {attribute} again as {expected}.",
  messages: {
    text: "{attribute} of {owner} is not text but {found}",
    number: "{attribute} of {owner} is not a number but the text {found}",
  },
  passing: [
    `variables: float t ; t:long_name = "temperature" ; t:valid_min = -2.f ;`,
    // a list of texts is the business of the rule on strings
    `variables: float t ; string t:long_name = "temperature", "of water" ;`,
  ],
  failing: [
    {
      cdl: "variables: float t ; t:long_name = 5 ;",
      where: { variable: "t", attribute: "long_name" },
      message: "text",
    },
    {
      cdl: `variables: float t ; t:valid_min = "-2" ;`,
      where: { variable: "t", attribute: "valid_min" },
      message: "number",
    },
    { cdl: ":featureType = 1 ;", where: { attribute: "featureType" }, message: "text" },
  ],
  check(dataset, report) {
    const owners = [{ name: undefined, attributes: dataset.attributes }, ...dataset.all];
    for (const { name, attributes } of owners)
      for (const [attribute, value] of attributes) {
        const isText = isTextType(value.type);
        const where = name === undefined ? { attribute } : { variable: name, attribute };
        const fill = { owner: name ?? "the file" };
        const found = plainOf(value);
        if (TEXTS.has(attribute) && !isText) report(where, "text", { found, expected: "a text", fill });
        if (NUMBERS.has(attribute) && isText) report(where, "number", { found, expected: "a number", fill });
      }
  },
});
