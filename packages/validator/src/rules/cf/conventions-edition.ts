import { claimedEdition, EDITIONS, isEdition, NEWEST } from "../../engine/edition.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

export const conventionsEdition = defineRule({
  id: "cf/conventions-edition",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("2.6.1"),
  covers: ["CF-2.6.1-R2"],
  title: "The edition that Conventions names is one that was published",
  why: "A reader that looks for the rules of this edition finds none.",
  remedy: `Name the edition that the file follows, for example CF-${NEWEST}.`,
  messages: {
    unknown: "Conventions names CF-{found}, which was never published",
    newer:
      "Conventions names CF-{found}, newer than the editions known here; the file is judged by {expected}",
  },
  passing: [`:Conventions = "CF-1.13" ;`, `:Conventions = "CF-1.6, ACDD-1.3" ;`],
  failing: [
    { cdl: `:Conventions = "CF-1.08" ;`, where: { attribute: "Conventions" }, message: "unknown" },
    {
      cdl: `:Conventions = "CF-1.99" ;`,
      where: { attribute: "Conventions" },
      message: "newer",
      level: "advice",
    },
  ],
  check(dataset, report) {
    const claimed = claimedEdition(dataset.text("Conventions") ?? "");
    if (claimed === null || isEdition(claimed)) return;
    const where = { attribute: "Conventions" };
    const [major = 0, minor = 0] = claimed.split(".").map(Number);
    const newer = /^[1-9]\d*\.(?:0|[1-9]\d*)$/.test(claimed) && (major > 1 || minor >= EDITIONS.length);
    if (newer) report(where, "newer", { found: claimed, expected: NEWEST, level: "advice" });
    else report(where, "unknown", { found: claimed, expected: `CF-1.0 to CF-${NEWEST}` });
  },
});
