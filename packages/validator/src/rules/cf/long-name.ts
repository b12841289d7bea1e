import { cfClause, defineRule } from "../../engine/rule.ts";

/** Variables that serve others; they neither hold data nor coordinates. */
const SERVING = ["bounds", "container", "count", "index"];

export const longName = defineRule({
  id: "cf/long-name",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("3.2"),
  editions: { clauses: [{ until: "1.11", clause: "3" }] },
  covers: ["CF-3.2-A1"],
  title: "A variable has a long_name or a standard_name",
  why: "The name of a variable is free; without words beside it, nobody else knows what it holds.",
  remedy: "Add long_name to {variable}, and standard_name where the table has one.",
  messages: { missing: "{variable} has neither long_name nor standard_name" },
  passing: [`variables: float t ; t:long_name = "temperature of the water" ;`],
  failing: [{ cdl: "variables: float t ;", where: { variable: "t" }, message: "missing" }],
  check(dataset, report) {
    for (const variable of dataset.all) {
      if (SERVING.includes(variable.role)) continue;
      if (!variable.has("long_name") && !variable.has("standard_name"))
        report({ variable: variable.name }, "missing");
    }
  },
});
