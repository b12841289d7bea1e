import { defineRule } from "../../engine/rule.ts";
import { acddTier } from "./attribute-rule.ts";
import { ACDD_ATTRIBUTES } from "./attribute-table.ts";

const CHOICE = ACDD_ATTRIBUTES.filter(({ applies }) => applies === "choice").map(({ name }) => name);

export const choiceAttributes = defineRule({
  id: "acdd/choice-attributes",
  status: "stable",
  since: "0.1.0",
  level: "advice",
  basis: "reading",
  citation: acddTier("suggested"),
  covers: CHOICE.map((name) => `ACDD ${name}`),
  title: "Attributes that are the depositor's choice",
  why: "They help others to cite and trace the data; none of them is needed for finding it.",
  remedy: "Add those that apply to this data set.",
  messages: { absent: "of the attributes that ACDD leaves to choice these are absent: {found}" },
  passing: [CHOICE.map((name) => `:${name} = "any" ;`).join(" ")],
  failing: [{ cdl: `:title = "any" ;`, where: {}, message: "absent" }],
  check(dataset, report) {
    if (!dataset.holdsToAcdd) return;
    const found = CHOICE.filter((name) => !dataset.attributes.has(name));
    if (found.length > 0) report({}, "absent", { found });
  },
});
