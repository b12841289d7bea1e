import { isTextType, plainOf } from "../../engine/attribute-value.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

const DESCRIPTIONS = ["title", "history", "institution", "source", "references", "comment"];

export const descriptionText = defineRule({
  id: "cf/description-text",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("2.6.2"),
  covers: ["CF-2.6.2-R1"],
  title: "Descriptions of the contents are text",
  why: "title, history, institution, source, references and comment are for people to read.",
  remedy: "Write {attribute} as text.",
  messages: { number: "{attribute} is a number: {found}" },
  passing: [`:title = "any" ;`],
  failing: [
    { cdl: ":title = 5 ;", where: { attribute: "title" }, message: "number" },
    {
      cdl: "variables: float t ; t:comment = 1.5 ;",
      where: { variable: "t", attribute: "comment" },
      message: "number",
    },
  ],
  check(dataset, report) {
    for (const name of DESCRIPTIONS) {
      const own = dataset.attributes.get(name);
      if (own !== undefined && !isTextType(own.type))
        report({ attribute: name }, "number", { found: plainOf(own) });
      for (const variable of dataset.all) {
        const of = variable.attributes.get(name);
        if (of !== undefined && !isTextType(of.type))
          report({ variable: variable.name, attribute: name }, "number", { found: plainOf(of) });
      }
    }
  },
});
