import { claimedEdition, conventionNames } from "../../engine/edition.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

export const conventionsAlone = defineRule({
  id: "cf/conventions-alone",
  status: "stable",
  since: "0.1.0",
  level: "advice",
  basis: "reading",
  citation: cfClause("2.6.1"),
  editions: { until: "1.6" },
  covers: ["CF-2.6.1-R1"],
  title: "Up to CF 1.6, Conventions holds the name of CF alone",
  why: "A list of names is legal since CF 1.7; older readers may not find the name of CF in it.",
  remedy: "Claim CF-1.7 or newer if other conventions are named beside CF.",
  messages: { list: "Conventions names others beside CF: {found}" },
  passing: [
    { cdl: `:Conventions = "CF-1.6" ;`, edition: "1.6" },
    { cdl: `:Conventions = "CF-1.7, ACDD-1.3" ;`, edition: "1.7" },
  ],
  failing: [
    {
      cdl: `:Conventions = "CF-1.6, ACDD-1.3" ;`,
      edition: "1.6",
      where: { attribute: "Conventions" },
      message: "list",
    },
  ],
  check(dataset, report) {
    const text = dataset.text("Conventions");
    if (text !== undefined && claimedEdition(text) !== null && conventionNames(text).length > 1)
      report({ attribute: "Conventions" }, "list", { found: text });
  },
});
