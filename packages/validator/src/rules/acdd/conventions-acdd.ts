import { conventionNames } from "../../engine/edition.ts";
import { defineRule } from "../../engine/rule.ts";
import { acddTier } from "./attribute-rule.ts";

export const conventionsAcdd = defineRule({
  id: "acdd/conventions",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: acddTier("highly recommended"),
  covers: ["ACDD Conventions"],
  title: "Conventions names ACDD-1.3 beside CF",
  why: "A catalogue that finds the name reads title, limits and people from the attributes of ACDD.",
  remedy: 'Add ACDD-1.3 to Conventions, for example "CF-1.13, ACDD-1.3".',
  messages: {
    unclaimed: "Conventions does not name ACDD, so its attributes for discovery were not asked for",
    other: "Conventions names {found}, these rules are for ACDD-1.3",
  },
  passing: [`:Conventions = "CF-1.13, ACDD-1.3" ;`, `:Conventions = "CF-1.8 ACDD-1.3" ;`],
  failing: [
    {
      cdl: `:Conventions = "CF-1.13" ;`,
      where: { attribute: "Conventions" },
      message: "unclaimed",
    },
    {
      cdl: `:Conventions = "CF-1.13, ACDD-1.1" ;`,
      where: { attribute: "Conventions" },
      message: "other",
      level: "advice",
    },
  ],
  check(dataset, report) {
    const names = conventionNames(dataset.text("Conventions") ?? "");
    const found = names.find((name) => /^ACDD\b/i.test(name));
    const where = { attribute: "Conventions" };
    // a file that was not asked to follow ACDD may still want to
    const level = dataset.holdsToAcdd ? ("error" as const) : ("warning" as const);
    if (found === undefined) report(where, "unclaimed", { expected: "ACDD-1.3", level });
    else if (found !== "ACDD-1.3") report(where, "other", { found, expected: "ACDD-1.3", level: "advice" });
  },
});
