import { defineRule } from "../../engine/rule.ts";
import { acddTier } from "./attribute-rule.ts";

/** Lists that must be equally long: the first against each other. */
const PAIRS = [["contributor_name", "contributor_role"]] as const;

const items = (text: string): number => text.split(/[,;]/).filter((item) => item.trim() !== "").length;

export const listLengths = defineRule({
  id: "acdd/list-lengths",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: acddTier("suggested"),
  covers: ["ACDD contributor_name", "ACDD contributor_role"],
  title: "Each contributor has a role",
  why: "The two lists are read side by side; one item too few shifts all that follow.",
  remedy: "Give contributor_role as many items as contributor_name, commas between.",
  messages: { other: "contributor_role has {found} items, contributor_name has {expected}" },
  passing: [':contributor_name = "A, B" ; :contributor_role = "skipper, analyst" ;'],
  failing: [
    {
      cdl: ':contributor_name = "A, B" ; :contributor_role = "analyst" ;',
      where: { attribute: "contributor_role" },
      message: "other",
    },
  ],
  check(dataset, report) {
    for (const [one, other] of PAIRS) {
      const [first, second] = [dataset.text(one), dataset.text(other)];
      if (first === undefined || second === undefined) continue;
      const [expected, found] = [items(first), items(second)];
      if (found !== expected) report({ attribute: other }, "other", { found, expected });
    }
  },
});
