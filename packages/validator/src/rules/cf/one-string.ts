import { cfClause, defineRule } from "../../engine/rule.ts";

export const oneString = defineRule({
  id: "cf/one-string",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("2.2"),
  editions: { since: "1.9" },
  covers: ["CF-2.2-R2", "CF-OLD-2"],
  title: "A string attribute holds one string",
  why: "CF reads a list as words between blanks in one text; of several strings most programs see the first only.",
  remedy: "Join the strings of {attribute} into one text, separated by blanks.",
  messages: { several: "{attribute} is a list of {count} strings" },
  passing: [`string :title = "one" ;`],
  failing: [
    { cdl: `string :title = "one", "two" ;`, where: { attribute: "title" }, message: "several" },
    {
      cdl: `variables: double x ; string x:comment = "one", "two" ;`,
      where: { variable: "x", attribute: "comment" },
      message: "several",
    },
  ],
  check(dataset, report) {
    const places = [
      ...[...dataset.attributes.values()].map((attribute) => ({ attribute, where: {} })),
      ...dataset.all.flatMap(({ name, attributes }) =>
        [...attributes.values()].map((attribute) => ({ attribute, where: { variable: name } })),
      ),
    ];
    for (const { attribute, where } of places) {
      const { name, type, value } = attribute;
      // lists that are values of string variables, not text: flag_values and the like
      if (type !== "string" || typeof value === "string" || value.length < 2) continue;
      if (name === "flag_values" || name === "missing_value") continue;
      report({ ...where, attribute: name }, "several", { fill: { count: value.length } });
    }
  },
});
