import { cfClause, defineRule } from "../../engine/rule.ts";

export const namesDiffer = defineRule({
  id: "cf/names-differ",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("2.3"),
  covers: ["CF-2.3-A2"],
  title: "Names of variables differ by more than the case of their letters",
  why: "Programs and file systems that ignore case would take the two for one.",
  remedy: "Give one of the two another name.",
  messages: { same: "{variable} and {other} differ in the case of letters only" },
  passing: ["variables: float t ; float T2 ;"],
  failing: [{ cdl: "variables: float t ; float T ;", where: { variable: "T" }, message: "same" }],
  check(dataset, report) {
    const seen = new Map<string, string>();
    for (const { name } of dataset.all) {
      const folded = name.toLowerCase();
      const other = seen.get(folded);
      if (other === undefined) seen.set(folded, name);
      else report({ variable: name }, "same", { found: name, fill: { other } });
    }
  },
});
