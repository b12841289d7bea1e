import { cfClause, defineRule } from "../../engine/rule.ts";

export const stringAttributeOld = defineRule({
  id: "cf/string-attribute-old",
  status: "stable",
  since: "0.1.0",
  level: "advice",
  basis: "clause",
  citation: cfClause("2.2"),
  editions: { until: "1.8", levels: [{ until: "1.7", level: "error" }] },
  covers: ["CF-OLD-1"],
  title: "Text attributes are character arrays in files that claim CF 1.8 or older",
  why: "Programs written for these editions do not expect the string type of netCDF-4.",
  remedy: "Write {attribute} as characters, or claim CF-1.9 or newer.",
  messages: { string: "{attribute} has the string type" },
  passing: [{ cdl: `:title = "any" ;`, edition: "1.6" }, `string :title = "any" ;`],
  failing: [
    { cdl: `string :title = "any" ;`, edition: "1.7", where: { attribute: "title" }, message: "string" },
    {
      cdl: `variables: double x ; string x:comment = "any" ;`,
      edition: "1.8",
      where: { variable: "x", attribute: "comment" },
      message: "string",
      level: "advice",
    },
  ],
  check(dataset, report) {
    for (const { name, type } of dataset.attributes.values())
      if (type === "string") report({ attribute: name }, "string");
    for (const variable of dataset.all)
      for (const { name, type } of variable.attributes.values())
        if (type === "string") report({ variable: variable.name, attribute: name }, "string");
  },
});
